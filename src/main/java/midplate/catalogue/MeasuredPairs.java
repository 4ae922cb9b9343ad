package midplate.catalogue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;

/**
 * The fitted pairs and the links between them, from the files of {@code solvent-data/curves}: {@code index.json} names the
 * pairs and holds the links, each pair has a file of its own.
 *
 * @param pairs the pairs, in the order of the index
 * @param links what readings in one pair say about another
 */
public record MeasuredPairs(List<MeasuredPair> pairs, List<PairLink> links) {
    private static final double FAR = 50;
    private static final int FEWEST_SHARES = 2;
    /** The spread of compounds must be given at least as far as this to both sides [ln units]. */
    private static final double REACH = 5;

    /** Keeps its own copies. */
    public MeasuredPairs {
        pairs = List.copyOf(pairs);
        links = List.copyOf(links);
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
        List<MeasuredPair> pairs = new ArrayList<>();
        for (String id : index.texts("pairs")) {
            CurveJson json = CurveJson.read(folder, prefix + id + ".json");
            MeasuredPair pair = pair(json, catalogue);
            if (!pair.id().equals(id)) {
                throw json.fault("strong", pair.id(), "the pair that index.json names: " + id);
            }
            pairs.add(pair);
        }
        List<String> ids = pairs.stream().map(MeasuredPair::id).toList();
        List<PairLink> links = new ArrayList<>();
        for (CurveJson link : index.objects("links")) {
            links.add(new PairLink(
                    oneOf(link, "from", ids),
                    oneOf(link, "to", ids),
                    link.number("intercept", -FAR, FAR),
                    link.number("slope", -FAR, FAR),
                    link.number("deviation", 1e-6, FAR),
                    link.count("compounds"),
                    link.number("lowest", -FAR, FAR),
                    link.number("highest", -FAR, FAR)));
        }
        return new MeasuredPairs(pairs, links);
    }

    private static String oneOf(CurveJson json, String field, List<String> allowed) {
        String came = json.text(field);
        if (!allowed.contains(came)) {
            throw json.fault(field, came, "one of " + allowed);
        }
        return came;
    }

    private static MeasuredPair pair(CurveJson json, SolventCatalogue catalogue) {
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
        return new MeasuredPair(
                Sorbent.byId(json.text("sorbent"))
                        .orElseThrow(() -> json.fault("sorbent", json.text("sorbent"), "silica or alumina")),
                solvent(json, "weak", catalogue),
                solvent(json, "strong", catalogue),
                trustedFrom,
                trusted.number("to", trustedFrom, 100),
                percents,
                alike(json, "strength", percents, json.rising("strength", -FAR, FAR)),
                alike(json, "strengthError", percents, json.numbers("strengthError", 0, FAR)),
                alike(json, "noiseScale", percents, json.numbers("noiseScale", 1e-6, 1)),
                json.number("noiseLeftAtLines", 1e-6, 1),
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

    private static MeasuredPair.Traits traits(CurveJson json) {
        List<Double> density = json.numbers("cDensity", 0, 1);
        double from = json.number("cFrom", -FAR, FAR);
        double step = json.number("cStep", 1e-3, 1);
        double reach = from + step * (density.size() - 1);
        if (!(from <= -REACH)) {
            throw json.fault("cFrom", from, "a number of " + -REACH + " or below");
        }
        if (!(reach >= REACH)) {
            throw json.fault("cDensity", density.size() + " nodes", "nodes that reach to " + REACH + " or above");
        }
        double sum = density.stream().mapToDouble(Double::doubleValue).sum();
        if (!(Math.abs(sum - 1) < 1e-3)) {
            throw json.fault("cDensity", "numbers that sum to " + sum, "numbers that sum to 1");
        }
        return new MeasuredPair.Traits(
                from,
                step,
                density,
                json.number("sMean", 0.1, 5),
                json.number("sSlope", -1, 1),
                json.number("cCentre", -FAR, FAR),
                json.number("sDeviation", 1e-3, 2));
    }

    private static MeasuredPair.Provenance provenance(CurveJson json, SolventCatalogue catalogue) {
        List<String> sources = json.texts("sources");
        for (String key : sources) {
            if (!catalogue.sources().containsKey(key)) {
                throw json.fault("sources", key, "keys of sources.json");
            }
        }
        return new MeasuredPair.Provenance(
                sources, json.text("inputSha256"), json.text("leftOut"), json.text("command"));
    }
}
