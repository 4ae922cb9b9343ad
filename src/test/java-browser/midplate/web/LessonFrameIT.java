package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import midplate.wire.Exchange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands around the parts of a lesson: ways in and out, the sample, steps back, what is kept. */
class LessonFrameIT extends OnLesson {
    private static String compounds(Page page) {
        return String.valueOf(page.evaluate("""
                () => JSON.parse(localStorage.getItem('midplate-lesson')).lesson.compounds
                    .map(each => each.compound ?? each.smiles ?? each.class).join(' ')
                """));
    }

    private static Page unfolded(Page page) {
        page.click("#sample-line");
        page.waitForSelector("#add-compound");
        return page;
    }

    @Test
    void theBenchLeadsToLessonsAndTheyLeadBack() {
        Page page = open();
        answered(page);
        page.click("#lessons");
        ready(page);
        assertTrue(page.url().endsWith("/lesson.html#series"), page.url());
        page.click("#bench");
        ready(page);
        answered(page);
        assertEquals(server.address(), page.url());
    }

    @Test
    void aSampleOfTheBenchBecomesALessonWhichTheLastChangeTakesBack() {
        Page page = open();
        answered(page);
        assertEquals(0, page.locator("#as-lesson").count(), "nothing says what the compounds are");
        page.click("#what-s1");
        page.fill("#smiles-s1", "CC(=O)c1ccccc1");
        page.keyboard().press("Enter");
        page.click("#as-lesson");
        page.waitForURL("**/lesson.html*");
        ready(page);
        assertEquals("CC(=O)c1ccccc1", compounds(page));
        assertEquals("\"bench\"", kept(page, "setting"));
        assertThat(page.locator("#sample-line")).containsText("CC(=O)c1ccccc1");
        page.keyboard().press("Control+z");
        assertEquals("methyl-benzoate acetophenone benzyl-alcohol", compounds(page));
        page.reload();
        ready(page);
        assertEquals("methyl-benzoate acetophenone benzyl-alcohol", compounds(page), "it is handed over once");
    }

    @Test
    void thePartShownAndTheSampleStayOverAReload() {
        Page page = unfolded(openLesson());
        page.click("#ready-reduction");
        part(page, "why");
        assertEquals("lesson-part", focused(page));
        assertEquals("Why \u2013 Midplate", page.title());
        page.reload();
        ready(page);
        assertEquals("why", page.getAttribute("html", "data-part"));
        assertEquals("page", page.getAttribute("#lesson-go-why", "aria-current"));
        assertEquals("fluorenone fluorenol", compounds(page));
    }

    @Test
    void theBrowsersWayBackGoesThroughTheParts() {
        Page page = unfolded(openLesson());
        page.click("#ready-reduction");
        part(page, "climb");
        assertTrue(page.url().endsWith("lesson.html#climb"), page.url());
        part(page, "why");
        page.goBack();
        page.waitForSelector("html[data-part=climb]");
        page.goBack();
        page.waitForSelector("html[data-part=series]");
        page.goForward();
        page.waitForSelector("html[data-part=climb]");
        page.click("#undo");
        assertEquals("methyl-benzoate acetophenone benzyl-alcohol", compounds(page), "to look is no step of undo");
    }

    @Test
    void aLinkLeadsToItsPartAndPlacesOnThePageAreNoParts() {
        Page page = openLesson();
        part(page, "why");
        page.navigate(server.address());
        ready(page);
        page.navigate(server.address() + "lesson.html#slips");
        ready(page);
        assertEquals("slips", page.getAttribute("html", "data-part"));
        page.focus("a.skip");
        page.keyboard().press("Enter");
        assertEquals("lesson-part", focused(page));
        assertTrue(page.url().endsWith("#slips"), page.url());
        page.evaluate("() => { location.hash = 'no-such-part'; }");
        page.waitForURL("**/lesson.html#slips");
        assertEquals("slips", page.getAttribute("html", "data-part"));
    }

