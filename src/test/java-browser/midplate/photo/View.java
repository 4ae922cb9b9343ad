package midplate.photo;

/** Where a camera sees the plane of the plate: a pinhole with a little distortion of its lens. Plane in millimetres, heights upwards. */
final class View {
    private final int width;
    private final int height;
    private final double tiltDegrees;
    private final double perspectiveDegrees;
    private final double lens;
    /** From the plane to pixels, rows of a homography. */
    private final double[] to;
    /** From pixels to the plane. */
    private final double[] from;

    private View(int width, int height, double tilt, double perspective, double lens, double[] to) {
        this.width = width;
        this.height = height;
        this.tiltDegrees = tilt;
        this.perspectiveDegrees = perspective;
        this.lens = lens;
        this.to = to;
        this.from = inverse(to);
    }

    static View of(Chance chance, Course course, int width, int height) {
        View view = draw(chance, course, width, height);
        for (int again = 0; again < 60 && !view.shows(course); again++) {
            view = draw(chance.of("again " + again), course, width, height);
        }
        return view;
    }

    /** Whether the whole plate is in the picture. */
    private boolean shows(Course course) {
        double margin = 0.008 * width;
        for (int corner = 0; corner < 4; corner++) {
            double[] at = pixel(corner % 2 * course.widthMm(), corner / 2 * course.heightMm());
            if (at[0] < margin || at[1] < margin || at[0] > width - margin || at[1] > height - margin) {
                return false;
            }
        }
        return true;
    }

    private static View draw(Chance chance, Course course, int width, int height) {
        double roll = chance.happens(0.6) ? chance.normal(3.5) : chance.between(-15, 15);
        double pitch = chance.happens(0.6) ? chance.normal(5) : chance.between(-15, 15);
        double yaw = chance.happens(0.6) ? chance.normal(4) : chance.between(-15, 15);
        roll = Math.max(-15, Math.min(15, roll));
        double fill = chance.between(0.55, 0.9);
        double scale = Math.min(fill * height / course.heightMm(), 0.8 * width / course.widthMm());
        double distance = chance.between(150, 350);
        double x = width / 2.0 + chance.between(-0.5, 0.5) * Math.max(0, width - scale * course.widthMm() * 1.3);
        double y = height / 2.0 + chance.between(-0.35, 0.35) * Math.max(0, height - scale * course.heightMm() * 1.12);
        double[] turn = turned(Math.toRadians(roll), Math.toRadians(pitch), Math.toRadians(yaw));
        double focus = scale * distance;
        double cx = course.widthMm() / 2;
        double cy = course.heightMm() / 2;
        // camera axes: x right, y down, z away; the plane's height runs against y
        double[] rows = new double[9];
        double[] shift = {(x - width / 2.0) / scale, (y - height / 2.0) / scale, distance};
        for (int row = 0; row < 3; row++) {
            rows[3 * row] = turn[3 * row];
            rows[3 * row + 1] = -turn[3 * row + 1];
            rows[3 * row + 2] = shift[row] - turn[3 * row] * cx + turn[3 * row + 1] * cy;
        }
        double[] to = new double[9];
        for (int column = 0; column < 3; column++) {
            to[column] = focus * rows[column] + width / 2.0 * rows[6 + column];
            to[3 + column] = focus * rows[3 + column] + height / 2.0 * rows[6 + column];
            to[6 + column] = rows[6 + column];
        }
        double lens = chance.between(-0.004, 0.004);
        return new View(width, height, Math.abs(roll), Math.hypot(pitch, yaw), lens, to);
    }

    private static double[] turned(double roll, double pitch, double yaw) {
        double[] z = {Math.cos(roll), -Math.sin(roll), 0, Math.sin(roll), Math.cos(roll), 0, 0, 0, 1};
        double[] x = {1, 0, 0, 0, Math.cos(pitch), -Math.sin(pitch), 0, Math.sin(pitch), Math.cos(pitch)};
        double[] y = {Math.cos(yaw), 0, Math.sin(yaw), 0, 1, 0, -Math.sin(yaw), 0, Math.cos(yaw)};
        return product(product(y, x), z);
    }

    private static double[] product(double[] a, double[] b) {
        double[] c = new double[9];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 3; k++) {
                    c[3 * i + j] += a[3 * i + k] * b[3 * k + j];
                }
            }
        }
        return c;
    }

    private static double[] inverse(double[] m) {
        double[] c = {
            m[4] * m[8] - m[5] * m[7], m[2] * m[7] - m[1] * m[8], m[1] * m[5] - m[2] * m[4],
            m[5] * m[6] - m[3] * m[8], m[0] * m[8] - m[2] * m[6], m[2] * m[3] - m[0] * m[5],
            m[3] * m[7] - m[4] * m[6], m[1] * m[6] - m[0] * m[7], m[0] * m[4] - m[1] * m[3]
        };
        double determinant = m[0] * c[0] + m[1] * c[3] + m[2] * c[6];
        for (int i = 0; i < 9; i++) {
            c[i] /= determinant;
        }
        return c;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    double tiltDegrees() {
        return tiltDegrees;
    }

    double perspectiveDegrees() {
        return perspectiveDegrees;
    }

    private double stretch(double dx, double dy) {
        double half = Math.hypot(width, height) / 2;
        return 1 + lens * (dx * dx + dy * dy) / (half * half);
    }

    /** Where a pixel looks at: {x, h} [mm]. */
    double[] plane(double x, double y) {
        double dx = x - width / 2.0;
        double dy = y - height / 2.0;
        double s = stretch(dx, dy);
        double u = width / 2.0 + dx * s;
        double v = height / 2.0 + dy * s;
        double w = from[6] * u + from[7] * v + from[8];
        return new double[] {(from[0] * u + from[1] * v + from[2]) / w, (from[3] * u + from[4] * v + from[5]) / w};
    }

    /** Where a place is seen: {x, y} [pixels]. */
    double[] pixel(double x, double h) {
        double w = to[6] * x + to[7] * h + to[8];
        double u = (to[0] * x + to[1] * h + to[2]) / w - width / 2.0;
        double v = (to[3] * x + to[4] * h + to[5]) / w - height / 2.0;
        double dx = u;
        double dy = v;
        for (int i = 0; i < 8; i++) {
            double s = stretch(dx, dy);
            dx = u / s;
            dy = v / s;
        }
        return new double[] {width / 2.0 + dx, height / 2.0 + dy};
    }

    /** The scale in the plate's middle [pixels/mm]. */
    double pixelsPerMm(Course course) {
        double[] low = pixel(course.widthMm() / 2, course.heightMm() / 2 - 1);
        double[] high = pixel(course.widthMm() / 2, course.heightMm() / 2 + 1);
        return Math.hypot(high[0] - low[0], high[1] - low[1]) / 2;
    }
}
