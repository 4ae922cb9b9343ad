package midplate.advice;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import midplate.catalogue.MeasuredPair;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.Knowledge;
import midplate.inference.Outlook;
import midplate.inference.PlateModels;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * Answers questions about the next plate. Immutable and safe to share between threads.
 *
 * <p>A question is refused when its two solvents are no eluent, stand in the wrong order, or were not measured together.
 */
public final class Adviser {
    /** Below this chance it is also said what to do instead. */
    private static final double GOOD_ENOUGH = 0.6;

    private static final double FINE_CURVE_TO = 5;
    private static final double FINE_CURVE = 0.25;

    private final SolventCatalogue catalogue;
    private final List<MeasuredPair> measured;
    private final PairChoice pairs;
    private final PlateModels models;

    private Adviser(SolventCatalogue catalogue, MeasuredPairs curves) {
        this.catalogue = catalogue;
        this.measured = curves.pairs();
        this.pairs = new PairChoice(catalogue, measured);
        this.models = PlateModels.of(curves.pairs(), curves.links());
    }

    /** An adviser with the curves packed with the program. */
    public static Adviser builtIn(SolventCatalogue catalogue) {
        return new Adviser(catalogue, MeasuredPairs.builtIn(catalogue));
    }

    /** An adviser with curves from a folder that {@code calibrate} wrote. */
    public static Adviser of(SolventCatalogue catalogue, Path curves) {
        return new Adviser(catalogue, MeasuredPairs.read(curves, catalogue));
    }

    /** An adviser with curves just fitted. */
    public static Adviser of(SolventCatalogue catalogue, MeasuredPairs curves) {
        return new Adviser(catalogue, curves);
    }

    /** The pairs that can be asked about. */
    public List<MeasuredPair> measured() {
        return measured;
    }

    /** Refuses two solvents that are no eluent, with the reason. */
    public void check(Question question) {
        pairs.check("", question.sorbent(), question.weak(), question.strong());
    }

    /** What to pour next and why. */
    public Advice advise(Question question) {
        return ask(question).advice();
    }

    /** What plates of the asked pair would show at some shares of the strong solvent [% v/v, 0 to 100]. */
    public List<Forecast> predict(Question question, List<Double> percentStrong) {
        Asked asked = ask(question);
        return percentStrong.stream().map(asked::forecast).toList();
    }

    /** What happens at every ratio. */
    public Curves curves(Question question) {
        return ask(question).curves();
    }

    private Asked ask(Question question) {
        if (question.spots().isEmpty()) {
            throw new Refusal("spots", Message.of("advice.no-spots"), "[]", "1 to 50 spots", "Name at least one spot.");
        }
        check(question);
        MeasuredPair pair = pairs.require(question.sorbent(), question.weak(), question.strong());
        UsedRuns runs = UsedRuns.of(question, pair, pairs, models);
        Knowledge knowledge = models.learn(pair.id(), question.setting(), question.spots(), runs.all());
        Outlook outlook = Outlook.of(
                knowledge,
                models.window(
                        pair.id(),
                        question.setting(),
                        question.window().low(),
                        question.window().high()));
        return new Asked(question, pair, runs, outlook);
    }

    /** A question with everything that was worked out for it once. */
    private final class Asked {
        private final Question question;
        private final MeasuredPair pair;
        private final UsedRuns runs;
        private final Outlook outlook;
        private final List<Integer> spots;

        private Asked(Question question, MeasuredPair pair, UsedRuns runs, Outlook outlook) {
            this.question = question;
            this.pair = pair;
            this.runs = runs;
            this.outlook = outlook;
            this.spots = IntStream.range(0, question.spots().size()).boxed().toList();
        }

        private Forecast forecast(double percent) {
            List<SpotForecast> forecasts = new ArrayList<>();
            for (int spot : spots) {
                Outlook.Spot each = outlook.spot(spot, percent);
                forecasts.add(new SpotForecast(
                        question.spots().get(spot), each.rf(), each.low(), each.high(), each.below(), each.above()));
            }
            return new Forecast(percent, outlook.chance(percent, spots), forecasts);
        }

