package midplate.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import midplate.catalogue.PairBasis;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.inference.Knowledge;
import midplate.inference.Outlook;
import midplate.inference.PairModel;
import midplate.inference.Parting;
import midplate.inference.PlateModels;
import midplate.inference.PlateRun;
import midplate.inference.SpotPair;
import midplate.words.Message;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Which other pairs of solvents may be run in place of a mixture, at which ratio, and what becomes there of the two spots that lie
 * closest now. Equally strong is the share at which the middle of the sample ({@link SampleMiddle}) stays where it is.
 */
final class OtherEluents {
    /** Where the middle lies nearer to a line than this, what is equally strong works as badly [1]. */
    private static final double AT_LINE = 0.1;
    /**
     * By how much a pair may differ for which another one stands [ln units]: published strengths of the solvents agree within 0.01, and
     * hexane/ethyl acetate climbs by 6.0 over 0.48.
     */
    private static final double STAND_IN = 0.13;

    /** A pair whose end comes so near is equally strong there: by less than a plate is off [1]. */
    private static final double AS_STRONG = 0.04;

    private static final double FINE = 0.01;
    private static final double TAIL = 0.05;
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private final Question question;
    private final PlatePair asked;
    private final UsedRuns runs;
    private final SampleMiddle now;
    private final PlateModels models;
    private final PairChoice choice;
    private final SolventCatalogue catalogue;
    private final SolventFlags flags;

    OtherEluents(
            Question question,
            PlatePair asked,
            UsedRuns runs,
            Outlook outlook,
            PlateModels models,
            PairChoice choice,
            SolventCatalogue catalogue) {
        this.question = question;
        this.asked = asked;
        this.runs = runs;
        this.now = new SampleMiddle(outlook, question.setting());
        this.models = models;
        this.choice = choice;
        this.catalogue = catalogue;
        this.flags = new SolventFlags(catalogue);
    }

    /**
     * What to run in place of a mixture.
     *
     * @param percent its share of the strong solvent [% v/v]
     */
    Replacements of(double percent, OtherRank rank) {
        Optional<SpotPair> closest = closest(percent);
        Optional<ClosestSpots> here = closest.map(pair -> closest(pair, now, percent));
        List<PairsToOffer.Offered> offered = new PairsToOffer(question, choice, catalogue, rank)
                .all().stream()
                        .filter(each -> models.find(each.pair().id()).isPresent())
                        .toList();
        List<PairsToOffer.Offered> known =
                offered.stream().filter(this::isKnown).toList();
        double rf = now.at(percent);
        OptionalDouble aim = rf < AT_LINE || rf > 1 - AT_LINE
                ? OptionalDouble.of((question.window().low() + question.window().high()) / 2)
                : OptionalDouble.empty();
        List<OtherEluent> others = eachLiquidOnce(worthWorkingOut(known, aim.orElse(rf)).stream()
                .map(each -> other(each, percent, aim, closest, here, rank))
                .sorted(OtherRanking.by(rank))
                .toList());
        Replacements.Of of = new Replacements.Of(
                percent,
                ratio(percent),
                asked.basis(),
                rf,
                aim,
                here,
                now.outlook().chance(percent, everySpot()),
                goal(closest, now, percent));
        return new Replacements(of, rank, others, now.ladder(), notes(of, rank, others, offered.size(), known.size()));
    }

    /** All of them, or, of too many, first those that reach an Rf with the middle of the sample. */
    private List<PairsToOffer.Offered> worthWorkingOut(List<PairsToOffer.Offered> offered, double rf) {
        if (offered.size() <= PairsToOffer.MOST) {
            return offered;
        }
        Map<PairsToOffer.Offered, Boolean> misses = new HashMap<>();
        for (PairsToOffer.Offered each : offered) {
            UsedRuns there = UsedRuns.of(question, each.pair(), choice, models);
            misses.put(each, nearest(middle(each.pair(), plates(there)), rf).isPresent());
        }
        return offered.stream()
                .sorted(Comparator.comparing(each -> Boolean.TRUE.equals(misses.get(each))))
                .limit(PairsToOffer.MOST)
                .toList();
    }

