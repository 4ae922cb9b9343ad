package midplate.identity;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import midplate.advice.Consultation;
import midplate.advice.Forecast;
import midplate.advice.Glassware;
import midplate.advice.Question;
import midplate.advice.SpotForecast;
import midplate.advice.Window;
import midplate.advice.Wishes;
import midplate.catalogue.PairBasis;
import midplate.plate.Reading;
import midplate.plate.Setting;

/**
 * Where a further compound would lie of which nothing is known but that it is of the kind that was measured: the model's prior in the
 * eluent at hand. Where it runs is asked, not where somebody would read it, hence no error of a bench.
 */
final class HiddenCompound {
    /** Its name in the question to the model; nobody sees it. */
    private static final String NAME = "hidden";

    private final PlateEluent eluent;
    private final Function<Question, Consultation> adviser;
    private final SpotForecast onPlate;

    private HiddenCompound(PlateEluent eluent, Function<Question, Consultation> adviser) {
        this.eluent = eluent;
        this.adviser = adviser;
        this.onPlate = forecast(new Window(Reading.AT_START_RF, Reading.AT_FRONT_RF))
                .spots()
                .get(0);
    }

    /**
     * In an eluent.
     *
     * @throws midplate.words.Refusal when the model cannot be asked about it
     */
    static HiddenCompound in(PlateEluent eluent, Function<Question, Consultation> adviser) {
        return new HiddenCompound(eluent, adviser);
    }

    private Consultation consult(Window window) {
        return adviser.apply(new Question(
                eluent.sorbent(),
                eluent.weak(),
                eluent.strong(),
                eluent.additive(),
                List.of(NAME),
                List.of(),
                window,
                Setting.AUTOMATED,
                Glassware.USUAL,
                Wishes.NONE,
                Map.of()));
    }

    private Forecast forecast(Window window) {
        return consult(window).at(List.of(eluent.percentStrong())).get(0);
    }

    /** The chance that it stays at the start line [1]. */
    double atStart() {
        return onPlate.below();
    }

    /** The chance that it runs with the front [1]. */
    double atFront() {
        return onPlate.above();
    }

    /** The chance that it lies between two Rf, given that it lies neither at the start nor at the front [1]. */
    double between(double low, double high) {
        double inside = forecast(new Window(Math.max(Reading.AT_START_RF, low), Math.min(Reading.AT_FRONT_RF, high)))
                .chance();
        double somewhere = 1 - atStart() - atFront();
        return somewhere > 0 ? Math.min(1, inside / somewhere) : 0;
    }

    /** What the model of the pair rests on. */
    PairBasis basis() {
        return consult(Window.USUAL).advice().basis();
    }
}
