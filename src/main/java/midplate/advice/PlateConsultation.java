package midplate.advice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.Climb;
import midplate.inference.Knowledge;
import midplate.inference.Outlook;
import midplate.inference.PairModel;
import midplate.inference.Parting;
import midplate.inference.PlateModels;
import midplate.inference.PossibleSamples;
import midplate.inference.SpotGuess;
import midplate.words.Message;

/** A question with everything that was worked out for it once. */
final class PlateConsultation implements Consultation {
    /** Below this chance it is also said what to do instead. */
    private static final double GOOD_ENOUGH = 0.6;

    private final Question question;
    private final PlatePair pair;
    private final UsedRuns runs;
    private final Outlook outlook;
    private final PlateModels models;
    private final PairChoice choice;
    private final SolventCatalogue catalogue;
    private final List<Message> standIns;
    private final List<Integer> spots;
    private final Aim aim;

    PlateConsultation(
            Question question,
            PlatePair pair,
            UsedRuns runs,
            Outlook outlook,
            PlateModels models,
            PairChoice choice,
            SolventCatalogue catalogue,
            List<Message> standIns) {
        this.question = question;
        this.pair = pair;
        this.runs = runs;
        this.outlook = outlook;
        this.models = models;
        this.choice = choice;
        this.catalogue = catalogue;
        this.standIns = standIns;
        this.spots = IntStream.range(0, question.spots().size()).boxed().toList();
        this.aim = Aim.everySpot(outlook, question.parting());
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

    @Override
    public Advice advice() {
        onShelf();
        RatioSearch search = RatioSearch.of(aim, question.window());
        RatioSearch.Found best = search.optimum();
        Ratio ratio = search.pourable(question.glassware());
        Forecast forecast = forecast(ratio.percentStrong());
        Pour pour = Pouring.of(ratio, question.glassware(), aim);
        double gap = search.samples().smallestGap(outlook.knowledge().model().climb(forecast.percentStrong()));
        double noRatio = chanceNoRatioWorks(search);
        Goal goal = goal(forecast);
        List<Alternative> instead = goal.chance() >= GOOD_ENOUGH
                ? List.of()
                : new Alternatives(question, pair, outlook, models, choice)
                        .betterThan(goal.chance(), runs, choice.measured());
        Optional<Message> bestChance = new BestChance(search).beside(goal.chance(), CurvePoints.regular());
        Suggestions suggestions = new Suggestions(question, pair, choice.measured(), catalogue);
        StructureReasons structures = new StructureReasons(question, models, outlook, runs);
        return new Advice(
                ratio,
                forecast,
                best.percent(),
                best.chance(),
                pour,
                new Reasons(question, forecast, goal, bestChance, outlook.knowledge(), suggestions)
                        .all(runs, gap, pair, structures),
                notes(best, forecast, pour, noRatio, structures),
                noRatio,
                instead,
                goal,
                new JarFilling(question, pour, catalogue).card(),
                pair.basis());
    }

    /** The goal, and each pair by itself: at least as likely as all of it. */
    private Goal goal(Forecast forecast) {
        double percent = forecast.percentStrong();
        double chance = aim.chance(percent);
        List<ApartChance> apart = new ArrayList<>();
        for (int i = 0; i < aim.parting().pairs().size(); i++) {
            Parting alone = Parting.of(List.of(aim.parting().pairs().get(i)));
            apart.add(new ApartChance(
                    question.wishes().apart().get(i), Math.max(chance, outlook.chance(percent, List.of(), alone))));
        }
        return new Goal(chance, apart);
    }

    private double chanceNoRatioWorks(RatioSearch search) {
        Window window = question.window();
        PairModel model = outlook.knowledge().model();
        return search.samples()
                .shareWithoutRatio(
                        window.low(),
                        window.high(),
                        model.strength(model.lowestPercent()),
                        model.strength(model.highestPercent()));
    }

    private List<Message> notes(
            RatioSearch.Found best, Forecast forecast, Pour pour, double noRatio, StructureReasons structures) {
        Set<Message> notes = new LinkedHashSet<>(Contradictions.in(
                runs.own(), question.spots(), outlook.knowledge().model(), question.setting()));
        notes.addAll(new StructureContradictions(models, outlook.knowledge().model(), question.setting())
                .in(runs.own(), question));
        structures.notFitted().ifPresent(notes::add);
        notes.addAll(new Additives(question, catalogue).notes());
        notes.addAll(new Notes(question, pair, choice.measured(), catalogue, structures.judged())
                .all(outlook, best, forecast, pour, runs, noRatio));
        notes.addAll(Identities.of(outlook.knowledge()).notes());
        notes.addAll(standIns);
        notes.addAll(runs.notes());
        return List.copyOf(notes);
    }

    /** What is to be poured stands on the shelf; what is to be replaced need not. */
    private void onShelf() {
        question.wishes().shelf().check(question.weak(), question.strong());
    }

    @Override
    public ScoutingPlan scout(int jars) {
        onShelf();
        Scouting.check(jars);
        return new Scouting(question, aim)
                .plan(jars, RatioSearch.of(aim, question.window()).pourable(question.glassware()));
    }

    @Override
    public Replacements others(OthersWish wish) {
        double percent = wish.percentStrong()
                .orElseGet(() -> RatioSearch.of(aim, question.window())
                        .pourable(question.glassware())
                        .percentStrong());
        return new OtherEluents(question, pair, runs, outlook, models, choice, catalogue)
                .of(percent, wish.rankFor(question.spots().size()));
    }

    @Override
    public Knowledge knowledge() {
        return outlook.knowledge();
    }

    @Override
    public List<SpotGuess> whichIsWhich() {
        return outlook.knowledge().guesses();
    }

    @Override
    public List<Forecast> at(List<Double> percentStrong) {
        onShelf();
        return percentStrong.stream().map(this::forecast).toList();
    }

    @Override
    public Curves curves() {
        onShelf();
        DoubleUnaryOperator chance = remembering(p -> outlook.chance(p, spots));
        DoubleUnaryOperator goal = remembering(aim::chance);
        return curves(CurvePoints.of(arePairsNamed() ? List.of(chance, goal) : List.of(chance)), chance, goal);
    }

    /** The same at any shares [% v/v]. */
    Curves curves(List<Double> percents) {
        return curves(percents, p -> outlook.chance(p, spots), aim::chance);
    }

    private boolean arePairsNamed() {
        return !aim.parting().pairs().isEmpty();
    }

    private static DoubleUnaryOperator remembering(DoubleUnaryOperator chance) {
        Map<Double, Double> known = new HashMap<>();
        return p -> known.computeIfAbsent(p, chance::applyAsDouble);
    }

    private Curves curves(List<Double> percents, DoubleUnaryOperator chance, DoubleUnaryOperator goal) {
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
        PossibleSamples samples = outlook.possibleSamples();
        List<Climb> climbs = spots.size() < 2
                ? List.of()
                : percents.stream()
                        .map(p -> outlook.knowledge().model().climb(p))
                        .toList();
        return new Curves(
                percents,
                curves,
                percents.stream().map(chance::applyAsDouble).toList(),
                climbs.stream().map(samples::smallestGap).toList(),
                climbs.stream().map(samples::smallestResolution).toList(),
                arePairsNamed() ? percents.stream().map(goal::applyAsDouble).toList() : List.of());
    }
}
