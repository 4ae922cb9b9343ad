package midplate.benchmark;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import midplate.identity.IdentityAnswer;
import midplate.identity.Verdict;

/**
 * The verdict on one plate, tried on drawn plates ({@link SimulatedPlates}), with the errors assumed and with twice these. The seeds
 * are not those used while the verdict was built, which were below 1000.
 */
final class IdentityBenchmark {
    /** With the errors as drawn. */
    static final String USUAL = "errors as assumed";
    /** With twice these. */
    static final String TWICE = "twice these errors";
    /** Distances in Rf that are tried, the first of them one compound. */
    static final List<Double> APART = List.of(0.0, 0.02, 0.03, 0.04, 0.05, 0.06, 0.08, 0.10);

    private static final long SEED = 20261126;
    private static final int PLATES = 20_000;
    private static final int MIXTURES = 5000;
    private static final double TWO = 2;

    private IdentityBenchmark() {}

    /** These results with the verdicts in place of any that they had. */
    static Accuracy run(Accuracy before) {
        Map<String, Map<String, Figure>> figures = new LinkedHashMap<>();
        figures.put(USUAL, figures(SEED, 1));
        figures.put(TWICE, figures(SEED + 1, TWO));
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("identityPlates", PLATES);
        told.put("identityMixtures", MIXTURES);
        told.put("identitySeed", SEED);
        return before.withIdentity(told, figures);
    }

    private static Map<String, Figure> figures(long seed, double factor) {
        Map<String, Figure> figures = new TreeMap<>();
        SimulatedPlates drawn = new SimulatedPlates(seed, factor);
        for (double apart : APART) {
            JudgedPlates judged = JudgedPlates.of(drawn, apart, PLATES, JudgedPlates.Sizes.TOLD);
            for (Verdict.Outcome outcome : Verdict.Outcome.values()) {
                figures.put(name(outcome.id(), apart), judged.share(outcome));
            }
            figures.put(name("different.small", apart), judged.differentOfSmall());
            figures.put(name("different.large", apart), judged.differentOfLarge());
            JudgedPlates unsized = JudgedPlates.of(drawn, apart, PLATES, JudgedPlates.Sizes.UNTOLD);
            figures.put(name("different.unsized", apart), unsized.share(Verdict.Outcome.DIFFERENT));
        }
        List<Double> references = List.of(0.30, 0.45);
        figures.put("mixture.recognised", mixtures(drawn, references, references));
        figures.put("mixture.false.one", mixtures(drawn, List.of(0.30), references));
        figures.put("mixture.false.other", mixtures(drawn, List.of(0.30, 0.55), references));
        figures.put("different.twice", JudgedPlates.differentOfTwice(drawn, PLATES));
        return figures;
    }

    private static Figure mixtures(SimulatedPlates drawn, List<Double> sample, List<Double> references) {
        return JudgedPlates.share(drawn, sample, references, MIXTURES, IdentityBenchmark::isMixture);
    }

    private static boolean isMixture(IdentityAnswer answer) {
        return answer.mixture().isPresent();
    }

    /** The name of a figure at a distance. */
    static String name(String figure, double apart) {
        return String.format(Locale.ROOT, "%s.%.2f", figure, apart);
    }
}
