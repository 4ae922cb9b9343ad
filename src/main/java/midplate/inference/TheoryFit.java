package midplate.inference;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import midplate.catalogue.BorrowedCurve;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.StrengthSeries;
import midplate.catalogue.TheoryCheck;
import midplate.catalogue.TheoryKind;
import midplate.catalogue.TheoryStrength;
import midplate.chemistry.EluentComponent;
import midplate.chemistry.EluentStrength;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * How published eluent strengths become the curve of a pair without measurements, fitted to the measured pairs.
 *
 * <p>α' and κ are those at which η of the average compound, over all measured pairs and the shares at which they may be trusted, lies
 * closest to one straight line {@code η = β + κ·ε} (least squares; α' from 0.57 to 0.83, the range published for silica, in steps of
 * 0.01). Average are the compounds measured in every pair, by the means of c and s that their readings leave, with t = 0.
 *
 * <p>Each kind of pair is then checked on a measured one, foretold from another as if it were not measured.
 *
 * @see "Snyder1968"
 */
final class TheoryFit {
    private static final StrengthSeries SERIES = StrengthSeries.NEWER;
    private static final int LEAST_ACTIVITY = 57;
    private static final int MOST_ACTIVITY = 83;
    private static final int FEWEST_COMMON = 5;
    /** However well a few compounds agree, no pair is foretold better than this [ln units; 1]. */
    private static final double LEAST_DEVIATION = 0.05;

    private static final String ACETATE = "silica-hexane-ethyl-acetate";
    private static final String ETHER = "silica-hexane-diethyl-ether";
    private static final String METHANOL = "silica-dichloromethane-methanol";

    private final SolventCatalogue catalogue;
    private final Map<String, Told> pairs = new TreeMap<>();

    private TheoryFit(SolventCatalogue catalogue, List<Told> told) {
        this.catalogue = catalogue;
        told.forEach(each -> pairs.put(each.pair().id(), each));
    }

    /**
     * A measured pair.
     *
     * @param pair its curve
     * @param compounds the traits of its compounds
     */
    record Told(PlatePair pair, Map<Series, PairFit.Estimate> compounds) {
        static Told of(PlatePair pair, List<Series> series, List<PairFit.Estimate> estimates) {
            Map<Series, PairFit.Estimate> compounds = new TreeMap<>();
            for (int i = 0; i < series.size(); i++) {
                compounds.put(series.get(i), estimates.get(i));
            }
            return new Told(pair, compounds);
        }

        double eta(Series series, int share) {
            return eta(series, pair.hold().get(share), pair.strength().get(share));
        }

        double eta(Series series, BorrowedCurve.Place place) {
            return eta(series, place.hold(), place.strength());
        }

        double variance(Series series, int share) {
            return variance(series, pair.hold().get(share), pair.strength().get(share));
        }

        double variance(Series series, BorrowedCurve.Place place) {
            return variance(series, place.hold(), place.strength());
        }

        /** How well η is known, the errors of c and s taken as apart. */
        private double variance(Series series, double hold, double strength) {
            PairFit.Estimate estimate = estimate(series);
            return hold * hold * estimate.varianceC() + strength * strength * estimate.varianceS();
        }

        /** η of a compound of t = 0. */
        private double eta(Series series, double hold, double strength) {
            PairFit.Estimate estimate = estimate(series);
            return hold * estimate.c() + estimate.s() * strength;
        }

        private PairFit.Estimate estimate(Series series) {
            PairFit.Estimate estimate = compounds.get(series);
            if (estimate == null) {
                throw new IllegalArgumentException("series " + series + "; allowed: those measured in this pair");
            }
            return estimate;
        }
    }

    /** Fits it; empty where a pair is missing, or fewer than five compounds were measured in all, or a check has no share. */
    static Optional<TheoryStrength> fit(SolventCatalogue catalogue, List<Told> pairs) {
        return new TheoryFit(catalogue, pairs).run();
    }

    private Optional<TheoryStrength> run() {
        if (!pairs.keySet().containsAll(List.of(ACETATE, ETHER, METHANOL))
                || common(pairs.values()).size() < FEWEST_COMMON) {
            return Optional.empty();
        }
        Law law = law();
        Optional<TheoryCheck> ether =
                check(TheoryKind.ALKANE_LOCALIZING, told(ETHER), above(told(ETHER), 0), law, LEAST_DEVIATION);
        Optional<TheoryCheck> methanol =
                check(TheoryKind.ALCOHOL, told(METHANOL), above(told(METHANOL), 0), law, LEAST_DEVIATION);
        // one share does not tell how δ changes: then as badly as wherever that was seen
        double worst = Stream.of(ether, methanol)
                .flatMap(Optional::stream)
                .mapToDouble(TheoryCheck::deviationS)
                .max()
                .orElse(LEAST_DEVIATION);
        Optional<TheoryCheck> alone = check(TheoryKind.OTHER, told(METHANOL), weakAlone(told(METHANOL)), law, worst);
        List<TheoryCheck> checks =
                Stream.of(ether, alone, methanol).flatMap(Optional::stream).toList();
        return law.slope() > 0 && checks.size() == TheoryKind.values().length
                ? Optional.of(new TheoryStrength(SERIES, law.activity(), law.slope(), checks))
                : Optional.empty();
    }

