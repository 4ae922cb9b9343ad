package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;

class ByShareTest {
    @Test
    void quartersAndOtherSharesAreKeptApart() {
        ByShare<String> kept = new ByShare<>();
        kept.put(0.25, "a quarter");
        kept.put(0.26, "more");
        kept.put(100, "all");
        assertEquals("a quarter", kept.get(0.25));
        assertEquals("more", kept.get(0.26));
        assertEquals("all", kept.get(100));
        assertNull(kept.get(0.5));
        assertNull(kept.get(33.33));
        assertEquals(3, kept.size());
    }

    @Test
    void thereAreNeverMoreThanSixHundred() {
        ByShare<Integer> kept = new ByShare<>();
        for (int i = 0; i < 2000; i++) {
            kept.put(i / 20.0, i);
        }
        assertEquals(600, kept.size());
    }
}
