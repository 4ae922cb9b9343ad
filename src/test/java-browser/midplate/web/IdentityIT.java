package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a compound is, said in three ways, with the real advice behind it. */
class IdentityIT extends OnIdentity {
    @Test
    void aSmilesLineIsDrawnItsGroupsListedAndWhatHoldsItBackSaid() {
        Page page = openWhat();
        String before = page.textContent("#ratio");
        page.fill("#smiles-s1", ACETOPHENONE);
        recognised(page, "aryl-ketone");
        assertTrue(page.isVisible("#molecule"));
        assertEquals(13, page.locator("#molecule .ink line").count(), "nine bonds, four of them double");
        assertEquals("C8H8O", page.textContent("#formula").split(",")[0]);
        assertTrue(page.textContent("#formula").contains("120.15 g/mol"), page.textContent("#formula"));
        assertTrue(page.textContent("#found-row-s1-aromatic-carbon").contains("6 ×"));
        assertEquals(3, page.locator("#found-groups li").count(), "ketone, ring, methyl");
        assertTrue(page.textContent("#held-by").contains("aryl ketone"), page.textContent("#held-by"));
        page.waitForFunction("before => document.getElementById('ratio').textContent !== before", before);
        answered(page);
        assertTrue(latest().contains("\"smiles\":\"" + ACETOPHENONE + "\""), latest());
        assertTrue(page.textContent("#what-s1").contains("aryl ketone"), "and beside its name");
        assertTrue(page.textContent("#first-try").contains("A"), page.textContent("#first-try"));
    }

    @Test
    void groupsArePressedOnceForEachTimeTheyOccurAndTakenBackOneByOne() {
        Page page = openWhat();
        choose(page, "groups");
        page.click("#add-s1-aryl-ketone");
        recognised(page, "aryl-ketone");
        page.click("#groups-size-s1 summary");
        for (int i = 0; i < 7; i++) {
            page.click("#add-s1-aromatic-carbon");
        }
        page.click("#less-s1-aromatic-carbon");
        page.click("#add-s1-alkyl-carbon");
        recognised(page, "alkyl-carbon");
        assertEquals("6", page.inputValue("#count-s1-aromatic-carbon"));
        assertTrue(page.textContent("#held-by").contains("aryl ketone"));
        answered(page);
        assertTrue(
                latest().contains("\"groups\":{\"aryl-ketone\":1,\"aromatic-carbon\":6,\"alkyl-carbon\":1}"), latest());
        page.click("#less-s1-alkyl-carbon");
        assertEquals(0, page.locator("#count-s1-alkyl-carbon").count(), "none left");
        assertEquals("add-s1-alkyl-carbon", focused(page), "the focus stays where it was pressed");
        page.click("#undo");
        assertEquals("1", page.inputValue("#count-s1-alkyl-carbon"));
    }

    @Test
    void aClassIsOneChoice() {
        Page page = openWhat();
        choose(page, "class");
        page.waitForSelector("#class-s1 option[value=aryl-ketone]", attached());
        page.selectOption("#class-s1", "aryl-ketone");
        recognised(page, "aryl-ketone");
        answered(page);
        assertTrue(latest().contains("\"class\":\"aryl-ketone\""), latest());
    }

    @Test
    void allThreeWaysGoByKeyboardAlone() {
        Page page = open();
        page.click("#clear-example");
        answered(page);
        page.focus("#spot-s1");
        page.keyboard().press("Tab");
        assertEquals("what-s1", focused(page));
        page.keyboard().press("Enter");
        page.waitForFunction("() => document.activeElement.id === 'smiles-s1'");
        page.keyboard().type(ACETOPHENONE);
        recognised(page, "aryl-ketone");
        page.keyboard().press("Shift+Tab");
        assertEquals("way-smiles-s1", focused(page));
        page.keyboard().press("ArrowRight");
        assertEquals("way-groups-s1", focused(page));
        assertEquals(0, page.locator("#found-groups li").count(), "no group pressed yet");
        page.waitForSelector("#find-group");
        for (int i = 0; i < 5 && !focused(page).equals("find-group"); i++) {
            page.keyboard().press("Tab");
        }
        page.keyboard().type("aryl ket");
        page.keyboard().press("Tab");
        assertEquals("add-s1-aryl-ketone", focused(page));
        page.keyboard().press("Enter");
        recognised(page, "aryl-ketone");
        assertEquals("1", page.inputValue("#count-s1-aryl-ketone"));
        page.focus("#way-groups-s1");
        page.keyboard().press("ArrowRight");
        assertEquals("way-class-s1", focused(page));
        page.waitForSelector("#class-s1 option[value=aryl-ketone]", attached());
        page.keyboard().press("Tab");
        assertEquals("class-s1", focused(page));
        page.keyboard().type("aryl k");
        recognised(page, "aryl-ketone");
        page.keyboard().press("Escape");
        assertTrue(page.isHidden("#what"));
        assertEquals("what-s1", focused(page));
    }

    @Test
    void theAtomsOfAGroupAreMarkedWherePointedAtPressedOrReachedByKey() {
        Page page = openWhat();
        page.fill("#smiles-s1", ACETOPHENONE);
        recognised(page, "aryl-ketone");
        assertEquals(0, page.locator("#molecule .halo *").count(), "nothing marked yet");
        page.hover("#found-s1-aryl-ketone");
        page.waitForSelector("#molecule .halo path", attached());
        assertEquals(1, page.locator("#molecule .halo path").count(), "its one letter, O");
        assertEquals(2, page.locator("#molecule .halo line").count(), "and its double bond, two lines");
        assertEquals("true", page.getAttribute("#found-s1-aryl-ketone", "aria-pressed"));
        page.focus("#found-s1-aromatic-carbon");
        assertEquals("true", page.getAttribute("#found-s1-aromatic-carbon", "aria-pressed"));
        assertEquals(0, page.locator("#molecule .halo path").count(), "the ring has no letter");
    }

