package midplate.inference;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The chances that a spot of known η reads below or above a window, tabulated over η for each share of the strong solvent.
 *
 * <p>The tables depend on the pair, the setting and the window only, so they are kept and shared between questions; at most
 * {@value #MOST_ROWS} shares are kept, others are worked out each time.
 */
final class WindowChances {
    private static final int MOST_ROWS = 600;

    private final PairModel model;
    private final PlateScatter scatter;
    private final double low;
    private final double high;
    private final Map<Double, Row> rows = new ConcurrentHashMap<>();

    private WindowChances(PairModel model, PlateScatter scatter, double low, double high) {
        this.model = model;
        this.scatter = scatter;
        this.low = low;
        this.high = high;
    }

    /** Tables for a pair, a setting and a window [1 in Rf], filled as they are needed. */
    static WindowChances of(PairModel model, PlateScatter scatter, double low, double high) {
        return new WindowChances(model, scatter, low, high);
    }

    /** The chances at each mark of η, and those of reading inside. */
    record Row(double[] below, double[] above, double[] inside) {}

    Row at(double percent) {
        Row known = rows.get(percent);
        if (known != null) {
            return known;
        }
        Row made = make(percent);
        if (rows.size() < MOST_ROWS) {
            rows.put(percent, made);
        }
        return made;
    }

    private Row make(double percent) {
        double[] below = new double[LogitScale.SIZE];
        double[] above = new double[LogitScale.SIZE];
        double[] inside = new double[LogitScale.SIZE];
        double[] sigmas = model.sigma(percent, scatter.readingError());
        for (int mark = 0; mark < inside.length; mark++) {
            double rf = model.rf()[mark];
            double sigma = sigmas[mark];
            below[mark] = low > 0 ? Noise.below((low - rf) / sigma) : 0;
            above[mark] = high < 1 ? Noise.below((rf - high) / sigma) : 0;
            inside[mark] = Math.max(0, 1 - below[mark] - above[mark]);
        }
        return new Row(below, above, inside);
    }
}
