package midplate.wire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.advice.Advice;
import midplate.advice.Alternative;
import midplate.advice.Consultation;
import midplate.advice.Curves;
import midplate.advice.Forecast;
import midplate.advice.Goal;
import midplate.advice.OtherRank;
import midplate.advice.OthersWish;
import midplate.advice.Pour;
import midplate.advice.PourCard;
import midplate.advice.Question;
import midplate.advice.Ratio;
import midplate.advice.Replacements;
import midplate.advice.Rung;
import midplate.advice.ScoutingPlan;
import midplate.advice.SpotForecast;
import midplate.catalogue.PairBasis;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.Knowledge;
import midplate.words.Message;

/** Gives the same invented advice to every question, so that the doors can be tested without the model. */
public final class FakeAdviser {
    /** A spot of this name makes it fail, as a slip in the program would. */
    public static final String SLIP = "slip";

    private final List<Question> asked = new ArrayList<>();

    /** An exchange that answers with invented advice. */
    public static Exchange exchange() {
        return new FakeAdviser().withSolvents();
    }

    Exchange withSolvents() {
        return new Exchange(SolventCatalogue.builtIn(), List.of(), this::consult);
    }

    /** The last question that came through the door. */
    Question lastAsked() {
        return asked.get(asked.size() - 1);
    }

    private synchronized Consultation consult(Question question) {
        asked.add(question);
        if (question.spots().contains(SLIP)) {
            throw new IllegalStateException("invented slip");
        }
        return new Consultation() {
            @Override
            public Advice advice() {
                return invented(question);
            }

            @Override
            public List<Forecast> at(List<Double> percentStrong) {
                return percentStrong.stream()
                        .map(percent -> forecast(question, percent))
                        .toList();
            }

            @Override
            public Curves curves() {
                return inventedCurves(question);
            }

            @Override
            public ScoutingPlan scout(int jars) {
                return inventedPlan();
            }

            @Override
            public Replacements others(OthersWish wish) {
                return inventedReplacements(question, wish);
            }

            @Override
            public Knowledge knowledge() {
                throw new AssertionError("nothing is known of what is invented");
            }
        };
    }

    private static Advice invented(Question question) {
        return new Advice(
                new Ratio(7, 2),
                forecast(question, 200.0 / 9),
                21.5,
                0.88,
                new Pour(7.8, 2.2, 22, 21.4, 22.6, 0.85, 0.88),
                List.of(Message.of("note.theory-only")),
                List.of(Message.of("note.strength-is", "series", "invented", "strength", 0.123456789)),
                0.0123456,
                List.of(new Alternative(Message.of("note.theory-only"), 0.91)),
                new Goal(0.87, List.of()),
                new PourCard(
                        5.1,
                        10,
                        62,
                        52,
                        Optional.of(new PourCard.Time(3.5, 7.3)),
                        Message.of("note.theory-only"),
                        Message.of("note.theory-only"),
                        List.of()),
                PairBasis.MEASURED);
    }

    private static Replacements inventedReplacements(Question question, OthersWish wish) {
        return new Replacements(
                new Replacements.Of(
                        wish.percentStrong().orElse(20),
                        Optional.of(new Ratio(4, 1)),
                        PairBasis.MEASURED,
                        0.41,
                        OptionalDouble.empty(),
                        Optional.empty(),
                        0.71,
                        0.71),
                wish.rank().orElse(OtherRank.MEASURED),
                List.of(),
                List.of(new Rung(0, 0.1), new Rung(100, 0.9)),
                List.of(Message.of("note.theory-only")));
    }

    private static Curves inventedCurves(Question question) {
        Map<String, Curves.SpotCurve> spots = new LinkedHashMap<>();
        question.spots()
                .forEach(spot -> spots.put(
                        spot, new Curves.SpotCurve(List.of(0.1, 0.4), List.of(0.05, 0.3), List.of(0.2, 0.5))));
        return new Curves(List.of(0.0, 100.0), spots, List.of(0.1, 0.2), List.of(), List.of(), List.of());
    }

    private static ScoutingPlan inventedPlan() {
        return new ScoutingPlan(
                List.of(
                        new ScoutingPlan.Jar(new Ratio(9, 1), new Pour(9, 1, 10, 9.5, 10.5, 0.3, 0.4), 0.35),
                        new ScoutingPlan.Jar(new Ratio(1, 1), new Pour(5, 5, 50, 49.5, 50.5, 0.3, 0.4), 0.45)),
                new ScoutingPlan.Round(0.93, 0.006, 0.7, 2.3),
                new ScoutingPlan.Straight(new Ratio(4, 1), new ScoutingPlan.Round(0.9, 0.007, 0.6, 1.4)),
                Optional.empty(),
                ScoutingPlan.Worth.SCOUT,
                0.03,
                0.003,
                2048,
                List.of(Message.of("note.theory-only")));
    }

    private static Forecast forecast(Question question, double percent) {
        List<SpotForecast> spots = new ArrayList<>();
        for (String spot : question.spots()) {
            double rf = 0.3 + 0.1 * (spots.size() % 6);
            spots.add(new SpotForecast(spot, rf, rf - 0.08, rf + 0.08, 0.05, 0.01));
        }
        return new Forecast(percent, 0.87, spots);
    }
}
