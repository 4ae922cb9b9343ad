package midplate.catalogue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;

/**
 * The fitted pairs and how traits in them go together, from the files of {@code solvent-data/curves}: {@code index.json} names the
 * pairs and holds what they have to do with each other, each pair has a file of its own.
 *
 * @param pairs the pairs, in the order of the index
 * @param joint what readings in one pair say about another; empty where that was not fitted
 * @param structures what the structure of a compound says in a pair, for the pairs for which that was fitted
 * @param theory how published strengths become curves of pairs without measurements; empty where that was not fitted
 */
public record MeasuredPairs(
        List<PlatePair> pairs,
        Optional<JointTraits> joint,
        List<GroupEffects> structures,
        Optional<TheoryStrength> theory) {
    private static final double FAR = 50;
    private static final int FEWEST_SHARES = 2;
    private static final int COVARIANCES = 6;
    /** Least and greatest c, s and t that spots are taken to have. */
    private static final double[][] REACH = {{-10, 10}, {0.3, 2}, {-3, 3}};
    /** Narrower curves would lie between the places at which spots are weighed [ln units², 1, 1]. */
    private static final double[] LEAST_VARIANCE = {1e-4, 1e-4, 2.5e-3};

    /** Keeps its own copies. */
    public MeasuredPairs {
        pairs = List.copyOf(pairs);
        structures = List.copyOf(structures);
    }

    /** Pairs beside which there are no others. */
    public MeasuredPairs(List<PlatePair> pairs, Optional<JointTraits> joint, List<GroupEffects> structures) {
        this(pairs, joint, structures, Optional.empty());
    }

    /** Pairs that say nothing about each other, in which structures say nothing. */
    public MeasuredPairs(List<PlatePair> pairs) {
        this(pairs, Optional.empty(), List.of());
    }

    /** As if a pair had not been measured; what was found out with it about published strengths stays. */
    public MeasuredPairs without(String pair) {
        return new MeasuredPairs(
                pairs.stream().filter(each -> !each.id().equals(pair)).toList(),
                joint.map(traits -> traits.without(pair)),
                structures.stream().filter(each -> !each.pair().equals(pair)).toList(),
                theory);
    }

    /** The curves packed with the program. */
    public static MeasuredPairs builtIn(SolventCatalogue catalogue) {
        return read(DataFolder.packed(), "curves/", catalogue);
    }

    /**
     * Curves from a folder that {@code calibrate} wrote.
     *
     * @throws BadSolventData when a file is missing or a field in it is wrong
     */
    public static MeasuredPairs read(Path folder, SolventCatalogue catalogue) {
        return read(DataFolder.of(folder), "", catalogue);
    }

    private static MeasuredPairs read(DataFolder folder, String prefix, SolventCatalogue catalogue) {
        CurveJson index = CurveJson.read(folder, prefix + "index.json");
        List<PlatePair> pairs = new ArrayList<>();
        for (String id : index.texts("pairs")) {
            CurveJson json = CurveJson.read(folder, prefix + id + ".json");
            PlatePair pair = pair(json, catalogue);
            if (!pair.id().equals(id)) {
                throw json.fault("strong", pair.id(), "the pair that index.json names: " + id);
            }
            pairs.add(pair);
        }
        List<String> ids = pairs.stream().map(PlatePair::id).toList();
        return new MeasuredPairs(
                pairs,
                JointTraitsReader.read(folder, prefix, index, ids),
                GroupEffectsReader.read(folder, prefix, index, ids),
                TheoryStrengthReader.read(folder, prefix, index, ids));
    }

    private static PlatePair pair(CurveJson json, SolventCatalogue catalogue) {
        List<Double> percents = json.rising("percentStrong", 0, 100);
        if (percents.size() < FEWEST_SHARES) {
            throw json.fault("percentStrong", percents, "at least " + FEWEST_SHARES + " numbers");
        }
        for (int i = 1; i < percents.size(); i++) {
            if (percents.get(i).equals(percents.get(i - 1))) {
                throw json.fault("percentStrong[" + i + "]", percents.get(i), "above the number before it");
            }
        }
        CurveJson trusted = json.object("trusted");
        double trustedFrom = trusted.number("from", 0, 100);
        CurveJson fit = json.object("fit");
        return new PlatePair(
                PairBasis.MEASURED,
                Sorbent.byId(json.text("sorbent"))
                        .orElseThrow(() -> json.fault("sorbent", json.text("sorbent"), "silica or alumina")),
                solvent(json, "weak", catalogue),
                solvent(json, "strong", catalogue),
                trustedFrom,
                trusted.number("to", trustedFrom, 100),
                percents,
                alike(json, "strength", percents, json.rising("strength", -FAR, FAR)),
                alike(json, "strengthError", percents, json.numbers("strengthError", 0, FAR)),
                alike(json, "hold", percents, json.numbers("hold", 0.1, 10)),
                alike(json, "early", percents, json.numbers("early", 0, FAR)),
                alike(json, "noiseScale", percents, json.numbers("noiseScale", 1e-6, 1)),
                json.number("noiseLeftAtLines", 1e-6, 1),
                json.number("atLines", 0, 0.1),
                json.number("stretchStart", 0, 0.2),
                json.number("stretchFront", 0, 0.2),
                traits(json.object("traits")),
                fit.count("compounds"),
                fit.count("readings"),
                fit.number("residual", 0, 1),
                provenance(json.object("provenance"), catalogue));
    }

    private static Solvent solvent(CurveJson json, String field, SolventCatalogue catalogue) {
        String name = json.text(field);
        return catalogue.solvents().stream()
                .filter(solvent -> solvent.id().equals(name))
                .findFirst()
                .orElseThrow(() -> json.fault(field, name, "the id of a solvent of solvents.csv"));
    }

    private static List<Double> alike(CurveJson json, String field, List<Double> percents, List<Double> numbers) {
        if (numbers.size() != percents.size()) {
            throw json.fault(
                    field, numbers.size() + " numbers", percents.size() + " numbers, as many as percentStrong");
        }
        return numbers;
    }

    private static PlatePair.Traits traits(CurveJson json) {
        List<PlatePair.Bell> bells = new ArrayList<>();
        double sum = 0;
        for (CurveJson bell : json.objects("bells")) {
            double weight = bell.number("weight", 0, 1);
            List<Double> middle = bell.numbers("middle", -FAR, FAR);
            List<Double> covariance = bell.numbers("covariance", -FAR * FAR, FAR * FAR);
            if (!isWithinReach(middle)) {
                throw bell.fault("middle", middle, "c in [-10, 10], s in [0.3, 2], t in [-3, 3]");
            }
            if (covariance.size() != COVARIANCES || !isCovariance(covariance)) {
                throw bell.fault(
                        "covariance",
                        covariance,
                        "cc, cs, ct, ss, st, tt of a covariance; cc at least 0.0001, ss 0 or at least 0.0001, tt 0 or at least 0.0025");
            }
            if (!bells.isEmpty() && !isAlike(covariance, bells.get(0))) {
                throw bell.fault("covariance", covariance, "the same variances 0 as in the curves before it");
            }
            bells.add(new PlatePair.Bell(
                    weight,
                    middle.get(0),
                    middle.get(1),
                    middle.get(2),
                    covariance.get(0),
                    covariance.get(1),
                    covariance.get(2),
                    covariance.get(3),
                    covariance.get(4),
                    covariance.get(5)));
            sum += weight;
        }
        if (!(Math.abs(sum - 1) < 1e-3)) {
            throw json.fault("bells", "weights that sum to " + sum, "weights that sum to 1");
        }
        return new PlatePair.Traits(bells);
    }

    private static boolean isWithinReach(List<Double> middle) {
        if (middle.size() != REACH.length) {
            return false;
        }
        for (int i = 0; i < REACH.length; i++) {
            if (!(middle.get(i) >= REACH[i][0] && middle.get(i) <= REACH[i][1])) {
                return false;
            }
        }
        return true;
    }

    /**
     * Whether cc, cs, ct, ss, st, tt make a covariance: a variance of s or t that is 0, and its covariances with it, leaves the trait
     * out; of the others every leading minor is above 0 (Sylvester's criterion).
     */
    private static boolean isCovariance(List<Double> v) {
        double cc = v.get(0);
        double cs = v.get(1);
        double ct = v.get(2);
        double ss = v.get(3);
        double st = v.get(4);
        double tt = v.get(5);
        boolean wide =
                cc >= LEAST_VARIANCE[0] && (ss == 0 || ss >= LEAST_VARIANCE[1]) && (tt == 0 || tt >= LEAST_VARIANCE[2]);
        boolean leftOut = (ss != 0 || (cs == 0 && st == 0)) && (tt != 0 || (ct == 0 && st == 0));
        double three = cc * (ss * tt - st * st) - cs * (cs * tt - st * ct) + ct * (cs * st - ss * ct);
        return wide
                && leftOut
                && (ss == 0 || cc * ss - cs * cs > 0)
                && (tt == 0 || cc * tt - ct * ct > 0)
                && (ss == 0 || tt == 0 || three > 0);
    }

    /** A trait in which compounds differ differs in all curves. */
    private static boolean isAlike(List<Double> covariance, PlatePair.Bell before) {
        return covariance.get(3) > 0 == before.varianceS() > 0 && covariance.get(5) > 0 == before.varianceT() > 0;
    }

    private static PlatePair.Provenance provenance(CurveJson json, SolventCatalogue catalogue) {
        List<String> sources = json.texts("sources");
        for (String key : sources) {
            if (!catalogue.sources().containsKey(key)) {
                throw json.fault("sources", key, "keys of sources.json");
            }
        }
        return new PlatePair.Provenance(sources, json.text("inputSha256"), json.text("leftOut"), json.text("command"));
    }
}
