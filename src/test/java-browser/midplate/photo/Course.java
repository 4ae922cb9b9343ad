package midplate.photo;

/**
 * Where the run begins and where it ends.
 *
 * @param widthMm the plate's width [mm]
 * @param heightMm the plate's height [mm]
 * @param start heights of the start line at the left and the right edge [mm]
 * @param front heights of the front at the left edge, the middle and the right edge [mm], a parabola through them
 */
record Course(double widthMm, double heightMm, double[] start, double[] front) {
    double startAt(double x) {
        return start[0] + (start[1] - start[0]) * x / widthMm;
    }

    double frontAt(double x) {
        double t = x / widthMm;
        return front[0] * (1 - t) * (1 - 2 * t) + front[1] * 4 * t * (1 - t) + front[2] * t * (2 * t - 1);
    }

    double runAt(double x) {
        return frontAt(x) - startAt(x);
    }

    double rf(double x, double mm) {
        return (mm - startAt(x)) / runAt(x);
    }

    double heightOf(double x, double rf) {
        return startAt(x) + rf * runAt(x);
    }

    /** The height in a column from where a substance has come to in a point, as far as runs of both columns differ [mm]. */
    double heightIn(double column, double x, double mm) {
        return heightOf(column, rf(x, mm));
    }
}
