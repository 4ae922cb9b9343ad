package midplate.inference;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which share of the possible plates has the named pairs apart.
 *
 * <p>Inside one scenario and one error of the next plate the spots are independent, so plates are drawn there spot by spot,
 * evenly (a Kronecker sequence), each spot from what it may be given that it reads inside the window. The share multiplies
 * the chance that all spots read inside; without pairs it is 1. Places are drawn the same whatever the pairs, so a further
 * pair never raises the share. For one thread.
 */
final class ApartShares {
    /** Plates drawn in all, by the weight of scenario and error; a chance is then within about 0.01 of the full sum. */
    private static final int PLATES = 2048;

    /** Plates drawn at least for each scenario and error. */
    private static final int FEWEST = 4;

    /**
     * Half the width in which a distance near the limit counts in part [1 in Rf]: a drawn plate stands for those around it,
     * so the share changes smoothly with the ratio.
     */
    private static final double SOFT = 0.01;

    private final Knowledge knowledge;
    private final Parting parting;
    private final int[] spots;
    private final double[] irrational;
    private final double[] rf;
    private final double[] shifts;
    private final int[] first;
    private final double[][] place;

    ApartShares(Knowledge knowledge, Parting parting) {
        this.knowledge = knowledge;
        this.parting = parting;
        this.spots = parting.pairs().stream()
                .flatMapToInt(pair -> IntStream.of(pair.one(), pair.other()))
                .distinct()
                .sorted()
                .toArray();
        this.irrational = PossibleSamples.irrational(knowledge);
        this.rf = Arrays.stream(knowledge.model().rf())
                .map(once -> 1 - Math.pow(1 - once, parting.developments()))
                .toArray();
        this.shifts = knowledge.nextShifts();
        this.first = new int[knowledge.scenarios().size() * shifts.length + 1];
        int most = 0;
        for (int i = 0; i < first.length - 1; i++) {
            double weight = knowledge.scenarios().get(i / shifts.length).weight()
                    * knowledge.nextShiftWeights()[i % shifts.length];
            int plates = FEWEST + (int) (PLATES * weight);
            first[i + 1] = first[i] + plates;
            most = Math.max(most, plates);
        }
        this.place = new double[knowledge.spots()][most];
    }

    /**
     * Multiplies chances, one for each scenario and each error of the next plate, by the share of plates with all pairs
     * apart; where a chance is 0 it stays so.
     *
     * @param chances of all spots to read inside [1]
     * @param climb what the eluent does
     * @param weights for each spot by what each mark of η counts, such as the chance to read inside
     */
    void multiply(double[] chances, Climb climb, double[][] weights) {
        List<Knowledge.Scenario> scenarios = knowledge.scenarios();
        MarkSpread[] spreads = new MarkSpread[knowledge.spots()];
        for (int scenario = 0; scenario < scenarios.size(); scenario++) {
            int from = scenario * shifts.length;
            if (Arrays.stream(chances, from, from + shifts.length).allMatch(chance -> chance == 0)) {
                continue;
            }
            for (int spot : spots) {
                spreads[spot] = MarkSpread.of(scenarios.get(scenario).spots().get(spot), climb);
            }
            for (int i = from; i < from + shifts.length; i++) {
                if (chances[i] > 0) {
                    chances[i] *= share(i, spreads, weights);
                }
            }
        }
    }

    private double share(int combination, MarkSpread[] spreads, double[][] weights) {
        int plates = first[combination + 1] - first[combination];
        for (int spot : spots) {
            spreads[spot].draw(
                    place[spot],
                    plates,
                    first[combination],
                    irrational[spot],
                    (int) Math.rint(shifts[combination % shifts.length] * LogitScale.PER_UNIT),
                    weights[spot],
                    rf);
        }
        double apart = 0;
        for (int plate = 0; plate < plates; plate++) {
            double all = 1;
            for (SpotPair pair : parting.pairs()) {
                all *= apart(Math.abs(place[pair.one()][plate] - place[pair.other()][plate]));
            }
            apart += all;
        }
        return apart / plates;
    }

    /** How far a distance in Rf counts as apart: 0 well below the limit, 1 well above. */
    private static double apart(double distance) {
        return Math.max(0, Math.min(1, 0.5 + (distance - Parting.LEAST_RF) / (2 * SOFT)));
    }
}
