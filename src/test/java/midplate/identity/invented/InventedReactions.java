package midplate.identity.invented;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;

/**
 * Makes up reactions by the equations of kinetics, integrated in small steps, and lets an eye grade them that is not the one which the
 * verdict assumes: another factor from grade to grade, another leaning, drops of unequal size, one grade off in 15 to 25 of 100 marks.
 */
public final class InventedReactions {
    /** When plates are run [min]. */
    public static final double[] MINUTES = {0, 10, 30, 60, 120, 240};

    private static final double STEP = 0.25;
    private static final double ENOUGH = 0.03;
    private static final double SOME = 0.1;

    private final Random random;

    /** With a seed. */
    public InventedReactions(long seed) {
        this.random = new Random(seed);
    }

    /** What a reaction does. */
    public enum Kind {
        /** First order to the end. */
        FIRST_ORDER(25),
        /** As fast all the time, then over. */
        ZERO_ORDER(15),
        /** Ever faster by its own product. */
        AUTOCATALYTIC(15),
        /** Comes to rest before the end. */
        STALLS(16),
        /** Does not begin. */
        NEVER_BEGINS(4),
        /** The product is lost again. */
        PRODUCT_LOST(10),
        /** Mostly others form. */
        DIRTY(6),
        /** By way of another spot. */
        BY_WAY(6),
        /** The product does not show. */
        UNSEEN_PRODUCT(3);

        private final int share;

        Kind(int share) {
            this.share = share;
        }
    }

    /** What is true at a time; where two words fit, either is right. */
    public enum Truth {
        RUNNING,
        FINISHED,
        RUNNING_OR_FINISHED,
        STALLED,
        RUNNING_OR_STALLED,
        GONE_WRONG,
        NEARLY_GONE_WRONG
    }

    /**
     * A reaction and how it was graded, plate by plate.
     *
     * @param kind what it does
     * @param left what is left of the starting material [1]
     * @param truth what is true
     * @param start grades of the starting material
     * @param product of the product
     * @param other of another spot
     * @param baseline of what stays at the start line
     */
    public record Reaction(
            Kind kind, double[] left, Truth[] truth, int[] start, int[] product, int[] other, int[] baseline) {}

    /** Amounts [1]: starting material, product, another that shows, and what the product is lost to. */
    private record Amounts(double start, double product, double other, double lost) {}

    /** How amounts change in a minute. */
    private interface Rates {
        double[] at(double start, double product, double other);
    }

    /** The next reaction. */
    public Reaction next() {
        Kind kind = kind();
        double stays = kind == Kind.STALLS ? between(0.12, 0.8) : kind == Kind.NEVER_BEGINS ? 1 : 0;
        Rates rates = rates(kind, stays);
        double response = Math.exp(0.7 * random.nextGaussian());
        if (kind == Kind.UNSEEN_PRODUCT) {
            response = 1e-4;
        }
        double otherResponse = Math.exp(0.5 * random.nextGaussian());
        Eye eye = new Eye();
        int n = MINUTES.length;
        Reaction made = new Reaction(kind, new double[n], new Truth[n], new int[n], new int[n], new int[n], new int[n]);
        double[] now = {1, 0, 0, 0};
        double most = 0;
        double time = 0;
        for (int i = 0; i < n; i++) {
            for (; time < MINUTES[i] - STEP / 2; time += STEP) {
                double[] change = rates.at(now[0], now[1], now[2]);
                for (int s = 0; s < now.length; s++) {
                    now[s] = Math.max(0, now[s] + STEP * change[s]);
                }
                most = Math.max(most, now[1]);
            }
            Amounts amounts = new Amounts(now[0], now[1], now[2], now[3]);
            made.left()[i] = amounts.start();
            made.truth()[i] = truth(kind, amounts, stays, most);
            double drop = Math.exp(0.15 * random.nextGaussian());
            made.start()[i] = eye.grade(amounts.start() * drop);
            made.product()[i] = eye.grade(amounts.product() * response * drop);
            made.other()[i] = eye.grade(amounts.other() * otherResponse * drop);
            made.baseline()[i] = eye.grade(amounts.lost() * 0.5 * drop);
        }
        return made;
    }

