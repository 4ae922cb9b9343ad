package midplate.advice;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.EluentRules;
import midplate.catalogue.PublishedValue;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.FrontMigration;
import midplate.chemistry.Solvent;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * How fast fronts climb plain silica, from the surface tension and the viscosity of what is poured.
 *
 * <p>A mixture climbs between its two solvents, each taken alone.
 *
 * @see "PlanarFlow"
 */
public final class FrontSpeeds {
    private static final String SURFACE_TENSION = "surface_tension";
    private static final String VISCOSITY = "viscosity";
    private static final double PERCENT = 100;

    private final SolventCatalogue catalogue;

    private FrontSpeeds(SolventCatalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Those of the solvents of a catalogue. */
    public static FrontSpeeds of(SolventCatalogue catalogue) {
        return new FrontSpeeds(catalogue);
    }

    /**
     * The front of a mixture, and what was taken for what is not known.
     *
     * @param speed how fast it climbs
     * @param notes what a reader should know of it
     */
    public record Mixed(FrontSpeed speed, List<Message> notes) {
        /** Keeps its own copy. */
        public Mixed {
            notes = List.copyOf(notes);
        }
    }

    /** Of a solvent by published figures; where it has none, by those of the one that it may be calculated as. */
    Optional<FrontSpeed> published(Solvent solvent) {
        return coefficient(solvent).or(() -> coefficient(standard(solvent))).map(FrontSpeed::of);
    }

    /**
     * Of a mixture: from the slower of the two to the faster one, in the middle by their volumes (own choice). Where only the viscosity
     * of a solvent is known, its surface tension may be any of those known here; where that is not known either, the other solvent counts
     * for both.
     *
     * @param percentStrong share of the strong solvent [% v/v], 0 to 100
     * @throws Refusal where nothing is known of either
     */
    public Mixed mixture(Solvent weak, Solvent strong, double percentStrong) {
        List<Message> notes = new ArrayList<>();
        Optional<FrontSpeed> one = percentStrong < PERCENT ? known(weak, notes) : Optional.empty();
        Optional<FrontSpeed> other = percentStrong > 0 ? known(strong, notes) : Optional.empty();
        if (one.isPresent() && other.isPresent()) {
            double share = percentStrong / PERCENT;
            FrontSpeed low = one.get();
            FrontSpeed high = other.get();
            return new Mixed(
                    new FrontSpeed(
                            Math.min(low.slow(), high.slow()),
                            (1 - share) * low.middle() + share * high.middle(),
                            Math.max(low.fast(), high.fast())),
                    notes);
        }
        FrontSpeed either = one.or(() -> other)
                .orElseThrow(() -> new Refusal(
                        "strong",
                        Message.of("advice.front-speed-unknown", "weak", weak.said(), "strong", strong.said()),
                        strong.name(),
                        Message.of("allowed.known-viscosity"),
                        Message.of("todo.take-other-pair")));
        return new Mixed(either, notes);
    }

    private Optional<FrontSpeed> known(Solvent solvent, List<Message> notes) {
        Optional<FrontSpeed> published = published(solvent);
        if (published.isPresent()) {
            return published;
        }
        Optional<Double> viscosity = figure(solvent, VISCOSITY).or(() -> figure(standard(solvent), VISCOSITY));
        if (viscosity.isEmpty()) {
            notes.add(Message.of("advice.front-viscosity-unknown", "solvent", solvent.said()));
            return Optional.empty();
        }
        DoubleSummaryStatistics tensions = catalogue.solvents().stream()
                .flatMap(each -> figure(each, SURFACE_TENSION).stream())
                .mapToDouble(Double::doubleValue)
                .summaryStatistics();
        notes.add(Message.of(
                "advice.front-tension-unknown",
                "solvent",
                solvent.said(),
                "low",
                tensions.getMin(),
                "high",
                tensions.getMax()));
        double middle = (tensions.getMin() + tensions.getMax()) / 2;
        return Optional.of(new FrontSpeed(
                FrontSpeed.of(FrontMigration.coefficient(tensions.getMin(), viscosity.get()))
                        .slow(),
                FrontMigration.coefficient(middle, viscosity.get()),
                FrontSpeed.of(FrontMigration.coefficient(tensions.getMax(), viscosity.get()))
                        .fast()));
    }

    private Solvent standard(Solvent solvent) {
        return EluentRules.of(catalogue).standard(solvent);
    }

    /** κ [mm²/s] from figures of the solvent itself. */
    private Optional<Double> coefficient(Solvent solvent) {
        Optional<Double> tension = figure(solvent, SURFACE_TENSION);
        Optional<Double> viscosity = figure(solvent, VISCOSITY);
        return tension.isEmpty() || viscosity.isEmpty()
                ? Optional.empty()
                : Optional.of(FrontMigration.coefficient(tension.get(), viscosity.get()));
    }

    private Optional<Double> figure(Solvent solvent, String property) {
        return catalogue.atRoomTemperature(solvent, property).map(PublishedValue::number);
    }
}