        private Advice advice() {
            RatioSearch search = RatioSearch.of(outlook);
            RatioSearch.Found best = search.optimum();
            Ratio ratio = pourable(search);
            Forecast forecast = forecast(ratio.percentStrong());
            Pour pour = Pouring.of(ratio, question.glassware(), outlook, spots);
            double gap =
                    search.samples().smallestGap(outlook.knowledge().model().strength(forecast.percentStrong()));
            double noRatio = chanceNoRatioWorks(search);
            List<Alternative> instead = forecast.chance() >= GOOD_ENOUGH
                    ? List.of()
                    : new Alternatives(question, pair, outlook, models).betterThan(forecast.chance(), runs, measured);
            return new Advice(
                    ratio,
                    forecast,
                    best.percent(),
                    best.chance(),
                    pour,
                    new Reasons(question, forecast, best, outlook.knowledge()).all(runs.own(), gap, pair.compounds()),
                    notes(forecast, pour, noRatio),
                    noRatio,
                    instead);
        }

        private Ratio pourable(RatioSearch search) {
            Map<Double, Ratio> ratios = new LinkedHashMap<>();
            for (Ratio ratio : PourableRatios.between(
                    outlook.knowledge().model().lowestPercent(),
                    outlook.knowledge().model().highestPercent())) {
                ratios.put(ratio.percentStrong(), ratio);
            }
            RatioSearch.Found found = search.best(List.copyOf(ratios.keySet()));
            Ratio ratio = ratios.get(found.percent());
            if (ratio == null) {
                throw new IllegalStateException("No pourable ratio at " + found.percent() + " %");
            }
            return ratio;
        }

        private double chanceNoRatioWorks(RatioSearch search) {
            Window window = question.window();
            return search.samples()
                    .shareWithoutRatio(
                            window.low(),
                            window.high(),
                            outlook.knowledge()
                                    .model()
                                    .strength(outlook.knowledge().model().lowestPercent()),
                            outlook.knowledge()
                                    .model()
                                    .strength(outlook.knowledge().model().highestPercent()));
        }

        private List<Message> notes(Forecast forecast, Pour pour, double noRatio) {
            Set<Message> notes = new LinkedHashSet<>(Contradictions.in(
                    runs.own(), question.spots(), outlook.knowledge().model(), question.setting()));
            notes.addAll(new Notes(question, pair, catalogue).all(outlook, forecast, pour, runs.own(), noRatio));
            notes.addAll(pairs.standInNotes(question.weak(), question.strong()));
            notes.addAll(runs.notes());
            return List.copyOf(notes);
        }

        private Curves curves() {
            List<Double> percents = new ArrayList<>();
            for (int step = 0; step * FINE_CURVE < FINE_CURVE_TO; step++) {
                percents.add(step * FINE_CURVE);
            }
            for (int percent = (int) FINE_CURVE_TO; percent <= 100; percent++) {
                percents.add((double) percent);
            }
            Map<String, Curves.SpotCurve> curves = new LinkedHashMap<>();
            for (int spot : spots) {
                List<Outlook.Spot> each =
                        percents.stream().map(p -> outlook.spot(spot, p)).toList();
                curves.put(
                        question.spots().get(spot),
                        new Curves.SpotCurve(
                                each.stream().map(Outlook.Spot::rf).toList(),
                                each.stream().map(Outlook.Spot::low).toList(),
                                each.stream().map(Outlook.Spot::high).toList()));
            }
            var samples = outlook.possibleSamples();
            return new Curves(
                    percents,
                    curves,
                    percents.stream().map(p -> outlook.chance(p, spots)).toList(),
                    spots.size() < 2
                            ? List.of()
                            : percents.stream()
                                    .map(p -> samples.smallestGap(
                                            outlook.knowledge().model().strength(p)))
                                    .toList());
        }
    }
}
