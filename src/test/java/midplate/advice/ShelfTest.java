package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import midplate.chemistry.Solvent;
import midplate.plate.Setting;
import midplate.words.English;
import midplate.words.Message;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is named when the solvents at hand were told; the readings are invented. */
@DisplayName("The shelf")
class ShelfTest {
    private static final Texts TEXTS = Texts.english();

    static Stream<Asking> questions() {
        return Stream.of(
                Asking.acetate().shelf("hexane", "ethyl acetate").run(20, Map.of("A", 0.01)),
                Asking.acetate().shelf("hexane", "ethyl acetate").run(100, Map.of("A", 0.02)),
                Asking.acetate().shelf("hexane", "ethyl acetate", "acetic acid").run(100, Map.of("A", 0.02)),
                Asking.acetate().shelf("hexane", "ethyl acetate").run(0, Map.of("A", 0.97)),
                Asking.acetate().shelf("hexane", "ethyl acetate").run(5, Map.of("A", 0.75)),
                Asking.acetate().shelf("hexane", "ethyl acetate", "toluene").run(5, Map.of("A", 0.75)),
                Asking.about("heptane", "ethyl acetate")
                        .shelf("heptane", "ethyl acetate")
                        .spots("A", "B")
                        .in(Setting.BENCH)
                        .run(20, Map.of("A", 0.05, "B", 0.9)),
                Asking.about("heptane", "ethyl acetate")
                        .shelf("heptane", "ethyl acetate", "ether", "dichloromethane")
                        .spots("A", "B")
                        .run(20, Map.of("A", 0.3, "B", 0.31)),
                Asking.about("dichloromethane", "methanol")
                        .shelf("dichloromethane", "methanol")
                        .run(1, Map.of("A", 0.97)),
                Asking.about("dichloromethane", "methanol")
                        .shelf("dichloromethane", "methanol", "petroleum ether", "ethyl acetate")
                        .spots("A", "B")
                        .run(1, Map.of("A", 0.96, "B", 0.2)),
                Asking.about("dichloromethane", "methanol")
                        .shelf("dichloromethane", "methanol", "triethylamine")
                        .run(9, Map.of("A", 0.01)));
    }

    private static List<Message> said(Advice advice) {
        List<Message> all = new ArrayList<>(advice.why());
        all.addAll(advice.notes());
        advice.alternatives().forEach(alternative -> all.add(alternative.what()));
        all.add(advice.card().order());
        all.add(advice.card().paper());
        all.addAll(advice.card().warnings());
        return all;
    }

    /** A text without the names of some solvents, the longest taken out first, so that "ether" is not found in others. */
    private static String without(String text, List<Solvent> solvents) {
        String left = text.toLowerCase(Locale.ROOT);
        for (Solvent solvent : solvents.stream()
                .sorted(Comparator.comparing((Solvent each) -> -each.name().length()))
                .toList()) {
            left = left.replace(solvent.name().toLowerCase(Locale.ROOT), "");
        }
        return left;
    }

    // Law: no text names a solvent that is not on the shelf.
    @ParameterizedTest
    @MethodSource("questions")
    void noOtherSolventIsNamed(Asking asking) {
        List<Solvent> shelf = asking.question().wishes().shelf().solvents();
        for (Message message : said(asking.advice())) {
            String left = without(TEXTS.render(message), shelf);
            for (Solvent solvent : Asking.CATALOGUE.solvents()) {
                assertFalse(left.contains(solvent.name().toLowerCase(Locale.ROOT)), message.toString());
            }
            assertFalse(left.contains("ammonia"), message.toString());
        }
    }

    // The law above can fail: without a shelf the same questions name others.
    @Test
    void withoutAShelfOthersAreNamed() {
        Advice told = Asking.acetate().run(100, Map.of("A", 0.02)).advice();
        assertTrue(Asking.codes(told.notes()).contains("too-polar"));
        assertTrue(TEXTS.render(Asking.find(told.notes(), "too-polar")).contains("methanol"));
    }

