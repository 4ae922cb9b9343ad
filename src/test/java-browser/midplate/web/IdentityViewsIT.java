package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The entry of what a compound is: clean by the accessibility rules, at every width, for a finger, in German. */
class IdentityViewsIT extends OnIdentity {
    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1280", "LIGHT, 390", "DARK, 390"})
    void theEntryIsCleanInEachWayAndWithAFault(ColorScheme scheme, int width) {
        Page page = openWhat(wide(width).setColorScheme(scheme));
        String shown = "what-%s-" + scheme.name().toLowerCase(java.util.Locale.ROOT) + "-" + width;
        page.fill("#smiles-s1", "COC(=O)c1ccc(OC)c(CO)c1");
        recognised(page, "ester");
        page.focus("#found-s1-ester");
        assertClean(page);
        shoot(page, String.format(shown, "smiles"));
        page.fill("#smiles-s1", "C(");
        page.waitForSelector("#smiles-s1-fault");
        assertClean(page);
        choose(page, "groups");
        page.click("#add-s1-ester");
        recognised(page, "ester");
        assertClean(page);
        shoot(page, String.format(shown, "groups"));
        choose(page, "class");
        assertClean(page);
        shoot(page, String.format(shown, "class"));
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 390, 599, 768, 900, 1024, 1440, 1920})
    void nothingOfTheEntrySpillsAtAnyWidth(int width) {
        Page page = openWhat(wide(width));
        page.fill("#smiles-s1", "O=C(OCC1c2ccccc2-c2ccccc12)NCCCC[C@H](NC(=O)OC(C)(C)C)C(=O)OC");
        recognised(page, "carbamate");
        assertNothingSpills(page);
        choose(page, "groups");
        page.click("#groups-more");
        page.evaluate("document.querySelectorAll('#what details').forEach(each => { each.open = true; })");
        page.click("#add-s1-ester");
        assertNothingSpills(page);
    }

    private static void assertNothingSpills(Page page) {
        Object spill = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertEquals(0, ((Number) spill).intValue(), "nothing spills over the side");
    }

    @Test
    void whatIsPressedIsLargeEnoughForAFinger() {
        Page page = openWhat(wide(390));
        choose(page, "groups");
        page.click("#add-s1-ester");
        recognised(page, "ester");
        Object small = page.evaluate("""
                () => [...document.querySelectorAll('#what button:not(.asked), #what select, #what input:not([type=radio]), #what summary, #what label[for^=way], #spots button')]
                    .map(each => ({ each, box: each.getBoundingClientRect() }))
                    .filter(({ box }) => box.height > 0 && (box.height < 43.5 || box.width < 43.5))
                    .map(({ each, box }) => `${each.id} ${box.width} x ${box.height}`)
                """);
        assertEquals(List.of(), small);
    }

    @Test
    void inGermanNoEnglishWordIsLeft() {
        Page page = openWhat();
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        page.fill("#smiles-s1", ACETOPHENONE);
        recognised(page, "aryl-ketone");
        Pattern english = Pattern.compile(
                "(?i)\\b(the|and|of|with|is|are|group|ketone|alcohol|carbon|press|find|class|jar|held|line|measured)\\b");
        Locator what = page.locator("#what");
        List<String> seen = new ArrayList<>(List.of(what.innerText()));
        choose(page, "groups");
        page.click("#groups-more");
        page.evaluate("document.querySelectorAll('#what details').forEach(each => { each.open = true; })");
        page.click("#add-s1-aryl-ketone");
        seen.add(what.innerText());
        choose(page, "class");
        page.waitForSelector("#class-s1 option[value=aryl-ketone]", attached());
        seen.add(what.innerText() + page.textContent("#class-s1"));
        page.selectOption("#class-s1", "aryl-ketone");
        recognised(page, "aryl-ketone");
        page.click("#found-row-s1-aryl-ketone .asked");
        page.locator("#origin .basis").first().waitFor();
        seen.add(
                (String)
                        page.evaluate(
                                "() => [...document.querySelectorAll('#origin :is(h2, p, li)')].filter(each => !each.querySelector('[lang=en]')).map(each => each.textContent).join(' ')"));
        for (String text : seen) {
            assertFalse(english.matcher(text).find(), text);
        }
    }
}