    private List<Integer> everySpot() {
        return IntStream.range(0, question.spots().size()).boxed().toList();
    }

    private static Optional<Ratio> ratio(double percent) {
        return PourableRatios.between(percent, percent).stream().findFirst();
    }

    /** The two spots expected nearest to each other. */
    private Optional<SpotPair> closest(double percent) {
        return everySpot().stream()
                .flatMap(
                        one -> everySpot().stream().filter(other -> other > one).map(other -> new SpotPair(one, other)))
                .min(Comparator.comparingDouble(pair -> gap(pair, now, percent)));
    }

    private ClosestSpots closest(SpotPair pair, SampleMiddle middle, double percent) {
        return new ClosestSpots(
                question.spots().get(pair.one()),
                question.spots().get(pair.other()),
                middle.outlook().chance(percent, List.of(), Parting.of(List.of(pair))),
                gap(pair, middle, percent));
    }

    /** The chance that every spot reads inside the window and two of them lie apart [1]. */
    private double goal(Optional<SpotPair> pair, SampleMiddle middle, double percent) {
        Parting parting = pair.map(two -> Parting.of(List.of(two))).orElse(Parting.NONE);
        return middle.outlook().chance(percent, everySpot(), parting);
    }

    /** The distance in Rf to expect, whichever spot runs higher: the mean of |d| for d normal around what is foretold. */
    private static double gap(SpotPair pair, SampleMiddle middle, double percent) {
        SampleMiddle.Spread one = middle.spread(pair.one(), percent);
        SampleMiddle.Spread other = middle.spread(pair.other(), percent);
        double d = Math.abs(one.median() - other.median());
        double deviation = Math.hypot(one.deviation(), other.deviation());
        return 2 * deviation * NORMAL.density(d / deviation)
                + d * (1 - 2 * NORMAL.cumulativeProbability(-d / deviation));
    }

    private OtherEluent other(
            PairsToOffer.Offered offered,
            double percent,
            OptionalDouble aim,
            Optional<SpotPair> closest,
            Optional<ClosestSpots> here,
            OtherRank rank) {
        UsedRuns there = UsedRuns.of(question, offered.pair(), choice, models);
        List<PlateRun> plates = plates(there);
        boolean alike = offered.pair().id().equals(asked.id());
        SampleMiddle middle = alike ? now : middle(offered.pair(), plates);
        double rf = aim.orElse(now.at(percent));
        boolean same = aim.isEmpty() && (alike || isShared(offered.pair(), middle, percent));
        // one pure solvent is one liquid: what the pair asked about says of it holds
        SampleMiddle shown = same ? now : middle;
        double share = same ? percent : middle.shareOf(rf);
        Optional<OtherEluent.Nearest> nearest = same ? Optional.empty() : nearest(middle, rf);
        Optional<OtherEluent.Equal> equal = nearest.isPresent()
                ? Optional.empty()
                : Optional.of(
                        aim.isPresent()
                                ? aimed(middle, share, rf)
                                : alike
                                        ? nearlyAlike(share)
                                        : same
                                                ? new OtherEluent.Equal(share, share, share)
                                                : equal(offered.pair(), plates, percent, share));
        Ratio ratio =
                ratio(middle, nearest.map(OtherEluent.Nearest::percentStrong).orElse(share), rf);
        double poured = ratio.percentStrong();
        Pour pour = Pouring.of(ratio, question.glassware(), Aim.everySpot(shown.outlook(), Parting.NONE));
        OtherReasons reasons = new OtherReasons(question, catalogue, rank);
        OtherEluent bare = new OtherEluent(
                offered.weak(),
                offered.strong(),
                offered.pair().basis(),
                reasons.kind(offered),
                equal,
                nearest,
                new OtherEluent.Pour(ratio, pour.weakMl(), pour.strongMl()),
                shown.outlook().chance(poured, everySpot()),
                goal(closest, shown, poured),
                closest.map(pair -> closest(pair, shown, poured)),
                everySpot().stream().map(spot -> spot(shown, spot, poured)).toList(),
                flags.boilingPoint(offered.weak(), offered.strong()),
                flags.of(offered.weak(), offered.strong()),
                middle.ladder(),
                List.of(),
                equal.map(band -> middle.at(band.high()) - middle.at(band.low()))
                        .orElse(0.0));
        boolean wasRun = !alike && there.own().stream().anyMatch(plate -> !isOwn(plate));
        return bare.because(reasons.all(
                offered,
                bare,
                here,
                choice.standInNotes(
                        offered.weak(), offered.strong(), question.wishes().shelf()),
                wasRun ? OtherReasons.Run.YES : OtherReasons.Run.NO));
    }

