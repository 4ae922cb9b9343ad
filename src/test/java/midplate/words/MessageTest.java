package midplate.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MessageTest {
    @Test
    void keepsTheOrderInWhichValuesWereGiven() {
        Message message = Message.of("plate.odd", "zeta", 1, "alpha", 2.5, "mid", "x");
        assertEquals(List.of("zeta", "alpha", "mid"), List.copyOf(message.args().keySet()));
        assertEquals(List.of(1, 2.5, "x"), List.copyOf(message.args().values()));
    }

    @Test
    void equalsAnotherWithTheSameKeyAndValues() {
        assertEquals(Message.of("plate.odd", "mm", 2.0), Message.of("plate.odd", "mm", 2.0));
        assertNotEquals(Message.of("plate.odd", "mm", 2.0), Message.of("plate.odd", "mm", 2.1));
    }

    @Test
    void cannotBeChangedFromOutside() {
        Map<String, Object> args = new LinkedHashMap<>(Map.of("mm", 2.0));
        Message message = new Message("plate.odd", args);
        args.put("mm", 3.0);
        assertEquals(2.0, message.args().get("mm"));
        assertThrows(UnsupportedOperationException.class, () -> message.args().put("mm", 4.0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "plate", "Plate.odd", "plate..odd", "plate.odd.", "plate.oddOne", "plate odd.x"})
    void refusesAKeyThatIsNoKey(String key) {
        assertThrows(IllegalArgumentException.class, () -> Message.of(key));
    }

    @Test
    void refusesANameWithoutValueANameGivenTwiceAndOtherKindsOfValue() {
        assertThrows(IllegalArgumentException.class, () -> Message.of("plate.odd", "mm"));
        assertThrows(IllegalArgumentException.class, () -> Message.of("plate.odd", "mm", 1, "mm", 2));
        assertThrows(IllegalArgumentException.class, () -> Message.of("plate.odd", "m m", 1));
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> Message.of("plate.odd", "mm", 1L));
        assertTrue(e.getMessage().contains("a Long"), e.getMessage());
    }

    @Test
    void codeIsTheLastPartOfTheKey() {
        assertEquals("front-near-top", Message.of("plate.front-near-top").code());
        Refusal refusal = new Refusal(
                "runs[0].rf.A",
                Message.of("fault.a.out-of-range"),
                "2",
                Allowed.closed(0, 1),
                Message.of("todo.divide"));
        assertEquals("out-of-range", refusal.code());
    }

    @Test
    void aRefusalTellsFieldWhatCameWhatIsAllowedAndWhatToDo() {
        Message allowed = Allowed.mm(Allowed.leftOpen("0", "1000"));
        Message todo = Message.of("todo.measure-again");
        Refusal refusal = new Refusal("plate.frontMm", Message.of("plate.odd"), "-3", allowed, todo);
        assertEquals("plate.frontMm", refusal.field());
        assertEquals(Message.of("plate.odd"), refusal.reason());
        assertEquals("-3", refusal.came());
        assertEquals(allowed, refusal.allowed());
        assertEquals(todo, refusal.todo());
        for (String part : List.of("plate.frontMm", "plate.odd", "-3", "1000", "todo.measure-again")) {
            assertTrue(String.valueOf(refusal.getMessage()).contains(part), part);
        }
    }
}
