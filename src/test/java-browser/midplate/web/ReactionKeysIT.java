package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;

/** A reaction followed by keyboard alone. */
class ReactionKeysIT extends OnReaction {
    private int counted;

    private void key(Page page, String... names) {
        for (String name : names) {
            page.keyboard().press(name);
            counted++;
        }
    }

    private static void begin(Page page) {
        openReaction(page);
        page.focus("#reaction-next");
    }

    @Test
    void sixPlatesTakeFewKeys() {
        Page page = openEmpty();
        begin(page);
        key(page, "Enter");
        assertEquals("grade-t1-x1", focused(page));
        key(page, "Enter", "3", "ArrowDown", "1");
        key(page, "Enter", "2", "ArrowDown", "2");
        key(page, "Enter", "1", "ArrowDown", "3");
        key(page, "Enter", "ArrowDown", "4");
        key(page, "Enter", "0", "=");
        assertEquals("SM: not seen, at 240 min", graded(page, 6, 1));
        assertEquals("P: as strong as its own lane, at 240 min", graded(page, 6, 2));
        judged(page);
        assertTrue(counted <= 60, counted + " keys");
        System.out.printf("six plates of a reaction by keyboard: %d keys%n", counted);
    }

    @Test
    void withEveryTimeTypedItStaysBelowSixty() {
        Page page = openEmpty();
        begin(page);
        key(page, "Enter");
        String[][] plates = {{"12", "3", "1"}, {"34", "2", "2"}, {"65", "1", "3"}, {"130", "1", "4"}, {"250", "0", "4"}
        };
        for (String[] plate : plates) {
            key(page, "Enter", "t");
            key(page, plate[0].split(""));
            key(page, "Enter", plate[1], "ArrowDown", plate[2]);
        }
        assertEquals("250", minutes(page, 6));
        assertEquals("12", minutes(page, 2));
        assertEquals("SM: a trace, at 130 min", graded(page, 5, 1));
        judged(page);
        assertTrue(counted <= 60, counted + " keys");
        System.out.printf("six plates of a reaction by keyboard, times typed: %d keys%n", counted);
    }

    @Test
    void arrowsGoBetweenPlatesSpeciesAndTimes() {
        Page page = openEmpty();
        fourPlates(page);
        assertEquals("grade-t4-x2", focused(page));
        key(page, "ArrowLeft");
        assertEquals("grade-t3-x2", focused(page));
        key(page, "Home", "ArrowUp");
        assertEquals("grade-t1-x1", focused(page));
        key(page, "ArrowUp");
        assertEquals("minutes-t1", focused(page));
        key(page, "ArrowDown", "End", "ArrowRight");
        assertEquals("grade-t4-x1", focused(page));
        key(page, "ArrowLeft", "Enter");
        assertEquals("grade-t4-x1", focused(page), "Enter goes on to the plate that is there");
        assertEquals(4, plates(page));
        assertEquals(1, page.locator("#reaction-strip .grade[tabindex='0']").count(), "Tab leads to one cell");
    }

    @Test
    void aStrengthOfSevenIsRefusedAtItsCellAndDeleteMeansNotLookedAt() {
        Page page = openEmpty();
        fourPlates(page);
        key(page, "7");
        assertThat(page.locator("#grade-t4-x2-fault")).containsText("7 is no strength. Give 0");
        assertEquals("P: clear, at 60 min", graded(page, 4, 2));
        key(page, "4");
        assertEquals(0, page.locator("#grade-t4-x2-fault").count());
        key(page, "Delete");
        assertEquals("P: not looked at, at 60 min", graded(page, 4, 2));
        key(page, "Space");
        assertEquals("P: not seen, at 60 min", graded(page, 4, 2));
        key(page, "Control+z");
        assertEquals("P: not looked at, at 60 min", graded(page, 4, 2));
        judged(page);
    }
}