    private Truth truth(Kind kind, Amounts now, double stays, double most) {
        boolean muchGone = now.start() < 0.3;
        if (kind == Kind.UNSEEN_PRODUCT || kind == Kind.DIRTY) {
            return muchGone ? Truth.GONE_WRONG : now.start() < 0.6 ? Truth.NEARLY_GONE_WRONG : Truth.RUNNING;
        }
        if (kind == Kind.PRODUCT_LOST && now.product() < 0.8 * most) {
            return now.product() < 0.5 * most ? Truth.GONE_WRONG : Truth.NEARLY_GONE_WRONG;
        }
        if (kind == Kind.BY_WAY && now.other() > SOME) {
            return Truth.RUNNING;
        }
        if (stays > 0) {
            double ofTheFall = stays == 1 ? 0 : (now.start() - stays) / (1 - stays);
            return ofTheFall < 0.07 ? Truth.STALLED : ofTheFall < 0.25 ? Truth.RUNNING_OR_STALLED : Truth.RUNNING;
        }
        return now.start() < ENOUGH ? Truth.FINISHED : now.start() < SOME ? Truth.RUNNING_OR_FINISHED : Truth.RUNNING;
    }

    private Rates rates(Kind kind, double stays) {
        double k = 1 / logBetween(6, 120);
        double byProduct = between(0.02, 0.1);
        double loss = k * logBetween(0.03, 0.6);
        double toProduct = between(0.05, 0.25);
        double side = between(0, 0.15);
        return switch (kind) {
            case FIRST_ORDER, UNSEEN_PRODUCT -> (a, p, o) -> new double[] {-k * a, (1 - side) * k * a, side * k * a, 0};
            case ZERO_ORDER ->
                (a, p, o) -> {
                    double now = a > 0 ? k / 2 : 0;
                    return new double[] {-now, (1 - side) * now, side * now, 0};
                };
            case AUTOCATALYTIC ->
                (a, p, o) -> {
                    double now = 4 * k * a * (1 - a + byProduct);
                    return new double[] {-now, (1 - side) * now, side * now, 0};
                };
            case STALLS ->
                (a, p, o) -> {
                    double now = 3 * k * Math.max(0, a - stays);
                    return new double[] {-now, (1 - side) * now, side * now, 0};
                };
            case NEVER_BEGINS -> (a, p, o) -> new double[4];
            case PRODUCT_LOST -> (a, p, o) -> new double[] {-k * a, k * a - loss * p, 0.5 * loss * p, 0.5 * loss * p};
            case DIRTY -> (a, p, o) -> new double[] {-k * a, toProduct * k * a, 0.6 * k * a, 0.2 * k * a};
            case BY_WAY -> (a, p, o) -> new double[] {-2 * k * a, k * o, 2 * k * a - k * o, 0};
        };
    }

    private Kind kind() {
        Map<Kind, Integer> shares = new EnumMap<>(Kind.class);
        int all = 0;
        for (Kind kind : Kind.values()) {
            shares.put(kind, kind.share);
            all += kind.share;
        }
        int place = random.nextInt(all);
        for (Map.Entry<Kind, Integer> each : shares.entrySet()) {
            place -= each.getValue();
            if (place < 0) {
                return each.getKey();
            }
        }
        throw new IllegalStateException("shares do not sum");
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double logBetween(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    /** An eye of its own for each reaction. */
    private final class Eye {
        private final double factor = logBetween(1.8, 3.6);
        private final double leaning = between(-0.35, 0.35);
        private final double slips = between(0.15, 0.25);

        int grade(double amount) {
            if (amount < 1e-6) {
                return random.nextDouble() < 0.02 ? 1 : 0;
            }
            double grade = Math.rint(4 + leaning + Math.log(amount) / Math.log(factor));
            double slip = random.nextDouble();
            if (slip < slips) {
                grade += slip < slips / 2 ? -1 : 1;
            }
            return (int) Math.max(0, Math.min(4, grade));
        }
    }
}
