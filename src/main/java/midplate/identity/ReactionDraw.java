package midplate.identity;

import java.util.Map;

/**
 * One course that a whole reaction may take, seen by one eye.
 *
 * @param start how the starting material falls
 * @param logFactor ln k of {@link EyeGrades}
 * @param formed how the others form, by name
 * @param last time of the latest plate, by which rates of loss are given [min]
 */
record ReactionDraw(StartCourse start, double logFactor, Map<String, FormedCourse> formed, double last) {
    /** The grades of the starting material at these times, not rounded. */
    double[] startGrades(double[] minutes) {
        double[] grades = new double[minutes.length];
        for (int i = 0; i < grades.length; i++) {
            grades[i] = grade(start.left(minutes[i]));
        }
        return grades;
    }

    /** The grades of something formed at these rising times, not rounded. */
    double[] formedGrades(String species, double[] minutes) {
        FormedCourse course = formed.get(species);
        if (course == null) {
            throw new IllegalArgumentException("Nobody looked at " + species);
        }
        double[] grades = FormedCourse.amounts(start, minutes, course.loss() / last);
        for (int i = 0; i < grades.length; i++) {
            grades[i] = grade(grades[i] * course.strength());
        }
        return grades;
    }

    private double grade(double amount) {
        return EyeGrades.shown(EyeGrades.score(Math.log(Math.max(amount, 1e-9)), logFactor));
    }

    /**
     * How long after the latest plate the starting material is one grade fainter, or no longer seen [min].
     *
     * @param most no longer than this [min]
     */
    double minutesToNextGrade(double most) {
        double now = start.left(last);
        double goal = Math.max(ReactionPosterior.none(logFactor), now * Math.exp(-logFactor));
        double low = 0;
        double high = most;
        if (start.left(last + most) > goal) {
            return most;
        }
        for (int i = 0; i < 30; i++) {
            double middle = (low + high) / 2;
            if (start.left(last + middle) > goal) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