    @Test
    void aLineThatDoesNotParseIsKeptWithItsFaultAndTheLastAnswerStays() {
        Page page = openWhat();
        String ratio = page.textContent("#ratio");
        page.fill("#smiles-s1", "CC(=O)c1cccc");
        page.waitForSelector("#smiles-s1-fault");
        String fault = page.textContent("#smiles-s1-fault");
        assertTrue(fault.contains("Character 8"), "the ring bond 1 is the eighth character: " + fault);
        assertEquals("smiles-s1-fault", page.getAttribute("#smiles-s1", "aria-describedby"));
        assertEquals("CC(=O)c1cccc", page.inputValue("#smiles-s1"));
        assertEquals(ratio, page.textContent("#ratio"));
        page.click("#what-close");
        assertTrue(page.isVisible("#spot-s1-item .fault"), "told beside the name while the entry is closed");
        page.reload();
        ready(page);
        page.waitForSelector("#spot-s1-item .fault");
        page.click("#what-s1");
        page.waitForSelector("#smiles-s1-fault");
        assertEquals("CC(=O)c1cccc", page.inputValue("#smiles-s1"));
        page.fill("#smiles-s1", ACETOPHENONE);
        recognised(page, "aryl-ketone");
        assertEquals(0, page.locator("#what .fault").count());
    }

    @ParameterizedTest
    @ValueSource(strings = {"99", "-1", "1.5", "x"})
    void aCountThatNoMoleculeHasIsToldAtItsRow(String count) {
        Page page = openWhat();
        choose(page, "groups");
        page.click("#add-s1-ester");
        page.fill("#count-s1-ester", count);
        page.waitForSelector("#count-s1-ester-fault");
        assertEquals(count, page.inputValue("#count-s1-ester"));
    }

    @Test
    void whatOneWayHoldsIsKeptWhileAnotherIsTriedAndOverAReload() {
        Page page = openWhat();
        page.fill("#smiles-s1", ACETOPHENONE);
        recognised(page, "aryl-ketone");
        choose(page, "groups");
        page.click("#groups-from-line");
        assertEquals("6", page.inputValue("#count-s1-aromatic-carbon"));
        choose(page, "class");
        choose(page, "smiles");
        assertEquals(ACETOPHENONE, page.inputValue("#smiles-s1"));
        answered(page);
        page.reload();
        ready(page);
        answered(page);
        assertTrue(page.textContent("#what-s1").contains("aryl ketone"), page.textContent("#what-s1"));
        page.click("#what-s1");
        page.waitForSelector("#smiles-s1");
        assertEquals(ACETOPHENONE, page.inputValue("#smiles-s1"));
        choose(page, "groups");
        assertEquals("1", page.inputValue("#count-s1-aryl-ketone"));
    }

    @Test
    void anotherWindowSeesWhatWasSaid() {
        Page page = openWhat();
        Page other = another();
        other.navigate(server.address());
        ready(other);
        page.fill("#smiles-s1", ACETOPHENONE);
        page.click("#what-close");
        other.waitForFunction("() => document.getElementById('what-s1').textContent.includes('aryl ketone')");
    }

    @Test
    void aSheetKeptBeforeCompoundsCouldBeSaidIsRead() {
        Page page = open();
        page.evaluate("""
                async () => {
                  const { inventedExample } = await import("/sheet/sheet.js");
                  const sheet = inventedExample();
                  sheet.spots = [{ id: "s1", name: "Old" }, { id: "s2", name: "B" }];
                  localStorage.setItem("midplate-sheet", JSON.stringify({ sheet, before: [] }));
                }""");
        page.reload();
        ready(page);
        assertEquals("Old", page.inputValue("#spot-s1"));
        assertEquals("What is it?", page.textContent("#what-s1"));
    }

    @Test
    void everyNumberOfItTellsWhereItComesFrom() {
        Page page = openWhat();
        page.fill("#smiles-s1", "OCc1ccccc1");
        recognised(page, "alcohol");
        assertTrue(page.textContent("#found-row-s1-alcohol").contains("few compounds measured"), "under ten alcohols");
        for (String number : List.of("#found-row-s1-alcohol .asked", "#formula .asked")) {
            page.click(number);
            page.locator("#origin .basis").first().waitFor();
            String told = page.textContent("#origin");
            assertFalse(told.contains("undefined") || told.contains("{"), told);
            page.keyboard().press("Escape");
        }
    }

    @Test
    void nothingOfTheEntryIsFetchedBeforeItIsOpened() {
        context = browser.newContext(new Browser.NewContextOptions().setLocale("en-GB"));
        Page page = another();
        List<String> fetched = new ArrayList<>();
        page.onRequest(request -> fetched.add(request.url()));
        page.navigate(server.address());
        ready(page);
        answered(page);
        Pattern late = Pattern.compile(".*/(what|scout)/.*|.*/api/(groups|structure|scouting)|.*/(origins|save)\\.js");
        assertEquals(List.of(), fetched.stream().filter(late.asMatchPredicate()).toList());
        page.click("#what-s1");
        page.waitForSelector("#what-title");
        assertNotEquals(0, fetched.stream().filter(late.asMatchPredicate()).count());
    }
}