    private boolean isOwn(PlateRun plate) {
        return runs.own().stream().anyMatch(own -> own.number() == plate.number());
    }

    /** The plates of the other pair, those of the pair asked about whole, and what further pairs say. */
    private List<PlateRun> plates(UsedRuns there) {
        Stream<PlateRun> own = runs.own().stream()
                .filter(plate -> there.own().stream().noneMatch(other -> other.number() == plate.number()));
        Stream<PlateRun> further =
                there.others().stream().filter(plate -> !plate.pair().equals(asked.id()));
        return Stream.of(there.own().stream(), own, further)
                .flatMap(plates -> plates)
                .toList();
    }

    private SampleMiddle middle(PlatePair pair, List<PlateRun> plates) {
        Knowledge knowledge =
                models.learn(pair.id(), question.setting(), question.spots(), plates, question.structures());
        Window window = question.window();
        return new SampleMiddle(
                models.outlook(knowledge, question.setting(), window.low(), window.high()), question.setting());
    }

    private static Optional<OtherEluent.Nearest> nearest(SampleMiddle middle, double rf) {
        if (middle.at(middle.lowest()) > rf + AS_STRONG) {
            return Optional.of(
                    new OtherEluent.Nearest(middle.lowest(), middle.at(middle.lowest()), OtherEluent.Side.STRONGER));
        }
        if (middle.at(middle.highest()) < rf - AS_STRONG) {
            return Optional.of(
                    new OtherEluent.Nearest(middle.highest(), middle.at(middle.highest()), OtherEluent.Side.WEAKER));
        }
        return Optional.empty();
    }

    /** Whether a mixture of the pair asked about is one pure solvent that another pair has in the same place. */
    private boolean isShared(PlatePair pair, SampleMiddle middle, double percent) {
        boolean weak = percent == 0 && pair.weak().equals(asked.weak());
        boolean strong = percent == 100 && pair.strong().equals(asked.strong());
        return (weak || strong) && percent >= middle.lowest() && percent <= middle.highest();
    }

    /** Whether the spots lie among the compounds measured in the other pair, too, or were read in it. */
    private boolean isKnown(PairsToOffer.Offered offered) {
        String other = offered.pair().id();
        return other.equals(asked.id())
                || runs.own().isEmpty()
                || models.reaches(now.outlook().knowledge(), other)
                || UsedRuns.of(question, offered.pair(), choice, models).own().stream()
                        .anyMatch(plate -> !isOwn(plate));
    }

    /** One pure solvent is one liquid, whichever pair it comes from: the first of the pairs known best that come to it stays. */
    private static List<OtherEluent> eachLiquidOnce(List<OtherEluent> others) {
        Map<Solvent, OtherEluent> best = new HashMap<>();
        for (OtherEluent other : others) {
            pure(other)
                    .ifPresent(solvent -> best.merge(
                            solvent, other, (one, next) -> next.basis().compareTo(one.basis()) < 0 ? next : one));
        }
        return others.stream()
                .filter(other -> pure(other).isEmpty() || best.containsValue(other))
                .toList();
    }

    private static Optional<Solvent> pure(OtherEluent other) {
        double poured = other.pour().ratio().percentStrong();
        if (poured == 0) {
            return Optional.of(other.weak());
        }
        return poured == 100 ? Optional.of(other.strong()) : Optional.empty();
    }

