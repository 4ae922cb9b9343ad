package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The ways in which a starting material may fall, on a grid, before any plate is looked at. All figures here are own choices, made before
 * anything was measured; {@code DEVELOPERS.md} says how the verdict does on courses that are none of these.
 */
final class StartCourses {
    /** The part that stays, and how much each is believed. */
    private static final double[] STAYS = {0, 0.08, 0.13, 0.2, 0.3, 0.42, 0.56, 0.72, 0.86, 1};

    private static final double[] STAYS_CHANCES = {0.6, 0.04, 0.04, 0.04, 0.045, 0.045, 0.045, 0.045, 0.04, 0.06};

    private static final double FIRST_ORDER = 0.5;
    private static final double STRAIGHT = 0.2;
    private static final double SLOW_BEGINNING = 0.3;
    /** Delays in parts of τ, and how much each is believed. */
    private static final double[] DELAYS = {0, 0.5, 1.5};

    private static final double[] DELAY_CHANCES = {0.8, 0.12, 0.08};

    private static final int TIMES = 32;
    /** The shortest τ in parts of the first plate after the beginning; the longest in parts of the last plate. */
    private static final double SHORTEST = 0.3;

    private static final double LONGEST = 12;
    /** A time that somebody expects is about three τ, right within a factor of three. */
    private static final double TAUS_TO_THE_END = 3;

    private static final double LOG_ERROR_OF_EXPECTED = Math.log(3);

    private StartCourses() {}

    /** All of them, for plates from the first after the beginning to the last [min], both above 0. */
    static List<StartCourse> between(double first, double last, OptionalDouble expectedMinutes) {
        List<StartCourse> courses = new ArrayList<>();
        double step = Math.log(LONGEST * last / (SHORTEST * first)) / (TIMES - 1);
        for (int i = 0; i < TIMES; i++) {
            double time = SHORTEST * first * Math.exp(step * i);
            double believed = ofTime(time, expectedMinutes);
            for (int j = 0; j < STAYS.length; j++) {
                double prior = believed * STAYS_CHANCES[j];
                courses.add(
                        new StartCourse(StartCourse.Form.SLOW_BEGINNING, STAYS[j], time, 0, prior * SLOW_BEGINNING));
                for (int d = 0; d < DELAYS.length; d++) {
                    double delayed = prior * DELAY_CHANCES[d];
                    double delay = DELAYS[d] * time;
                    courses.add(new StartCourse(
                            StartCourse.Form.FIRST_ORDER, STAYS[j], time, delay, delayed * FIRST_ORDER));
                    courses.add(new StartCourse(StartCourse.Form.STRAIGHT, STAYS[j], time, delay, delayed * STRAIGHT));
                }
            }
        }
        return courses;
    }

    private static double ofTime(double time, OptionalDouble expectedMinutes) {
        if (expectedMinutes.isEmpty()) {
            return 1;
        }
        double off = Math.log(time * TAUS_TO_THE_END / expectedMinutes.getAsDouble()) / LOG_ERROR_OF_EXPECTED;
        return Math.exp(-off * off / 2);
    }
}
