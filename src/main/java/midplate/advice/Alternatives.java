package midplate.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import midplate.catalogue.PlatePair;
import midplate.chemistry.RetentionFactor;
import midplate.chemistry.Solvent;
import midplate.inference.Knowledge;
import midplate.inference.Outlook;
import midplate.inference.Parting;
import midplate.inference.PlateModels;
import midplate.inference.PlateRun;
import midplate.inference.SpotPair;
import midplate.words.Digits;
import midplate.words.Message;

/** What to do when one plate in this pair hardly works, ranked by chance: develop again, another pair, two plates. */
final class Alternatives {
    private static final int TOLD = 4;
    private static final double WORTH_CHANGING = 0.02;
    /** To develop a plate again and again is work: below this chance it is not offered; common practice, no source. */
    private static final double LEAST_REPEATED = 0.2;
    /** A spot that is not expected above this Rf after one run does not move [1]; common practice, no source. */
    private static final double MOVES = 0.05;

    private final Question question;
    private final PlatePair asked;
    private final Outlook outlook;
    private final PlateModels models;
    private final PairChoice choice;
    private final Parting parting;
    private final List<Double> percents;

    Alternatives(Question question, PlatePair asked, Outlook outlook, PlateModels models, PairChoice choice) {
        this.choice = choice;
        this.parting = question.parting();
        this.question = question;
        this.asked = asked;
        this.outlook = outlook;
        this.models = models;
        this.percents = ratios(outlook);
    }

    /** Those that do better than a chance by more than 0.02, the best first. */
    List<Alternative> betterThan(double chance, UsedRuns runs, List<PlatePair> measured) {
        List<Alternative> all = new ArrayList<>();
        repeated().ifPresent(all::add);
        twoPlates().ifPresent(all::add);
        for (PlatePair other : measured) {
            if (!other.id().equals(asked.id())) {
                otherPair(other, runs).ifPresent(all::add);
            }
        }
        return all.stream()
                .filter(alternative -> alternative.chance() > chance + WORTH_CHANGING)
                .sorted(Comparator.comparingDouble(Alternative::chance).reversed())
                .limit(TOLD)
                .toList();
    }

    /** Two runs, or three where these do better. */
    private Optional<Alternative> repeated() {
        Optional<Alternative> twice = repeated(2);
        Optional<Alternative> thrice = repeated(3);
        double needed = twice.map(Alternative::chance).orElse(0.0) + WORTH_CHANGING;
        return thrice.filter(more -> more.chance() > needed).or(() -> twice);
    }

    /** The window that one run must hit for {@code 1 − (1 − Rf)ⁿ} to lie in the window after n runs. */
    private Optional<Alternative> repeated(int times) {
        Window window = question.window();
        Outlook once = models.outlook(
                outlook.knowledge(),
                question.setting(),
                RetentionFactor.beforeDevelopments(window.low(), times),
                RetentionFactor.beforeDevelopments(window.high(), times));
        RatioSearch.Found found = RatioSearch.likeliest(Aim.everySpot(once, parting.after(times)), percents);
        boolean likely = found.chance() >= LEAST_REPEATED;
        if (!likely
                || everySpot().stream()
                        .anyMatch(spot -> outlook.spot(spot, found.percent()).rf() < MOVES)) {
            return Optional.empty();
        }
        return Optional.of(new Alternative(
                Message.of(
                        "advice.instead-repeat",
                        "count",
                        times,
                        "percent",
                        Digits.aboutPercent(found.percent()),
                        "strong",
                        question.strong().said()),
                found.chance()));
    }

