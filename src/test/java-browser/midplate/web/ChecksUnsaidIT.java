package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;

/** What nobody said is no fact, and what was said before a change is marked as such. */
class ChecksUnsaidIT extends OnChecks {
    @Test
    void withoutAPlateThatWasRunNoEluentIsAskedUntilSomebodyTakesOne() {
        Page page = openEmpty();
        List<String> asked = new CopyOnWriteArrayList<>();
        page.onRequest(request -> {
            if (request.url().endsWith("/api/checks/identity")) {
                asked.add(request.postData());
            }
        });
        openChecks(page);
        assertTrue(page.textContent("#run-of-i1 > summary").contains("not said"));
        threeLanes(page, 41, 41, 34);
        told(page);
        assertFalse(asked.get(asked.size() - 1).contains("\"eluent\""), asked.toString());
        page.click("#next-jar-i1");
        String ratio = page.textContent("#ratio").trim();
        page.waitForSelector("#verdicts:not(.old) #same-next");
        assertTrue(page.textContent("#run-of-i1 > summary").contains(ratio));
        assertEquals(0, page.locator("#offers-i1").count());
        assertTrue(asked.get(asked.size() - 1).contains("\"eluent\""));
    }

    @Test
    void theEluentOfAPlateThatWasRunIsTakenAndTheNumberOfThePlateSaid() {
        Page page = open();
        openChecks(page);
        String summary = page.textContent("#run-of-i1 > summary");
        assertTrue(summary.contains("9 : 1") && summary.contains("as on plate 1"), summary);
    }

    @Test
    void whatWasSeenOfOneSpotIsNotFilledInForAnybody() {
        Page page = openEmpty();
        openChecks(page);
        unfold(page, "pure");
        page.fill("#rf-pure", "0.4");
        page.waitForSelector("#pure-answer:not(.old)");
        assertEquals(0, page.locator("#pure-ways [aria-pressed=true]").count());
        assertTrue(page.locator("#pure-ways-wanting").isVisible());
        assertTrue(page.textContent("#pure-eluent").contains("not said"));
        assertEquals(0, page.locator("#pure-amounts-told").count(), "no amount was said");
        assertTrue(page.textContent("#pure-answer .pure-seen").contains("not counted"));
        for (String entry : List.of("count-pure", "amount-volumeUl", "amount-concentrationPercent", "amount-touches")) {
            assertEquals("", value(page, entry));
            assertEquals("usual: 1", page.getAttribute("#" + entry, "placeholder"));
        }
        page.fill("#amount-volumeUl", "2");
        page.fill("#amount-concentrationPercent", "1");
        page.waitForSelector("#pure-amounts-told:has-text('Reckoned with 1 touch')");
        page.fill("#count-pure", "2");
        page.waitForSelector("#pure-answer:not(.old) .pure-seen:has-text('2')");
    }

    @Test
    void afterABadEntryTheVerdictBeforeIsSmallAndSaidToBeOld() {
        Page page = openEmpty();
        openChecks(page);
        threeLanes(page, 41, 41, 34);
        told(page);
        String size = "selector => parseFloat(getComputedStyle(document.querySelector(selector)).fontSize)";
        double large = ((Number) page.evaluate(size, ".verdict-words")).doubleValue();
        page.fill("#mm-e1", "x");
        page.waitForSelector("#mm-e1-fault");
        assertTrue(page.textContent("#verdicts .from-before").contains("before your last change"));
        double small = ((Number) page.evaluate(size, ".verdict-words")).doubleValue();
        assertTrue(small <= 16 && small < large, large + " to " + small);
    }

    @Test
    void ofWhatToRunNextTheFirstStandsThereAndTheCautionsAreFolded() {
        Page page = open();
        openChecks(page);
        threeLanes(page, 41, 41, 34);
        told(page);
        assertTrue(page.locator("#same-next > p").isVisible());
        assertTrue(page.locator("#same-next-others li").first().isHidden());
        assertTrue(page.locator("#same-cautions li").first().isHidden());
        page.click("#same-cautions > summary");
        assertTrue(page.locator("#same-cautions li").first().isVisible());
    }

    @Test
    void aZeroThatWasLeftIsSaidToBeAnRf() {
        Page page = openEmpty();
        openChecks(page);
        page.focus("#add-check-l1");
        page.keyboard().press("0");
        assertEquals("rf-e1", focused(page));
        page.keyboard().press("Enter");
        page.focus("#add-check-l2");
        page.keyboard().press("3");
        page.waitForSelector("#zero-e1");
        assertTrue(page.textContent("#zero-e1").contains("counts as Rf"));
    }

    @Test
    void anotherLaneOfTheSampleIsAddedAndTakenAway() {
        Page page = openEmpty();
        openChecks(page);
        page.click("#add-unknown-i1");
        assertEquals("add-check-l4", focused(page));
        tap(page, "i1", 4, 4, 40);
        assertEquals("40", value(page, "mm-e1"));
        page.click("#unlane-l4");
        assertEquals(3, page.locator("#lists-of-i1 > div").count());
    }

    @Test
    void fromWhatACompoundIsOneComesBackToHowToSeeIt() {
        Page page = openEmpty();
        openChecks(page);
        unfold(page, "seeing");
        page.click("#see-what-s1");
        page.waitForSelector("#what-close:has-text('How to see it')");
        page.click("#what-close");
        assertEquals("see-what-s1", focused(page));
        page.click("#what-s1");
        page.waitForSelector("#what-close:has-text('Done')");
    }

    @Test
    void onAPhoneTheLowerEdgeSaysTheVerdictOfTheLanes() {
        Page page = open(ColorScheme.LIGHT, 390, 844);
        openChecks(page);
        threeLanes(page, 41, 41, 34);
        told(page);
        page.evaluate("document.getElementById('lists-of-i1').scrollIntoView({block: 'center'})");
        page.waitForSelector("#in-reach[href='#check-same']");
        assertEquals("undecided", verdict(page));
        assertEquals("reference: Undecided.", page.textContent("#in-reach"));
        page.evaluate("document.getElementById('sample').scrollIntoView({block: 'center'})");
        page.waitForSelector("#in-reach[href='#jar']");
    }
}