    @ParameterizedTest
    @MethodSource("questions")
    void theShelfDoesNotChangeTheRatio(Asking asking) {
        Question question = asking.question();
        Advice other = Asking.ADVISER.advise(question.wishing(Wishes.NONE));
        Advice advice = asking.advice();
        assertEquals(other.ratio(), advice.ratio());
        assertEquals(other.forecast(), advice.forecast());
    }

    @Test
    void aStrongerPairOfTheShelfIsNamed() {
        Asking asking = Asking.acetate().run(100, Map.of("A", 0.02));
        Message none =
                Asking.find(asking.shelf("hexane", "ethyl acetate").advice().notes(), "too-polar-shelf-none");
        assertEquals("A", none.args().get("spot"));
        Message pair = Asking.find(
                asking.shelf("hexane", "ethyl acetate", "DCM", "methanol")
                        .advice()
                        .notes(),
                "too-polar-shelf");
        assertEquals("dichloromethane", English.value(pair, "otherWeak"));
        assertEquals("methanol", English.value(pair, "otherStrong"));
        Message additive = Asking.find(
                asking.shelf("hexane", "ethyl acetate", "acetic acid").advice().notes(), "too-polar-shelf-additive");
        assertEquals("acetic acid", English.value(additive, "additive"));
    }

    @Test
    void aWeakerPairOfTheShelfIsNamedByWhatStandsThere() {
        Asking asking = Asking.about("dichloromethane", "methanol").run(0, Map.of("A", 0.95));
        Message pair = Asking.find(
                asking.shelf("DCM", "methanol", "heptane", "ethyl acetate")
                        .advice()
                        .notes(),
                "runs-in-weak-shelf");
        assertEquals("heptane", English.value(pair, "otherWeak"));
        assertEquals("ethyl acetate", English.value(pair, "otherStrong"));
        Asking.find(asking.shelf("DCM", "methanol", "heptane").advice().notes(), "runs-in-weak-shelf-none");
    }

    private static List<Message> pairs(Advice advice) {
        return advice.alternatives().stream()
                .map(Alternative::what)
                .filter(what -> what.code().equals("instead-pair"))
                .toList();
    }

    // Another pair needs both its solvents on the shelf; the one that stands in for a measured one is named itself.
    @Test
    void anotherPairIsOfferedOnlyFromTheShelf() {
        Asking asking = Asking.about("heptane", "ether")
                .spots("A", "B")
                .in(Setting.BENCH)
                .run(20, Map.of("A", 0.3, "B", 0.36))
                .apart("A", "B");
        List<Message> free = pairs(asking.advice());
        assertTrue(
                free.stream().anyMatch(what -> English.value(what, "weak").equals("hexane")),
                "offered at all: " + free);
        assertEquals(
                List.of(), pairs(asking.shelf("heptane", "ether", "methanol").advice()));
        List<Message> shelf = pairs(asking.shelf("heptane", "ether", "EtOAc").advice());
        assertEquals(1, shelf.size(), shelf.toString());
        assertEquals("heptane", English.value(shelf.get(0), "weak"));
        assertEquals("ethyl acetate", English.value(shelf.get(0), "strong"));
    }

    @Test
    void aSolventAskedForMustStandThere() {
        Asking asking = Asking.acetate().shelf("heptane", "ethyl acetate");
        Refusal refusal = assertThrows(Refusal.class, asking::advice);
        assertEquals("weak", refusal.field());
        assertEquals("not-on-shelf", refusal.code());
        assertEquals("heptane, ethyl acetate", English.said(refusal.allowed()));
    }

    @Test
    void aPairWithoutMeasurementsNamesThoseOfTheShelf() {
        Asking asking = Asking.about("toluene", "triethylamine");
        Refusal none = assertThrows(Refusal.class, asking.shelf("toluene", "triethylamine")::advice);
        assertFalse(English.said(none.allowed()).contains("hexane"), English.said(none.allowed()));
        Refusal some =
                assertThrows(Refusal.class, asking.shelf("toluene", "triethylamine", "EtOAc", "heptane")::advice);
        assertEquals("heptane with ethyl-acetate; toluene with ethyl-acetate", English.said(some.allowed()));
    }
}
