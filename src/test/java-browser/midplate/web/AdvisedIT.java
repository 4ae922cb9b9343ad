package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/** What was advised stands beside what happened, and only a plate that ran it scores it. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class AdvisedIT extends OnStudies {
    /** One plate, an advice after it, and the plate that ran that; its reading is still to be typed. */
    private Page run(String title) {
        Page page = openEmpty();
        page.fill("#title", title);
        page.fill("#eluent-p1", "19 : 1");
        page.click("#add-l1");
        page.keyboard().type("0.12");
        page.keyboard().press("Enter");
        answered(page);
        kept(page, "saved");
        page.click("#run-this");
        return page;
    }

    private static void openAdvised(Page page) {
        page.click("#advised > summary");
        page.waitForSelector("#laboratory");
    }

    @Test
    @Order(1)
    void theUntouchedExampleIsNotWrittenDown() {
        Page page = open();
        answered(page);
        page.click("#advised > summary");
        assertThat(page.locator("#advised-inside")).containsText("once there is something of your own");
        assertEquals(0, page.locator(".advised-row").count());
    }

    @Test
    @Order(2)
    void anAdviceThatAPlateRanIsScoredByItAndTheOthersAreNot() {
        Page page = run("Scored");
        page.keyboard().type("0.5");
        page.keyboard().press("Enter");
        answered(page);
        openAdvised(page);
        page.waitForSelector(".advised-row[data-outcome=came-true]");
        assertThat(page.locator(".advised-row[data-outcome=came-true]")).hasCount(1);
        assertThat(page.locator(".advised-row[data-outcome=came-true]")).containsText("Plate 2");
        assertThat(page.locator(".advised-row[data-outcome=not-run]").last()).containsText("after plates 1, 2");
        assertThat(page.locator("#laboratory")).containsText("It came true");
        assertTrue(
                page.locator(".advised-row[data-outcome=came-true] .advised-ratio")
                        .textContent()
                        .matches("\\d+ : \\d+ hexane : ethyl acetate \\(\\d+ % ethyl acetate\\)"),
                "nobody can read it the wrong way round");
        assertEquals(0, page.locator("#chart-laboratory").count(), "no chart under ten");
        String drawn = page.getAttribute(".advised-row[data-outcome=came-true] svg", "aria-label");
        assertTrue(drawn.contains("read at 0.50"), drawn);
        page.locator("#laboratory .asked").click();
        assertThat(page.locator("#origin-title")).hasText("How often the advice came true here");
        page.keyboard().press("Escape");
        page.fill("#rf-r2", "0.95");
        page.waitForSelector(".advised-row[data-outcome=missed]");
        assertThat(page.locator("#laboratory")).containsText("It did not come true");
    }

    @Test
    @Order(3)
    void whatIsAskedWhileAPlateRunsDoesNotTakeThePlaceOfTheAdviceItRuns() {
        Page page = run("Asked meanwhile");
        page.selectOption("#window-choice", "column");
        answered(page);
        kept(page, "saved");
        page.click("#add-l2");
        page.keyboard().type("0.5");
        page.keyboard().press("Enter");
        answered(page);
        openAdvised(page);
        page.waitForSelector(".advised-row[data-outcome=came-true]");
        assertThat(page.locator(".advised-row[data-outcome=came-true]")).hasCount(1);
        assertThat(page.locator(".advised-row[data-outcome=not-run]")).not().hasCount(0);
    }

    @Test
    @Order(4)
    void writingAnAdviceDownIsNoStepOfUndoAndUndoingLeavesItThere() {
        Page page = run("Undone");
        page.keyboard().type("0.5");
        page.keyboard().press("Enter");
        answered(page);
        kept(page, "saved");
        int advices = advices(page);
        page.click("#undo");
        assertEquals(
                "",
                page.locator("#seen-list-p2 .rf input").count() == 0
                        ? ""
                        : page.locator("#rf-r2").inputValue());
        assertEquals(advices, advices(page));
    }

    private static int advices(Page page) {
        Object count = page.evaluate("""
                () => {
                    const { sheet } = JSON.parse(localStorage.getItem(`midplate-study-${location.hash.slice(1)}`));
                    return sheet.advices.length;
                }
                """);
        return ((Number) count).intValue();
    }

    @Test
    @Order(5)
    void fromTenOnAChartShowsChancesAgainstWhatCameTrueAndCanBeTakenAway() throws Exception {
        Page page = run("Many");
        page.keyboard().type("0.5");
        page.keyboard().press("Enter");
        answered(page);
        kept(page, "saved");
        page.evaluate("""
                async id => {
                    const { study } = await (await fetch(`/api/studies/${id}`)).json();
                    for (let i = 0; i < 10; i++) {
                        const advices = study.advices.map(each => ({ ...each, given: `2026-01-01T00:00:0${i}Z` })); // else it is a copy
                        const copy = { ...study, advices, id: `20260101-copyabcde${'abcdefghij'[i]}`, title: `Copy ${i}` };
                        const headers = { 'Content-Type': 'application/json', 'If-None-Match': '*' };
                        const answer = await fetch(`/api/studies/${copy.id}`, { method: 'PUT', headers, body: JSON.stringify(copy) });
                        if (answer.status !== 201) throw new Error(await answer.text());
                    }
                }
                """, idOf(page));
        openAdvised(page);
        page.waitForSelector("#chart-laboratory");
        assertTrue(page.locator("#chart-laboratory .laboratory-share").count() > 0);
        assertFalse(page.textContent("#laboratory").contains("between 0 and"), "more came true than not");
        assertClean(page);
        Download drawing = page.waitForDownload(() -> page.click("#chart-laboratory-svg"));
        assertEquals("midplate-came-true.svg", drawing.suggestedFilename());
        String svg = Files.readString(drawing.path());
        assertTrue(svg.contains("Advice of this laboratory"), svg);
        assertFalse(svg.contains("class="), "it looks the same anywhere");
        List<String> heads =
                page.locator("#chart-laboratory-numbers th[scope=col]").allTextContents();
        assertEquals(
                List.of(
                        "Chance said, in 100",
                        "Came true, in 100",
                        "Low end of 95 %, in 100",
                        "High end of 95 %, in 100",
                        "Pieces of advice"),
                heads);
    }
}
