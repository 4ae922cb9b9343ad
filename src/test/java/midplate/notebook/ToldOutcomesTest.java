package midplate.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.notebook.GivenAdvice.Foretold;
import midplate.notebook.StudyPlate.Given;
import midplate.notebook.StudyPlate.Lane;
import midplate.notebook.StudyPlate.SpotSeen;
import midplate.wire.StudyFiles;
import midplate.words.Language;
import midplate.words.Message;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;

/** What a person is told of an advice, by invented plates: start line at 10 mm, front at 60 mm. */
class ToldOutcomesTest {
    private static final JarAdditive AMINE = new JarAdditive("triethylamine", "");

    private static Entered number(double value) {
        return Entered.number(Double.toString(value), value);
    }

    private static Lane lane(Object... rfThenLabel) {
        List<SpotSeen> seen = new ArrayList<>();
        for (int i = 0; i < rfThenLabel.length; i += 2) {
            String label = (String) rfThenLabel[i + 1];
            seen.add(new SpotSeen(
                    "r" + i,
                    label.isEmpty() ? List.of() : List.of(label),
                    Given.RF,
                    number((Double) rfThenLabel[i]),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()));
        }
        return new Lane("l", seen);
    }

    private static StudyPlate plate(String weak, JarAdditive additive, Lane... lanes) {
        return new StudyPlate(
                "p2",
                number(70),
                number(40),
                number(10),
                number(60),
                weak,
                "ethyl-acetate",
                "typed",
                OptionalDouble.of(20),
                additive,
                Optional.empty(),
                List.of(lanes),
                List.of(),
                Optional.empty());
    }

    private static Message told(String additive, List<String> after, StudyPlate plate) throws Exception {
        GivenAdvice advice = new GivenAdvice(
                Instant.EPOCH,
                "",
                after,
                "hexane",
                "ethyl-acetate",
                20,
                additive,
                0.2,
                0.8,
                List.of(),
                List.of(new Foretold("s1", 0.5, 0.4, 0.6), new Foretold("s2", 0.5, 0.4, 0.6)),
                0.8,
                "measured");
        Study kept = StudyFiles.builtIn().read(Files.readAllBytes(Path.of("shared", "studies", "version-5.json")));
        Study study = new Study(
                kept.id(),
                "",
                Instant.EPOCH,
                Instant.EPOCH,
                kept.keeping(),
                kept.origin(),
                "silica",
                "bench",
                List.of(),
                kept.spots(),
                List.of(plate),
                kept.next(),
                List.of(advice),
                kept.column(),
                kept.checks(),
                "");
        return AdviceOutcomes.of(study).get(0).why();
    }

    private static String english(Message message) {
        return Texts.of(Language.ENGLISH).render(message);
    }

    @Test
    void aPlateOfTheRatioWithAnotherAdditiveOrInAnotherPairIsNamed() throws Exception {
        assertEquals(
                "Plate 1 ran this ratio, but with triethylamine 1 %.",
                english(told("", List.of(), plate("hexane", AMINE))));
        assertEquals(
                "Plate 1 ran this ratio, but with formic acid.",
                english(told("", List.of(), plate("hexane", new JarAdditive("own", "formic acid")))));
        assertEquals(
                "Plate 1 ran this ratio, but without the additive.",
                english(told("triethylamine 1 %", List.of(), plate("hexane", JarAdditive.NONE))));
        assertEquals(
                "Plate 1 ran this ratio, but of toluene and ethyl acetate.",
                english(told("", List.of(), plate("toluene", JarAdditive.NONE))));
        assertEquals(
                "outcome.not-run",
                told("", List.of("p2"), plate("hexane", AMINE)).key(),
                "the advice rests on that plate");
    }

    @Test
    void aSpotMoreThanAdvisedIsToldAndSoIsThatLabelsAreNotKnown() throws Exception {
        JarAdditive none = JarAdditive.NONE;
        assertEquals(
                "outcome.came-true",
                told("", List.of(), plate("hexane", none, lane(0.4, "s1", 0.6, "s2")))
                        .key());
        assertEquals(
                "outcome.came-true-unlabelled",
                told("", List.of(), plate("hexane", none, lane(0.4, "", 0.6, "")))
                        .key());
        for (Lane more : List.of(lane(0.4, "", 0.6, "", 0.75, ""), lane(0.4, "s1", 0.6, "s2", 0.95, ""))) {
            assertEquals(
                    "Came true. One spot more than advised was seen.",
                    english(told("", List.of(), plate("hexane", none, more))));
        }
        assertEquals(
                "Came true. 2 spots more than advised were seen.",
                english(told("", List.of(), plate("hexane", none, lane(0.4, "s1", 0.6, "s2", 0.95, "", 0.1, "")))));
    }
}
