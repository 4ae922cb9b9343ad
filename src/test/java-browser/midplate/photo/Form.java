package midplate.photo;

/** The forms of spots: how much substance lies at a place, as a share of the most in the spot. */
enum Form {
    GAUSS("compact", 1, 8),
    DISC("compact", 1.2, 7),
    ELLIPSE("compact", 1.2, 8),
    FLAT("compact", 1.5, 8),
    CRESCENT("compact", 1.2, 4),
    RING("compact", 3, 7),
    TAIL("compact", 3, 8),
    SHARP_HEAD("sharp-head", 4, 8),
    STREAK("streak", 10, 30);

    private final String shape;
    private final double least;
    private final double most;

    Form(String shape, double least, double most) {
        this.shape = shape;
        this.least = least;
        this.most = most;
    }

    String shape() {
        return shape;
    }

    double least() {
        return least;
    }

    double most() {
        return most;
    }

    /**
     * The substance at a place.
     *
     * @param u across, from the middle [mm]
     * @param v along the run, from the middle [mm]
     * @param width how wide about [mm]
     * @param length how long about [mm]
     * @param bend of a crescent [1/mm]
     * @param own the unevenness of a streak
     */
    double at(double u, double v, double width, double length, double bend, Unevenness own) {
        double p = 2 * u / width;
        double q = 2 * v / length;
        double r = Math.hypot(p, q);
        return switch (this) {
            case GAUSS -> Math.exp(-1.6 * r * r);
            case DISC -> step((0.85 - r) / 0.06);
            case ELLIPSE -> step((0.85 - r) / 0.13);
            case FLAT -> Math.exp(-1.6 * r * r * r * r);
            case CRESCENT -> {
                double bent = 2 * (v - bend * u * u) / length;
                yield Math.exp(-1.6 * bent * bent) * Math.exp(-1.2 * p * p * p * p);
            }
            case RING -> Math.exp(-Math.pow((r - 0.7) / 0.22, 2)) + 0.45 * step((0.7 - r) / 0.08);
            case TAIL -> tail(u, v, width, length);
            case SHARP_HEAD -> sharpHead(u, v, width, length);
            case STREAK -> streak(p, v, length, own);
        };
    }

    private static double step(double t) {
        return 1 / (1 + Math.exp(-t));
    }

    private static double tail(double u, double v, double width, double length) {
        double head = v - 0.22 * length;
        double deviation = 0.13 * length;
        double round = Math.exp(-head * head / (2 * deviation * deviation));
        double along = head >= 0 ? round : 0.6 * round + 0.4 * Math.exp(head / (0.4 * length));
        double narrow = head >= 0 ? 1 : Math.max(0.45, 1 + 0.6 * head / length);
        return along * Math.exp(-1.6 * Math.pow(2 * u / (width * narrow), 2));
    }

    private static double sharpHead(double u, double v, double width, double length) {
        double below = 0.35 * length - v - 0.9 * u * u / width;
        double t = below / length;
        double narrow = Math.max(0.35, 1 - 0.5 * t);
        double ramp = t < 0 ? 1 : Math.max(0, 1 - t * 0.95);
        return ramp * step(below / 0.14) * step((0.85 - Math.abs(2 * u / (width * narrow))) / 0.12);
    }

    private static double streak(double p, double v, double length, Unevenness own) {
        double soft = 0.06 * length;
        double along = step((v + 0.42 * length) / soft) * step((0.42 * length - v) / soft);
        double uneven = 0.78 + 0.22 * own.at(0, v) + 0.25 * own.at(100, 0) * v / length;
        return along * Math.max(0.1, uneven) * Math.exp(-1.6 * Math.pow(Math.abs(p), 3));
    }
}
