package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every part of the lesson: clean by the accessibility rules, in both themes and languages, at every width. */
class LessonViewsIT extends OnLesson {
    private static final List<String> PARTS =
            List.of("series", "climb", "slips", "why", "exercise", "class", "worksheet");

    static Stream<Arguments> views() {
        return PARTS.stream()
                .flatMap(id -> Stream.of(ColorScheme.LIGHT, ColorScheme.DARK)
                        .flatMap(scheme -> Stream.of(1280, 390).map(width -> Arguments.of(id, scheme, width))));
    }

    private static void go(Page page, String id) {
        part(page, id);
        shown(page, id);
    }

    @ParameterizedTest
    @MethodSource("views")
    void isCleanAndLargeEnough(String id, ColorScheme scheme, int width) {
        Page page = openLesson(scheme, width, width > 1000 ? 900 : 844);
        go(page, id);
        assertClean(page);
        shoot(
                page,
                String.format(Locale.ROOT, "lesson-%s-%s-%d", id, scheme, width).toLowerCase(Locale.ROOT));
        ViewsIT.unfold(page);
        assertClean(page);
        assertEquals(List.of(), ViewsIT.tooSmall(page, ""));
        ViewsIT.assertNothingSpills(page);
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 390, 599, 600, 768, 899, 900, 1024, 1440, 1920})
    void spillsAtNoWidth(int width) {
        Page page = openLesson(ColorScheme.LIGHT, width, 900);
        page.click("#sample-line");
        page.click("#ready-ladder");
        page.selectOption("#lesson-what-c1", "by groups");
        page.selectOption("#lesson-group-c1", "carboxylic-acid");
        page.click("#lesson-group-add-c1");
        page.selectOption("#lesson-what-c2", "by class");
        page.selectOption("#lesson-class-c2", "ester");
        page.click("#guide-start");
        ViewsIT.assertNothingSpills(page);
        for (String id : PARTS) {
            go(page, id);
            ViewsIT.unfold(page);
            ViewsIT.assertNothingSpills(page);
        }
    }

    @ParameterizedTest
    @MethodSource("guided")
    void theGuideIsCleanAtEachStep(ColorScheme scheme, int width) {
        Page page = openLesson(scheme, width, 844);
        page.click("#guide-start");
        for (int step = 1; step < 8; step++) {
            assertClean(page);
            ViewsIT.assertNothingSpills(page);
            assertEquals(List.of(), ViewsIT.tooSmall(page, "#lesson-guide "));
            page.click("#guide-next");
        }
        assertClean(page);
    }

    static Stream<Arguments> guided() {
        return Stream.of(Arguments.of(ColorScheme.LIGHT, 1280), Arguments.of(ColorScheme.DARK, 390));
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "0, 3", "0, 6", "100, 1", "100, 3", "100, 6"})
    void everyPartSaysSomethingAtBothEndsForFewCompoundsAndMany(String percent, int compounds) {
        Page page = openLesson();
        page.evaluate("""
                ([percent, count]) => {
                    const of = ['stilbene', 'anisole', 'methyl-benzoate', 'acetophenone', 'benzyl-alcohol', 'acetanilide'];
                    const compounds = of.slice(0, count).map((compound, i) => ({ id: `c${i + 1}`, name: 'ABCDEF'[i], compound }));
                    localStorage.setItem('midplate-lesson', JSON.stringify({ form: 1, lesson: { compounds, percent } }));
                }
                """, List.of(percent, compounds));
        page.reload();
        ready(page);
        for (String id : PARTS) {
            go(page, id);
            assertTrue(page.locator("#lesson-part > *").count() > 1, id + " shows something below its title");
            String told = page.innerText("#lesson-part");
            assertTrue(told.length() > 120, id + " says " + told);
            assertFalse(told.contains("NaN") || told.contains("undefined"), told);
            assertThat(page.locator("#lesson-part .fault, #lesson-gone")).hasCount(0);
        }
    }

    @Test
    void inGermanNoEnglishWordIsLeft() {
        Page page = openLesson();
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        Set<String> seen = new TreeSet<>(ViewsIT.english(page));
        page.click("#sample-line");
        page.click("#ready-ladder");
        page.selectOption("#lesson-what-c1", "by groups");
        page.selectOption("#lesson-what-c2", "by class");
        seen.addAll(ViewsIT.english(page));
        page.click("#ready-classes");
        page.click("#guide-start");
        for (int step = 1; step < 8; step++) {
            seen.addAll(ViewsIT.english(page));
            page.click("#guide-next");
        }
        seen.addAll(ViewsIT.english(page));
        page.click("#guide-leave");
        for (String id : PARTS) {
            go(page, id);
            ViewsIT.unfold(page);
            seen.addAll(ViewsIT.english(page));
        }
        assertEquals(Set.of(), seen);
    }
}
