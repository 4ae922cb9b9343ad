package midplate.lesson;

import java.util.Locale;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * What an exercise, a worksheet or a class is made from, short enough to type: eight signs of Crockford's base 32 (digits and capitals
 * without I, L, O and U), shown as two fours. It holds 40 bits: 3 of the edition, 2 of the kind, 10 of choices, 20 of the seed, and 5 by which a
 * slip of the fingers is told.
 *
 * <p>Read back, case, blanks and hyphens do not matter, O counts as 0, I and L as 1. The same code makes the same on every machine, as
 * long as the edition is the same: it is raised whenever the model or the table of compounds changes what a code makes.
 *
 * @param kind what it makes
 * @param choices what was chosen, in the kind's own form, 0 to {@value #MOST_CHOICES}
 * @param seed by what it is drawn, 0 to {@value #MOST_SEED}
 */
public record LessonCode(Kind kind, int choices, int seed) {
    /** The edition of what codes make, 0 to 7. */
    public static final int EDITION = 2;

    /** The greatest number of choices. */
    public static final int MOST_CHOICES = (1 << 10) - 1;

    /** The greatest seed. */
    public static final int MOST_SEED = (1 << 20) - 1;

    private static final String SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int LENGTH = 8;
    /** A prime, so that each single slip (but Z for 0 and back) and each swap of two neighbours before the check changes it. */
    private static final int CHECK = 31;

    /** What a code makes. */
    public enum Kind {
        /** Unknowns to be run against. */
        EXERCISE(0),
        /** Sheets of paper. */
        WORKSHEET(1 << 5),
        /** Readings of a class. */
        CLASS_READINGS(20);

        /** Choices of such a code, to show one. */
        private final int example;

        Kind(int example) {
            this.example = example;
        }
    }

    /** Refuses numbers that do not fit. */
    public LessonCode {
        if (choices < 0 || choices > MOST_CHOICES || seed < 0 || seed > MOST_SEED) {
            throw new IllegalArgumentException("choices " + choices + ", seed " + seed);
        }
    }

    /** As it is shown: {@code 8G7K-20Q2}. */
    public String text() {
        long bits = (((((long) EDITION << 2) | kind.ordinal()) << 10 | choices) << 20) | seed;
        StringBuilder signs = new StringBuilder();
        for (int i = LENGTH - 2; i >= 0; i--) {
            signs.append(SIGNS.charAt((int) (bits >> (5 * i)) & 31));
        }
        signs.append(SIGNS.charAt(check(signs)));
        return signs.insert(LENGTH / 2, '-').toString();
    }

    /**
     * A code as somebody typed it.
     *
     * @param field the place in the input, for a refusal
     * @param typed what came
     * @param kind what it must make
     * @throws Refusal where it is no code, was mistyped, makes something else, or is of another edition
     */
    public static LessonCode read(String field, String typed, Kind kind) {
        String signs = typed.toUpperCase(Locale.ROOT)
                .replaceAll("[\\s-]", "")
                .replace('O', '0')
                .replaceAll("[IL]", "1");
        if (signs.length() != LENGTH || !signs.chars().allMatch(sign -> SIGNS.indexOf(sign) >= 0)) {
            throw refusal(field, typed, kind, "lesson.code-form");
        }
        if (check(signs.substring(0, LENGTH - 1)) != SIGNS.indexOf(signs.charAt(LENGTH - 1))) {
            throw refusal(field, typed, kind, "lesson.code-mistyped");
        }
        long bits = 0;
        for (char sign : signs.substring(0, LENGTH - 1).toCharArray()) {
            bits = bits << 5 | SIGNS.indexOf(sign);
        }
        if ((int) (bits >> 32) != EDITION) {
            throw refusal(field, typed, kind, "lesson.code-edition");
        }
        if ((int) (bits >> 30 & 3) != kind.ordinal()) {
            throw refusal(field, typed, kind, "lesson.code-kind");
        }
        return new LessonCode(kind, (int) (bits >> 20) & MOST_CHOICES, (int) bits & MOST_SEED);
    }

    private static int check(CharSequence signs) {
        int sum = 0;
        for (int i = 0; i < signs.length(); i++) {
            sum += (i + 1) * SIGNS.indexOf(signs.charAt(i));
        }
        return sum % CHECK;
    }

    private static Refusal refusal(String field, String typed, Kind kind, String reason) {
        return new Refusal(
                field,
                Message.of(reason, "came", typed.strip()),
                typed,
                Message.of("allowed.lesson-code", "example", new LessonCode(kind, kind.example, 1).text()),
                Message.of("todo.type-lesson-code"));
    }
}