    /**
     * The spots parted by how weakly they are held, each part with a ratio of its own, for the best cut. A pair that the cut
     * parts must lie apart on the plate of the loose ones, where the held ones stay low.
     */
    private Optional<Alternative> twoPlates() {
        List<Integer> order = everySpot().stream()
                .sorted(Comparator.comparingDouble(spot -> outlook.knowledge().meanC(spot)))
                .toList();
        Alternative best = null;
        for (int cut = 1; cut < order.size(); cut++) {
            List<Integer> heldSpots = order.subList(0, cut);
            List<Integer> looseSpots = order.subList(cut, order.size());
            RatioSearch.Found held = RatioSearch.likeliest(
                    new Aim(outlook, heldSpots, pairs(pair -> isWithin(pair, heldSpots))), percents);
            RatioSearch.Found loose = RatioSearch.likeliest(
                    new Aim(outlook, looseSpots, pairs(pair -> !isWithin(pair, heldSpots))), percents);
            double chance = held.chance() * loose.chance();
            if (best == null || chance > best.chance()) {
                best = new Alternative(
                        Message.of(
                                "advice.instead-two-plates",
                                "strong",
                                question.strong().said(),
                                "heldPercent",
                                Digits.aboutPercent(held.percent()),
                                "held",
                                names(heldSpots),
                                "loosePercent",
                                Digits.aboutPercent(loose.percent()),
                                "loose",
                                names(looseSpots)),
                        chance);
            }
        }
        return Optional.ofNullable(best);
    }

    private static boolean isWithin(SpotPair pair, List<Integer> spots) {
        return spots.contains(pair.one()) && spots.contains(pair.other());
    }

    private Parting pairs(Predicate<SpotPair> wanted) {
        return Parting.of(parting.pairs().stream().filter(wanted).toList());
    }

    /** Another pair; empty where the shelf lacks one of its solvents, or nothing is known of it. */
    private Optional<Alternative> otherPair(PlatePair other, UsedRuns runs) {
        Optional<Solvent> weak = question.wishes().shelf().inPlaceOf(other.weak(), choice::standard);
        Optional<Solvent> strong = question.wishes().shelf().inPlaceOf(other.strong(), choice::standard);
        if (weak.isEmpty() || strong.isEmpty()) {
            return Optional.empty();
        }
        UsedRuns there = UsedRuns.of(question, other, choice, models);
        boolean wasRun = there.own().stream().anyMatch(plate -> isOnlyThere(plate, runs.own()));
        if (!wasRun && !models.reaches(outlook.knowledge(), other.id())) {
            return Optional.empty();
        }
        Aim aim = Aim.everySpot(outlook(other, wasRun ? there : runs), parting);
        RatioSearch.Found found = wasRun ? asAsked(aim) : RatioSearch.likeliest(aim, trusted(other));
        return Optional.of(new Alternative(
                Message.of(
                        wasRun ? "advice.instead-pair-run" : "advice.instead-pair",
                        "weak",
                        weak.get().said(),
                        "strong",
                        strong.get().said(),
                        "percent",
                        Digits.aboutPercent(found.percent())),
                found.chance()));
    }

    /** Whether a plate is of another pair alone: one in a pure solvent that both pairs have is of the pair asked about too. */
    private static boolean isOnlyThere(PlateRun plate, List<PlateRun> asked) {
        boolean read = !plate.readings().isEmpty() || !plate.unlabelled().isEmpty();
        return read && asked.stream().noneMatch(own -> own.number() == plate.number());
    }

    private Outlook outlook(PlatePair other, UsedRuns runs) {
        Knowledge knowledge =
                models.learn(other.id(), question.setting(), question.spots(), runs.all(), question.structures());
        return models.outlook(
                knowledge,
                question.setting(),
                question.window().low(),
                question.window().high());
    }

    /** The ratio and its chance as they would be advised if that pair were asked about. */
    private RatioSearch.Found asAsked(Aim aim) {
        double percent = RatioSearch.of(aim, question.window())
                .pourable(question.glassware())
                .percentStrong();
        return new RatioSearch.Found(percent, aim.chance(percent));
    }

    /** The mixtures of a pair that its curve can be trusted for. */
    private static List<Double> trusted(PlatePair pair) {
        return PourableRatios.between(pair.trustedFrom(), pair.trustedTo()).stream()
                .map(Ratio::percentStrong)
                .toList();
    }

    private static List<Double> ratios(Outlook outlook) {
        return PourableRatios.between(
                        outlook.knowledge().model().lowestPercent(),
                        outlook.knowledge().model().highestPercent())
                .stream()
                .map(Ratio::percentStrong)
                .toList();
    }

    private List<Integer> everySpot() {
        return IntStream.range(0, question.spots().size()).boxed().toList();
    }

    private String names(List<Integer> spots) {
        return String.join(
                ", ", spots.stream().map(spot -> question.spots().get(spot)).toList());
    }
}
