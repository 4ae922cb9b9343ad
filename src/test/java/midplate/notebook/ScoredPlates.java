package midplate.notebook;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.notebook.GivenAdvice.Foretold;
import midplate.notebook.ScoredAdvice.Outcome;
import midplate.notebook.StudyPlate.Given;
import midplate.notebook.StudyPlate.Lane;
import midplate.notebook.StudyPlate.SpotSeen;
import midplate.words.Language;
import midplate.words.Texts;

/** Invented plates and advices for tests of scoring; start line at 10 mm, front at 60 mm, so Rf = (mm − 10)/50. */
final class ScoredPlates {
    private static final double WINDOW_LOW = 0.2;
    private static final double WINDOW_HIGH = 0.8;

    private ScoredPlates() {}

    static Entered number(double value) {
        return Entered.number(Double.toString(value), value);
    }

    static SpotSeen mm(double mm, String... spots) {
        return seen(Given.CENTRE_MM, number(mm), spots);
    }

    static SpotSeen rf(double rf, String... spots) {
        return seen(Given.RF, number(rf), spots);
    }

    static SpotSeen seen(Given given, Entered place, String... spots) {
        return new SpotSeen(
                "r",
                List.of(spots),
                given,
                place,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    static Lane lane(SpotSeen... seen) {
        return new Lane("l", List.of(seen));
    }

    /** A plate while it is put together. */
    record Plate(
            String id, double percent, JarAdditive additive, List<Lane> lanes, List<String> notSeen, Entered front) {
        static Plate of(String id, double percent, Lane... lanes) {
            return new Plate(id, percent, JarAdditive.NONE, List.of(lanes), List.of(), number(60));
        }

        Plate with(JarAdditive other) {
            return new Plate(id, percent, other, lanes, notSeen, front);
        }

        Plate without(String... spots) {
            return new Plate(id, percent, additive, lanes, List.of(spots), front);
        }

        Plate front(Entered other) {
            return new Plate(id, percent, additive, lanes, notSeen, other);
        }

        StudyPlate made() {
            return new StudyPlate(
                    id,
                    number(70),
                    number(40),
                    number(10),
                    front,
                    "hexane",
                    "ethyl-acetate",
                    "typed",
                    percent < 0 ? OptionalDouble.empty() : OptionalDouble.of(percent),
                    additive,
                    Optional.empty(),
                    lanes,
                    notSeen,
                    Optional.empty());
        }
    }

    static GivenAdvice advice(
            double percent, List<String> after, List<String> apart, String additive, String... spots) {
        List<Foretold> foretold = new ArrayList<>();
        for (String spot : spots) {
            foretold.add(new Foretold(spot, 0.5, 0.4, 0.6));
        }
        return new GivenAdvice(
                Instant.parse("2026-10-26T13:20:05Z"),
                "0.1.0",
                after,
                "hexane",
                "ethyl-acetate",
                percent,
                additive,
                WINDOW_LOW,
                WINDOW_HIGH,
                apart,
                foretold,
                0.8,
                "measured");
    }

    static GivenAdvice advice(double percent, String... spots) {
        return advice(percent, List.of("p1"), List.of(), "", spots);
    }

    static Study study(List<GivenAdvice> advices, Plate... plates) {
        return study("bench", advices, plates);
    }

    static Study study(String setting, List<GivenAdvice> advices, Plate... plates) {
        NextJar next = new NextJar(
                "hexane",
                "ethyl-acetate",
                JarAdditive.NONE,
                number(0.2),
                number(0.8),
                "usual",
                List.of(),
                number(10),
                number(50));
        List<StudySpot> spots = List.of(
                new StudySpot("s1", "A", Optional.empty()),
                new StudySpot("s2", "B", Optional.empty()),
                new StudySpot("s3", "C", Optional.empty()));
        return new Study(
                new StudyId("20261026-p3h8d5wz2n"),
                "invented",
                Instant.EPOCH,
                Instant.EPOCH,
                Study.Keeping.AT_HAND,
                Study.Origin.OWN,
                "silica",
                setting,
                List.of(),
                spots,
                Arrays.stream(plates).map(Plate::made).toList(),
                next,
                advices,
                Optional.empty(),
                Optional.empty(),
                "");
    }

    static ScoredAdvice only(GivenAdvice advice, Plate... plates) {
        return AdviceOutcomes.of(study(List.of(advice), plates)).get(0);
    }

    static Outcome outcome(GivenAdvice advice, Plate... plates) {
        ScoredAdvice scored = only(advice, plates);
        for (Language language : Language.values()) {
            assertTrue(!Texts.of(language).render(scored.why()).isBlank(), "every outcome can be said");
        }
        return scored.outcome();
    }
}