    @Test
    void theLanguageChangesAllOfItAndStays() {
        Page page = openLesson();
        page.selectOption("#language", "de");
        page.waitForSelector("html[lang=de]");
        assertThat(page.locator("#lesson-part-title")).hasText("Schwach bis stark");
        assertThat(page.locator("#sample-line")).containsText("Acetophenon");
        assertEquals("Schwach bis stark \u2013 Midplate", page.title());
        page.reload();
        ready(page);
        assertEquals("de", page.getAttribute("html", "lang"));
        page.click("#bench");
        ready(page);
        assertEquals("de", page.getAttribute("html", "lang"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"classes", "reduction", "vanillin", "ladder", "unseen", "polar"})
    void eachReadySampleIsTakenAndMarkedAsInvented(String id) {
        Page page = unfolded(openLesson());
        page.click("#ready-" + id);
        assertEquals("true", page.getAttribute("#ready-" + id, "aria-pressed"));
        assertThat(page.locator("#sample-line")).containsText("invented: " + page.textContent("#ready-" + id));
        assertThat(page.locator("#lesson-ready")).containsText("Invented samples");
        page.fill("#lesson-name-c1", "Z");
        assertThat(page.locator("#sample-line")).containsText("Z");
    }

    @Test
    void whatIsTypedIsOneStepAndStepsOutliveAReload() {
        Page page = unfolded(openLesson());
        page.click("#lesson-name-c1");
        page.keyboard().press("End");
        page.keyboard().type("nise");
        assertEquals("Anise", page.inputValue("#lesson-name-c1"));
        page.click("#ready-vanillin");
        page.keyboard().press("Control+z");
        assertEquals("Anise", page.inputValue("#lesson-name-c1"));
        page.keyboard().press("Control+z");
        assertEquals("A", page.inputValue("#lesson-name-c1"));
        assertTrue(page.isDisabled("#undo"));
        page.reload();
        ready(page);
        page.click("#redo");
        page.keyboard().press("Control+y");
        assertEquals("eugenol anisaldehyde ethyl-vanillin vanillin", compounds(page));
        page.click("#undo");
        assertEquals("methyl-benzoate acetophenone benzyl-alcohol", compounds(page));
    }

    @Test
    void toLookAtAnotherPartIsNoStep() {
        Page page = unfolded(openLesson());
        page.click("#ready-vanillin");
        part(page, "climb");
        part(page, "slips");
        page.click("#undo");
        assertEquals("methyl-benzoate acetophenone benzyl-alcohol", compounds(page));
        assertTrue(page.isDisabled("#undo"));
        assertEquals("series", page.getAttribute("html", "data-part"), "there where it was changed");
    }

    @Test
    void aSampleIsMadeByKeyboardAlone() {
        Page page = openLesson();
        tabTo(page, "sample-line");
        page.keyboard().press("Enter");
        tabTo(page, "lesson-remove-c1");
        page.keyboard().press("Enter");
        assertEquals("add-compound", focused(page));
        page.keyboard().press("Enter");
        page.waitForFunction("() => document.activeElement.id.startsWith('lesson-what-c')");
        String added = focused(page).replace("lesson-what-", "");
        page.keyboard().type("thy");
        assertEquals("thymol", page.inputValue("#lesson-what-" + added));
        page.keyboard().press("End");
        assertEquals("by groups", page.inputValue("#lesson-what-" + added));
        tabTo(page, "lesson-group-" + added);
        page.keyboard().type("alcohol");
        tabTo(page, "lesson-group-add-" + added);
        page.keyboard().press("Enter");
        assertEquals("count-" + added + "-alcohol", focused(page));
        page.keyboard().type("2");
        assertTrue(kept(page, "compounds").contains("\"groups\":{\"alcohol\":\"2\"}"), kept(page, "compounds"));
    }

    @Test
    void thereIsRoomForSixCompoundsAndOneStays() {
        Page page = unfolded(openLesson());
        for (int count = 3; count < 6; count++) {
            page.click("#add-compound");
        }
        assertTrue(page.isDisabled("#add-compound"));
        List<String> names = page.locator(".compound-row input").all().stream()
                .map(each -> each.inputValue())
                .toList();
        assertEquals(List.of("A", "B", "C", "D", "E", "F"), names);
        for (int left = 6; left > 1; left--) {
            page.locator(".compound-row button.small").first().click();
        }
        assertEquals(0, page.locator(".compound-row button.small").count());
    }

    @Test
    void onlyPairsOfWhichAModelIsThereAreOffered() {
        Page page = unfolded(openLesson());
        page.selectOption("#lesson-strong", "diethyl-ether");
        page.selectOption("#lesson-weak", "dichloromethane");
        Object missing = page.evaluate("""
                async () => {
                    const library = await (await fetch('/api/library')).json();
                    const offered = [...document.querySelectorAll('#lesson-strong option')].map(each => each.value);
                    const known = [...library.pairs.map(each => [each.weak.id, each.strong.id]), ...library.theoryPairs.map(each => [each.weak, each.strong])]
                        .filter(([weak]) => weak === 'dichloromethane').map(([, strong]) => strong);
                    return offered.filter(each => !known.includes(each)).concat(known.filter(each => !offered.includes(each)));
                }
                """);
        assertEquals(List.of(), missing);
        page.selectOption("#lesson-strong", "methanol");
        page.selectOption("#lesson-weak", "hexane");
        assertEquals("ethyl-acetate", page.inputValue("#lesson-strong"), "they do not mix: the measured pair is taken");
    }

    @Test
    void whatIsWrongWithTheSampleIsToldAtItsEntriesWhichUnfold() {
        Page page = unfolded(openLesson());
        page.selectOption("#lesson-what-c1", "by smiles");
        page.fill("#lesson-smiles-c1", "C1CC");
        page.fill("#lesson-name-c3", "B");
        page.waitForSelector("#lesson-smiles-c1-fault");
        page.waitForSelector("#lesson-name-c3-fault");
        assertClean(page);
        page.reload();
        ready(page);
        page.waitForSelector("#sample-fold[open] #lesson-smiles-c1-fault");
        assertEquals("C1CC", page.inputValue("#lesson-smiles-c1"), "nothing entered is lost");
        page.fill("#lesson-smiles-c1", "C1CC1");
        page.fill("#lesson-name-c3", "C");
        assertThat(page.locator("#lesson-sample .fault")).hasCount(0);
    }

    @Test
    void whatIsLeftEmptyIsToldInFewWordsWhereItBelongs() {
        Page page = unfolded(openLesson());
        page.selectOption("#lesson-what-c1", "by smiles");
        page.fill("#lesson-name-c2", "");
        page.selectOption("#lesson-what-c3", "by class");
        assertThat(page.locator("#lesson-name-c2-fault"))
                .hasText("This compound has no name. Enter a letter or a name, such as A.");
        String unsaid = "It is not said what this compound is."
                + " Choose it from the list, or give its SMILES line, its class or its groups.";
        assertThat(page.locator("#lesson-smiles-c1-fault")).hasText(unsaid);
        assertThat(page.locator("#lesson-class-c3-fault")).hasText(unsaid);
    }

    @Test
    void hazardStatementsFoldOnTheScreenAndAreOpenOnPaper() {
        Page page = openLesson();
        part(page, "class");
        shown(page, "class");
        assertThat(page.locator("#lesson-hazards summary")).hasText("Hazard statements of hexane and ethyl acetate");
        assertThat(page.locator("#lesson-hazards .statements").first()).isHidden();
        page.evaluate("() => window.dispatchEvent(new Event('beforeprint'))");
        assertThat(page.locator("#lesson-hazards .statements").first()).isVisible();
        page.evaluate("() => window.dispatchEvent(new Event('afterprint'))");
        assertThat(page.locator("#lesson-hazards .statements").first()).isHidden();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"form\": 99, \"lesson\": {\"new\": \"kind\"}}",
                "{\"form\": 1, \"lesson\": {\"compounds\": 3}}",
                "{\"form\": 1, \"lesson\": {\"compounds\": []}}",
                "no JSON"
            })
    void aFormThatIsNotKnownIsPutAsideAndToldOf(String stored) {
        Page page = openLesson();
        page.evaluate("stored => localStorage.setItem('midplate-lesson', stored)", stored);
        page.reload();
        ready(page);
        assertThat(page.locator("#lesson-unread")).isVisible();
        assertThat(page.locator("#sample-line")).containsText("acetophenone");
        assertEquals(stored, page.evaluate("() => localStorage.getItem('midplate-lesson-unread')"));
        page.click("#lesson-unread-seen");
        assertThat(page.locator("#lesson-unread")).hasCount(0);
    }

