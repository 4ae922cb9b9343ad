package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The error of the next plate")
class NextPlateErrorTest {
    private static Knowledge knowledge(Setting setting) {
        return Plates.BUILT_IN.learn(Plates.ACETATE, setting, List.of("A"), List.of());
    }

    // Own algebra: the moments of a standard normal variable are 1, 0, 1, 0, 3, 0, 15, 0, 105, 0.
    // Setting: 0.035 and 0.06 in Rf midway are 0.14 and 0.24 in eta, whose slope there is 1/4.
    @ParameterizedTest
    @CsvSource({"BENCH, 0.14", "CLASS, 0.24"})
    void isSummedExactlyForEveryPolynomialUpToDegreeNine(Setting setting, double deviation) {
        double[] moments = {1, 0, 1, 0, 3, 0, 15, 0, 105, 0};
        double[] shifts = knowledge(setting).nextShifts();
        double[] weights = knowledge(setting).nextShiftWeights();
        for (int degree = 0; degree < moments.length; degree++) {
            double sum = 0;
            for (int i = 0; i < shifts.length; i++) {
                sum += weights[i] * Math.pow(shifts[i] / deviation, degree);
            }
            assertEquals(moments[degree], sum, 1e-9, "degree " + degree);
        }
    }

    @Test
    void theAutomatedLaboratoryHasNone() {
        assertArrayEquals(new double[] {0}, knowledge(Setting.AUTOMATED).nextShifts());
        assertArrayEquals(new double[] {1}, knowledge(Setting.AUTOMATED).nextShiftWeights());
    }

    @Test
    void whatIsAskedOfThePointsLeavesThemAsTheyAre() {
        knowledge(Setting.BENCH).nextShiftWeights()[0] = 7;
        assertEquals(
                1,
                java.util.Arrays.stream(knowledge(Setting.BENCH).nextShiftWeights())
                        .sum(),
                1e-9);
    }

    // Own algebra: scenarios are weighed possibilities.
    @Test
    void theScenariosOfThePastSumToOne() {
        Knowledge knowledge = Plates.BUILT_IN.learn(
                Plates.ACETATE,
                Setting.BENCH,
                List.of("A", "B"),
                List.of(Plates.run(Plates.ACETATE, 10, Map.of("A", 0.2, "B", 0.4))));
        double weight = 0;
        for (Knowledge.Scenario scenario : knowledge.scenarios()) {
            weight += scenario.weight();
            for (TraitCloud cloud : scenario.spots()) {
                double points = 0;
                for (int i = 0; i < cloud.size(); i++) {
                    points += cloud.weight(i);
                }
                assertEquals(1, points, 1e-9);
            }
        }
        assertEquals(1, weight, 1e-6);
    }
}
