package midplate.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is allowed, in both languages: a comma before decimals needs a semicolon between the ends. */
class AllowedTest {
    private static final Texts GERMAN = Texts.of(Language.GERMAN);

    private static void assertSaid(String english, String german, Message allowed) {
        assertEquals(english, English.said(allowed));
        assertEquals(german, GERMAN.render(allowed));
    }

    @Test
    void writesIntervalsWithTheirEnds() {
        assertSaid("[0, 100]", "[0; 100]", Allowed.closed(0, 100));
        assertSaid("[0.25, 1]", "[0,25; 1]", Allowed.closed(0.25, 1));
        assertSaid("(0, 5.0]", "(0; 5,0]", Allowed.leftOpen("0", "5.0"));
        assertSaid("[0, ∞)", "[0; ∞)", Allowed.rightOpen("0", Allowed.number(Double.POSITIVE_INFINITY)));
        assertSaid("(-1.8e308, 1.8e308)", "(-1,8e308; 1,8e308)", Allowed.open("-1.8e308", "1.8e308"));
        assertSaid("[15.5, 100] mm", "[15,5; 100] mm", Allowed.mm(Allowed.closed("15.5", "100")));
    }

    @Test
    void keepsTheWordsOfARequestAsTheyAre() {
        assertSaid("older, newer", "older, newer", Allowed.words(List.of("older", "newer")));
        assertSaid("1.5", "1.5", Allowed.words("1.5"));
    }

    @Test
    void joinsThingsInTheOrderGiven() {
        List<Message> three = List.of(
                Message.of("solvent.hexane"), Message.of("solvent.toluene"), Message.of("solvent.ethyl-acetate"));
        assertSaid("hexane, toluene, ethyl acetate", "Hexan, Toluol, Ethylacetat", Allowed.list(three));
        assertSaid("hexane or toluene or ethyl acetate", "Hexan oder Toluol oder Ethylacetat", Allowed.either(three));
        assertSaid("hexane", "Hexan", Allowed.either(three.subList(0, 1)));
        assertSaid("", "", Allowed.list(List.of()));
    }
}
