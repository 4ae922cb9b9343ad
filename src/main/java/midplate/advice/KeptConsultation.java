package midplate.advice;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import midplate.inference.Knowledge;
import midplate.inference.SpotGuess;
import org.jspecify.annotations.Nullable;

/**
 * What was answered to a question, kept for the same question asked again: what was answered once is not worked out twice. The answers
 * are small; what was learned to give them is large, and whoever supplies it decides how long that is kept. Safe to share
 * between threads; one that asks while another works waits for it.
 */
final class KeptConsultation implements Consultation {
    /** So many lists of shares are remembered with what plates would show there. */
    private static final int MOST_FORECASTS = 8;

    private final Supplier<? extends Consultation> opening;
    private boolean taken;
    private @Nullable Advice advice;
    private @Nullable List<SpotGuess> guesses;
    private final Map<Integer, ScoutingPlan> plans = new HashMap<>();
    private final Map<List<Double>, List<Forecast>> forecasts = new HashMap<>();

    /** One that is learned from its plates when asked what was not answered yet. */
    KeptConsultation(Supplier<? extends Consultation> opening) {
        this.opening = opening;
    }

    /** Refuses what cannot be asked. */
    synchronized void check() {
        if (!taken) {
            open();
        }
    }

    private Consultation open() {
        Consultation open = opening.get();
        taken = true;
        return open;
    }

    @Override
    public synchronized Advice advice() {
        Advice known = advice;
        if (known == null) {
            known = open().advice();
            advice = known;
        }
        return known;
    }

    @Override
    public synchronized List<Forecast> at(List<Double> percentStrong) {
        List<Forecast> known = forecasts.get(percentStrong);
        if (known == null) {
            known = open().at(percentStrong);
            if (forecasts.size() < MOST_FORECASTS) {
                forecasts.put(List.copyOf(percentStrong), known);
            }
        }
        return known;
    }

    @Override
    public synchronized Curves curves() {
        return open().curves();
    }

    @Override
    public synchronized ScoutingPlan scout(int jars) {
        ScoutingPlan known = plans.get(jars);
        if (known == null) {
            known = open().scout(jars);
            plans.put(jars, known);
        }
        return known;
    }

    @Override
    public synchronized Replacements others(OthersWish wish) {
        return open().others(wish);
    }

    @Override
    public synchronized Knowledge knowledge() {
        return open().knowledge();
    }

    @Override
    public synchronized List<SpotGuess> whichIsWhich() {
        List<SpotGuess> known = guesses;
        if (known == null) {
            known = open().whichIsWhich();
            guesses = known;
        }
        return known;
    }
}
