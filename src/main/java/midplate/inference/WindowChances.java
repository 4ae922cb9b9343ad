package midplate.inference;

import midplate.plate.Setting;
import org.jspecify.annotations.Nullable;

/**
 * The chances that a spot of known η reads below, above or inside a window, tabulated over η for each share of the strong
 * solvent.
 *
 * <p>The tables depend on the pair, the setting and the window only, so they are kept and shared between questions.
 */
final class WindowChances {
    private final Window window;
    private final PairModel model;
    private final PlateScatter scatter;
    private final ByShare<Row> rows = new ByShare<>();

    /**
     * What the tables depend on.
     *
     * @param pair id of the pair
     * @param setting how much plates scatter
     * @param low lower edge [1]
     * @param high upper edge [1]
     */
    record Window(String pair, Setting setting, double low, double high) {}

    private WindowChances(Window window, PairModel model) {
        this.window = window;
        this.model = model;
        this.scatter = PlateScatter.of(window.setting());
    }

    /** Tables for a window in a pair of that model, filled as they are needed. */
    static WindowChances of(Window window, PairModel model) {
        return new WindowChances(window, model);
    }

    Window window() {
        return window;
    }

    /** How many shares are kept. */
    int size() {
        return rows.size();
    }

    Row at(double percent) {
        Row known = rows.get(percent);
        if (known != null) {
            return known;
        }
        Row made = new Row(percent);
        rows.put(percent, made);
        return made;
    }

    /** The chances at one share; those below and above are needed at few of them, so they wait until asked for. */
    final class Row {
        private final double percent;
        private final Climb climb;
        private final double[] inside = new double[LogitScale.SIZE];
        /** The same whoever works it out, so it does not matter if two threads do. */
        private volatile double @Nullable [][] outside;

        private Row(double percent) {
            this.percent = percent;
            this.climb = model.climb(percent);
            double low = window.low();
            double high = window.high();
            double[] rf = model.rf();
            double[] sigmas = model.sigma(percent, scatter.readingError());
            for (int mark = 0; mark < inside.length; mark++) {
                inside[mark] =
                        Math.max(0, 1 - lower(low, rf[mark], sigmas[mark]) - upper(high, rf[mark], sigmas[mark]));
            }
        }

        /** What the eluent does. */
        Climb climb() {
            return climb;
        }

        /** The chance at each mark of η to read inside [1]. */
        double[] inside() {
            return inside;
        }

        /** The same below. */
        double[] below() {
            return outside()[0];
        }

        /** The same above. */
        double[] above() {
            return outside()[1];
        }

        private double[][] outside() {
            double[][] known = outside;
            if (known == null) {
                double[] rf = model.rf();
                double[] sigmas = model.sigma(percent, scatter.readingError());
                known = new double[2][rf.length];
                for (int mark = 0; mark < rf.length; mark++) {
                    known[0][mark] = lower(window.low(), rf[mark], sigmas[mark]);
                    known[1][mark] = upper(window.high(), rf[mark], sigmas[mark]);
                }
                outside = known;
            }
            return known;
        }
    }

    private static double lower(double low, double rf, double sigma) {
        return low > 0 ? StudentTable.below((low - rf) / sigma) : 0;
    }

    private static double upper(double high, double rf, double sigma) {
        return high < 1 ? StudentTable.below((rf - high) / sigma) : 0;
    }
}
