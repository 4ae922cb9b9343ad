package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Beside the program's full sum over what is known of a spot. */
@DisplayName("A spot as few points")
class SpotParticlesTest {
    private static final double[] NEXT = {10, 25, 50};
    private static final int POINTS = 512;

    private static void hasTheChancesOfTheFullSum(Outlook outlook, double within) {
        Knowledge knowledge = outlook.knowledge();
        WindowChances window = WindowChances.of(
                new WindowChances.Window(Plates.ACETATE, Setting.AUTOMATED, 0.2, 0.8), knowledge.model());
        SpotParticles spot = new SpotParticles(knowledge, 0, window, NEXT, new ReadingLikelihoods(knowledge));
        double[] sums = new double[NEXT.length];
        double all = spot.addInside(spot.weighed(new double[0], new double[0]), sums);
        for (int p = 0; p < NEXT.length; p++) {
            assertEquals(outlook.chance(NEXT[p], List.of(0)), sums[p] / all, within, "at " + NEXT[p]);
        }
    }

    @Test
    void whereSomeWereTakenKeepsItsChances() {
        Outlook outlook = Plates.outlook(Plates.ACETATE, Setting.AUTOMATED, List.of("A"), List.of());
        assertTrue(outlook.knowledge().cloud(0).size() > POINTS);
        hasTheChancesOfTheFullSum(outlook, 0.01);
    }

    @Test
    void whereAllWereTakenKeepsItsChances() {
        List<PlateRun> runs = List.of(
                Plates.run(Plates.ACETATE, 2, Map.of("A", 0.12)),
                Plates.run(Plates.ACETATE, 5, Map.of("A", 0.3)),
                Plates.run(Plates.ACETATE, 10, Map.of("A", 0.5)),
                Plates.run(Plates.ACETATE, 25, Map.of("A", 0.79)));
        Outlook outlook = Plates.outlook(Plates.ACETATE, Setting.AUTOMATED, List.of("A"), runs);
        int size = outlook.knowledge().cloud(0).size();
        assertTrue(size > 1 && size <= POINTS, size + " points");
        hasTheChancesOfTheFullSum(outlook, 0.002);
    }
}