    /** The shares between which the one lies that brings the middle of the sample to an Rf, with probability 0.9. */
    private static OtherEluent.Equal aimed(SampleMiddle middle, double share, double rf) {
        return new OtherEluent.Equal(
                share,
                Math.min(share, middle.shareWhereBelow(rf, 1 - TAIL)),
                Math.max(share, middle.shareWhereBelow(rf, TAIL)));
    }

    private OtherEluent.Equal equal(PlatePair pair, List<PlateRun> plates, double percent, double share) {
        PlateRun shown = new PlateRun(asked.id(), percent, Map.of());
        EqualStrengthBand band = new EqualStrengthBand(question, models, pair, plates, now, percent, shown);
        return new OtherEluent.Equal(share, Math.min(share, band.low()), Math.max(share, band.high()));
    }

    /** The same share of a pair for which the one asked about stands, between shares that differ as published strengths may. */
    private OtherEluent.Equal nearlyAlike(double share) {
        return new OtherEluent.Equal(share, moved(share, -STAND_IN), moved(share, STAND_IN));
    }

    private double moved(double share, double by) {
        PairModel model = now.outlook().knowledge().model();
        double wanted = model.strength(share) + by;
        double low = Math.min(share, now.lowest());
        double high = Math.max(share, now.highest());
        while (high - low > FINE) {
            double between = (low + high) / 2;
            if (model.strength(between) < wanted) {
                low = between;
            } else {
                high = between;
            }
        }
        return (low + high) / 2;
    }

    /** Of the simple ratios beside a share that the glassware can measure, the one whose middle comes nearer to an Rf. */
    private Ratio ratio(SampleMiddle middle, double share, double rf) {
        List<Ratio> all = PourableRatios.between(middle.lowest(), middle.highest()).stream()
                .filter(question.glassware()::measures)
                .toList();
        Optional<Ratio> below = all.stream()
                .filter(ratio -> ratio.percentStrong() <= share + FINE)
                .reduce((one, next) -> next);
        Optional<Ratio> above = all.stream()
                .filter(ratio -> ratio.percentStrong() >= share - FINE)
                .findFirst();
        return Stream.of(below, above)
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(ratio -> Math.abs(middle.at(ratio.percentStrong()) - rf)))
                .orElseThrow();
    }

    private SpotForecast spot(SampleMiddle middle, int spot, double percent) {
        Outlook.Spot each = middle.outlook().spot(spot, percent);
        return new SpotForecast(
                question.spots().get(spot), each.rf(), each.low(), each.high(), each.below(), each.above());
    }

    private List<Message> notes(Replacements.Of of, OtherRank rank, List<OtherEluent> others, int offered, int known) {
        List<Message> notes = new ArrayList<>();
        boolean told = question.wishes().shelf().isTold();
        if (offered > known) {
            notes.add(Message.of("other.beyond", "count", offered - known));
        }
        if (others.isEmpty()) {
            notes.add(Message.of(told ? "other.shelf-none" : "other.none"));
            return notes;
        }
        of.aim()
                .ifPresent(aim -> notes.add(
                        0,
                        Message.of(
                                of.rf() < AT_LINE ? "other.needs-stronger" : "other.needs-weaker",
                                "rf",
                                of.rf(),
                                "aim",
                                aim)));
        notes.add(Message.of("other.run-it"));
        boolean allMeasured = of.basis() == PairBasis.MEASURED
                && others.stream().allMatch(other -> other.basis() == PairBasis.MEASURED);
        notes.add(Message.of(allMeasured ? "other.all-measured" : "other.bases"));
        if (rank == OtherRank.APART && of.closest().isEmpty()) {
            notes.add(Message.of("other.one-spot"));
        }
        question.additive().ifPresent(additive -> {
            notes.add(Message.of("advice.additive", "additive", additive));
            notes.add(Message.of("advice.additive-system"));
        });
        if (known > others.size()) {
            notes.add(Message.of("other.more", "count", known, "shown", others.size()));
        }
        if (!told) {
            notes.add(Message.of("other.shelf-untold"));
        }
        notes.add(Message.of("other.sheet-first"));
        return notes;
    }
}
