package midplate.benchmark;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;

/**
 * What somebody does who looks up the most similar compound that was measured, and takes each spot for that one: the ratio at
 * which the plates of all the neighbours lie best inside the window, by the smallest distance of an Rf from its edges. The
 * chance it says is how often this worked for the compounds it learned from, by number of spots taken to be apart.
 */
final class NearestNeighbour implements StructureContender {
    private static final double STEP = 0.5;
    private static final double WHOLE = 100;
    private static final double LOW = 0.2;
    private static final double HIGH = 0.8;

    private final Map<TrueCurve, Lingo> known = new LinkedHashMap<>();
    private final double chanceOfOne;

    private NearestNeighbour(List<TrueCurve> curves) {
        curves.forEach(curve -> known.put(curve, Lingo.of(curve.series().smiles())));
        this.chanceOfOne = chanceOfOne();
    }

    static NearestNeighbour trainedOn(OpenMeasurements training) {
        return of(TrueCurve.of(training.table(PairName.HEXANE_ETHYL_ACETATE)));
    }

    /** One that learned these curves, two or more. */
    static NearestNeighbour of(List<TrueCurve> curves) {
        return new NearestNeighbour(curves);
    }

    /** How often the neighbour of another structure gives a ratio that is a hit, among those learned from. */
    private double chanceOfOne() {
        int hits = 0;
        for (TrueCurve curve : known.keySet()) {
            String smiles = curve.series().smiles();
            hits += curve.inWindow(best(List.of(neighbour(smiles, smiles)))) ? 1 : 0;
        }
        return (hits + 1.0) / (known.size() + 2.0);
    }

    @Override
    public Choice first(List<ToldSpot> spots) {
        List<TrueCurve> neighbours = new ArrayList<>();
        spots.forEach(spot -> neighbours.add(neighbour(spot.smiles(), "")));
        return new Choice(best(neighbours), Math.pow(chanceOfOne, spots.size()));
    }

    private TrueCurve neighbour(String smiles, String butNot) {
        Lingo lingo = Lingo.of(smiles);
        return known.keySet().stream()
                .filter(curve -> !curve.series().smiles().equals(butNot))
                .max(Comparator.comparingDouble((TrueCurve curve) ->
                                known.getOrDefault(curve, lingo).similarity(lingo))
                        .thenComparing(TrueCurve::series))
                .orElseThrow();
    }

    private static double best(List<TrueCurve> curves) {
        double best = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (double percent = 0; percent <= WHOLE; percent += STEP) {
            double at = percent;
            double least = curves.stream()
                    .mapToDouble(curve -> Math.min(curve.rf(at) - LOW, HIGH - curve.rf(at)))
                    .min()
                    .orElseThrow();
            if (least > most) {
                most = least;
                best = percent;
            }
        }
        return best;
    }
}
