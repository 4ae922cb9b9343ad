package midplate.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import midplate.words.English;
import midplate.words.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Codes to type: what goes in comes out, slips of the fingers are told, and a code makes only what it was made for. */
class LessonCodeTest {
    private static final String SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static LessonCode read(String typed, LessonCode.Kind kind) {
        return LessonCode.read("code", typed, kind);
    }

    private static String refused(String typed, LessonCode.Kind kind) {
        Refusal refusal = assertThrows(Refusal.class, () -> read(typed, kind), typed);
        assertEquals("code", refusal.field());
        assertEquals(typed, refusal.came());
        assertFalse(English.said(refusal.allowed()).isBlank());
        assertFalse(English.said(refusal.todo()).isBlank());
        return refusal.reason().key();
    }

    private static LessonCode any(Random random) {
        LessonCode.Kind kind = LessonCode.Kind.values()[random.nextInt(LessonCode.Kind.values().length)];
        return new LessonCode(
                kind, random.nextInt(LessonCode.MOST_CHOICES + 1), random.nextInt(LessonCode.MOST_SEED + 1));
    }

    @Test
    void whatGoesInComesOut() {
        Random random = new Random(1);
        Set<String> seen = new HashSet<>();
        Set<LessonCode> made = new HashSet<>();
        for (int i = 0; i < 20_000; i++) {
            LessonCode code = any(random);
            assertTrue(code.text().matches("[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}"), code.text());
            assertEquals(code, read(code.text(), code.kind()), code.text());
            seen.add(code.text());
            made.add(code);
        }
        assertEquals(made.size(), seen.size(), "no two codes read alike");
    }

    // by hand: edition 2 and the kind's place give the first sign (8 for an exercise, 9 for a worksheet …), a seed of 1
    // the seventh;
    // the last is (1·8 + 7·1) mod 31 = 15, F. The greatest: 8 + 2·31 + … + 7·31 = 845, mod 31 = 8.
    @ParameterizedTest
    @CsvSource({
        "EXERCISE, 0, 1, 8000-001F",
        "WORKSHEET, 0, 1, 9000-001G",
        "CLASS_READINGS, 0, 0, A000-000A",
        "EXERCISE, 1023, 1048575, 8ZZZ-ZZZ8"
    })
    void isWrittenAsTheBitsSay(LessonCode.Kind kind, int choices, int seed, String text) {
        assertEquals(text, new LessonCode(kind, choices, seed).text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"8000-001F", "8000001f", " 8ooo ooif ", "8-0-0-0-O-o-L-F", "8000 00lF"})
    void caseBlanksAndLookalikesDoNotMatter(String typed) {
        assertEquals(new LessonCode(LessonCode.Kind.EXERCISE, 0, 1), read(typed, LessonCode.Kind.EXERCISE));
    }

    @Test
    void eachSingleSlipIsToldButZForZero() {
        Random random = new Random(2);
        for (int i = 0; i < 300; i++) {
            LessonCode code = any(random);
            String text = code.text().replace("-", "");
            for (int at = 0; at < text.length(); at++) {
                for (char sign : SIGNS.toCharArray()) {
                    boolean same = text.charAt(at) == sign;
                    boolean zAndZero = Set.of('0', 'Z').containsAll(Set.copyOf(List.of(text.charAt(at), sign)));
                    if (!same && (!zAndZero || at == 7)) {
                        String slip = text.substring(0, at) + sign + text.substring(at + 1);
                        assertEquals("lesson.code-mistyped", refused(slip, code.kind()), text);
                    }
                }
            }
        }
    }

    @Test
    void neighboursExchangedAreTold() {
        Random random = new Random(3);
        for (int i = 0; i < 2000; i++) {
            LessonCode code = any(random);
            String text = code.text().replace("-", "");
            for (int at = 0; at < 6; at++) {
                char one = text.charAt(at);
                char other = text.charAt(at + 1);
                if (one != other && !Set.of('0', 'Z').equals(Set.of(one, other))) {
                    String slip = text.substring(0, at) + other + one + text.substring(at + 2);
                    assertEquals("lesson.code-mistyped", refused(slip, code.kind()), text);
                }
            }
        }
    }

    // by hand: edition 1, an exercise, seed 1: 4000001, and (4 + 7) mod 31 = 11, B
    @Test
    void aCodeOfAnotherEditionIsToldAsSuch() {
        assertEquals("lesson.code-edition", refused("4000-001B", LessonCode.Kind.EXERCISE));
        assertEquals(2, LessonCode.EDITION, "raised with what codes make: then mend the codes written out here");
    }

    @Test
    void aCodeOfAnotherKindIsToldAsSuch() {
        for (LessonCode.Kind made : LessonCode.Kind.values()) {
            for (LessonCode.Kind wanted : LessonCode.Kind.values()) {
                String text = new LessonCode(made, 5, 77).text();
                if (made != wanted) {
                    assertEquals("lesson.code-kind", refused(text, wanted));
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " ", "8000-001", "8000-001FF", "8000-00UF", "8000_001F", "8000-00öF", "８000-001F", "null"})
    void whatIsNoCodeIsToldAsSuch(String typed) {
        assertEquals("lesson.code-form", refused(typed, LessonCode.Kind.EXERCISE));
    }

    @Test
    void noRandomTextIsTakenMoreOftenThanItsCheckAllows() {
        Random random = new Random(4);
        int taken = 0;
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            random.ints(8, 0, 32).forEach(sign -> text.append(SIGNS.charAt(sign)));
            try {
                read(text.toString(), LessonCode.Kind.EXERCISE);
                taken++;
            } catch (Refusal refusal) {
                assertTrue(refusal.reason().key().startsWith("lesson.code-"), text.toString());
            }
        }
        // one first sign of 32 and about one last sign of 32: 19.5 of 20 000, standard deviation 4.4
        assertTrue(taken > 0 && taken < 20 + 5 * 4.4, "taken " + taken);
    }

    @ParameterizedTest
    @CsvSource({"-1, 0", "1024, 0", "0, -1", "0, 1048576"})
    void numbersThatDoNotFitAreRefused(int choices, int seed) {
        assertThrows(IllegalArgumentException.class, () -> new LessonCode(LessonCode.Kind.EXERCISE, choices, seed));
    }
}