    @Test
    void aPartThatCannotBeReadIsPutAsideAndTheRestStays() {
        Page page = open();
        page.evaluate("""
                () => {
                    const lesson = { percent: '33', part: 'class', parts: { class: { rows: 3 } } };
                    localStorage.setItem('midplate-lesson', JSON.stringify({ form: 1, lesson }));
                }
                """);
        page.navigate(server.address() + "lesson.html#class");
        ready(page);
        assertThat(page.locator("#lesson-unread")).isVisible();
        assertEquals("{\"class\":{\"rows\":3}}", page.evaluate("() => localStorage.getItem('midplate-lesson-unread')"));
        shown(page, "class");
        assertEquals("\"33\"", kept(page, "percent"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"exercise", "class", "worksheet"})
    void cautionsStandWhereAnExperimentIsSet(String id) {
        Page page = openLesson();
        part(page, id);
        shown(page, id);
        String told = page.textContent("#lesson-cautions");
        assertTrue(told.indexOf("safety data sheet") < told.indexOf("fume hood"), told);
        for (String word : List.of("responsible", "UV lamps", "Silica", "Gloves", "shared screen", "waste", "H225")) {
            assertTrue(told.contains(word), word + " in " + told);
        }
    }

    @Test
    void aServerThatIsGoneIsToldOfAndFoundAgain() {
        PageServer first =
                PageServer.of(Exchange.builtIn(), folder, 0, Path.of("web")).start();
        String address = first.address();
        furtherServers.add(address);
        Page page = openLesson();
        page.navigate(address + "lesson.html");
        ready(page);
        shown(page, "series");
        first.stop();
        part(page, "slips");
        assertThat(page.locator("#lesson-gone")).containsText("Is it still running in its terminal?");
        page.click("#sample-line");
        page.click("#ready-vanillin");
        page.selectOption("#language", "de");
        PageServer again = PageServer.of(
                        Exchange.builtIn(), folder, URI.create(address).getPort(), Path.of("web"))
                .start();
        page.waitForSelector("html[lang=de]");
        shown(page, "slips");
        assertThat(page.locator("#lesson-gone")).hasCount(0);
        assertThat(page.locator("#sample-line")).containsText("Vanillin");
        again.stop();
    }
}