    /** α' and κ. */
    private record Law(double activity, double slope) {}

    private Law law() {
        double best = Double.POSITIVE_INFINITY;
        Law law = new Law(Double.NaN, Double.NaN);
        for (int hundredths = LEAST_ACTIVITY; hundredths <= MOST_ACTIVITY; hundredths++) {
            SimpleRegression line = line(hundredths / 100.0);
            if (line.getSumSquaredErrors() < best) {
                best = line.getSumSquaredErrors();
                law = new Law(hundredths / 100.0, line.getSlope());
            }
        }
        return law;
    }

    /** η of the average compound against ε, over all pairs and trusted shares. */
    private SimpleRegression line(double activity) {
        SimpleRegression line = new SimpleRegression();
        Set<Series> common = common(pairs.values());
        for (Told told : pairs.values()) {
            for (int share : trusted(told)) {
                double sum = 0;
                for (Series series : common) {
                    sum += told.eta(series, share);
                }
                line.addData(epsilon(told, share, activity), sum / common.size());
            }
        }
        return line;
    }

    private Optional<TheoryCheck> check(TheoryKind kind, Told told, List<Integer> shares, Law law, double leastS) {
        Told from = told(ACETATE);
        if (shares.isEmpty()) {
            return Optional.empty();
        }
        BorrowedCurve curve = BorrowedCurve.of(
                from.pair(),
                component(from.pair().weak()),
                component(from.pair().strong()),
                law.activity(),
                law.slope());
        List<BorrowedCurve.Place> places = shares.stream()
                .map(share -> curve.at(epsilon(told, share, law.activity())))
                .toList();
        double[] strength =
                places.stream().mapToDouble(BorrowedCurve.Place::strength).toArray();
        Foretold foretold = new Foretold();
        for (Series series : common(List.of(from, told))) {
            foretold.add(
                    strength,
                    places.stream()
                            .mapToDouble(place -> from.eta(series, place))
                            .toArray(),
                    shares.stream()
                            .mapToDouble(share -> told.eta(series, share))
                            .toArray(),
                    IntStream.range(0, strength.length)
                            .mapToDouble(
                                    k -> from.variance(series, places.get(k)) + told.variance(series, shares.get(k)))
                            .toArray());
        }
        return foretold.compounds() < FEWEST_COMMON
                ? Optional.empty()
                : Optional.of(new TheoryCheck(
                        kind,
                        told.pair().id(),
                        from.pair().id(),
                        shares.stream().map(told.pair().percentStrong()::get).toList(),
                        foretold.compounds(),
                        foretold.bias(),
                        foretold.scatter(),
                        StrictMath.max(LEAST_DEVIATION, foretold.deviationC()),
                        StrictMath.max(leastS, foretold.deviationS())));
    }

    private Told told(String id) {
        return Optional.ofNullable(pairs.get(id))
                .orElseThrow(() -> new IllegalStateException("pair " + id + " was not fitted"));
    }

    /** The compounds measured in all of some pairs. */
    private static Set<Series> common(Collection<Told> pairs) {
        Set<Series> common = new TreeSet<>();
        pairs.forEach(each -> common.addAll(each.compounds().keySet()));
        pairs.forEach(each -> common.retainAll(each.compounds().keySet()));
        return common;
    }

    /** Which of the measured shares may be trusted. */
    private static List<Integer> trusted(Told told) {
        PlatePair pair = told.pair();
        return IntStream.range(0, pair.percentStrong().size())
                .filter(share -> pair.percentStrong().get(share) >= pair.trustedFrom()
                        && pair.percentStrong().get(share) <= pair.trustedTo())
                .boxed()
                .toList();
    }

    private static List<Integer> above(Told told, double percent) {
        return trusted(told).stream()
                .filter(share -> told.pair().percentStrong().get(share) > percent)
                .toList();
    }

    private static List<Integer> weakAlone(Told told) {
        return trusted(told).stream()
                .filter(share -> told.pair().percentStrong().get(share) == 0)
                .toList();
    }

    private double epsilon(Told told, int share, double activity) {
        PlatePair pair = told.pair();
        double fraction = pair.percentStrong().get(share) / 100;
        return EluentStrength.binary(component(pair.weak()), component(pair.strong()), fraction, activity);
    }

    private EluentComponent component(Solvent solvent) {
        return catalogue
                .component(solvent, Sorbent.SILICA, SERIES)
                .orElseThrow(() -> new IllegalStateException("no strength on silica of " + solvent.id()));
    }
}
