package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import midplate.words.Language;
import org.junit.jupiter.api.Test;

/** Reactions as they are asked about, each with one fault; all grades are invented. */
class ReactionRequestTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();
    private static final String SPECIES =
            "{\"name\": \"SM\", \"part\": \"start\"}, {\"name\": \"P\", \"part\": \"product\"}";

    private static String asked(String species, String... plates) {
        return "{\"species\": [" + species + "], \"plates\": [" + String.join(", ", plates) + "]}";
    }

    private static String plate(String minutes, String start, String product) {
        return "{\"minutes\": " + minutes + ", \"marks\": [{\"species\": \"SM\", \"strength\": " + start
                + "}, {\"species\": \"P\", \"strength\": " + product + "}]}";
    }

    private static List<Fault> faults(String request) {
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.reactions().reaction(request), request);
        for (Fault fault : bad.faults()) {
            assertFalse(fault.message().isBlank() || fault.allowed().isBlank(), fault.toString());
            assertTrue(fault.todo().matches("(?s).*[.?}]"), fault.toString());
        }
        return bad.faults();
    }

    private static void tells(String expected, String request) {
        assertEquals(
                List.of(expected),
                faults(request).stream()
                        .map(fault -> fault.field() + " " + fault.code())
                        .toList());
    }

    @Test
    void answersKeepTheirSchemasInEveryLanguage() throws IOException {
        String request = asked(SPECIES, plate("0", "4", "0"), plate("10", "2", "2"), plate("30", "0", "4"));
        assertEquals(List.of(), Schemas.broken("reaction-request", request));
        for (Language language : Language.values()) {
            String answer = EXCHANGE.in(language).reactions().reaction(request.getBytes(StandardCharsets.UTF_8));
            assertEquals(List.of(), Schemas.broken("reaction-answer", answer), answer);
        }
    }

    @Test
    void timeThatGoesBackIsToldAtThePlateInWordsOfThePage() {
        String request = asked(SPECIES, plate("0", "4", "0"), plate("30", "3", "1"), plate("20", "2", "2"));
        tells("plates[2].minutes time-backwards", request);
        String said = faults(request).get(0).message();
        assertTrue(said.contains("20") && said.contains("30") && said.contains("the plate before"), said);
        assertFalse(said.contains("["), said);
    }

    @Test
    void theSameTimeTwiceIsToldAtTheLater() {
        tells(
                "plates[1].minutes same-time",
                asked(SPECIES, plate("10", "4", "0"), plate("10", "3", "1"), plate("20", "2", "2")));
    }

    @Test
    void aStrengthOfFiveIsNone() {
        tells(
                "plates[1].marks[1].strength strength-out-of-range",
                asked(SPECIES, plate("0", "4", "0"), plate("10", "3", "5")));
    }

    @Test
    void aMarkOfSomethingNotNamedIsTold() {
        String plate = "{\"minutes\": 10, \"marks\": [{\"species\": \"Q\", \"strength\": 1}]}";
        tells("plates[1].marks[0].species unknown-species", asked(SPECIES, plate("0", "4", "0"), plate));
    }

    @Test
    void aMarkGivenTwiceIsTold() {
        String plate = "{\"minutes\": 10, \"marks\": [{\"species\": \"SM\", \"strength\": 1},"
                + " {\"species\": \"SM\", \"strength\": 2}]}";
        tells("plates[0].marks[1].species marked-twice", asked(SPECIES, plate));
    }

    @Test
    void withoutAStartNothingCanBeFollowed() {
        tells("species no-start", asked("{\"name\": \"P\", \"part\": \"product\"}", "{\"minutes\": 0, \"marks\": []}"));
    }

    @Test
    void aTimeThatIsTheWordNaNIsNoNumber() {
        List<Fault> faults = faults(asked(SPECIES, plate("\"NaN\"", "4", "0"), plate("10", "2", "2")));
        assertEquals(1, faults.size(), faults.toString());
        assertEquals("plates[0].minutes", faults.get(0).field());
        assertTrue(faults.get(0).toString().contains("NaN"), faults.toString());
    }
}
