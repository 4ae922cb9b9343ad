package midplate.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import midplate.plate.Limit;
import org.junit.jupiter.api.Test;

/** Plates of unknowns: their scatter is that of a class, and what lies together is seen as one. */
class ExercisePlateTest {
    private static final ExerciseCode CODE =
            new ExerciseCode(ExerciseLevel.GROUPS_TOLD, ExercisePair.HEXANE_ETHYL_ACETATE, 1);
    private static final Exercise EXERCISE = Exercises.of(CODE);

    @Test
    void theSamePlateComesAgainAndEachOtherOneHasItsOwnChance() {
        ExercisePlate plate = ExercisePlate.of(EXERCISE, 3, 12.5);
        assertEquals(plate, ExercisePlate.of(Exercises.of(CODE), 3, 12.5));
        assertEquals(plate, ExercisePlate.of(EXERCISE, 3, 12.5004)); // the same to a hundredth of a per cent
        assertNotEquals(plate.lanes(), ExercisePlate.of(EXERCISE, 4, 12.5).lanes());
    }

    // shared by the spots of a plate in a class: 0.06 in Rf at the middle, 4·0.06 = 0.24 in ln(Rf/(1 − Rf)); between
    // plates 0.02 to
    // 0.05, between laboratories 0.05 to 0.10 (reproducibility as in Geiss 1987, from memory). What two spots share is
    // their covariance, which the error of each reading does not move; bound: four standard errors of a covariance.
    @Test
    void spotsOfAPlateShareTheErrorOfAClass() {
        int plates = 4000;
        double percent = 14;
        List<double[]> logits = new ArrayList<>();
        for (int number = 1; number <= plates; number++) {
            List<ExercisePlate.Spot> own = new ArrayList<>(
                    ExercisePlate.of(EXERCISE, number, percent).own().values());
            logits.add(own.stream().mapToDouble(ExercisePlateTest::logit).toArray());
        }
        for (int one = 0; one < 3; one++) {
            for (int other = 0; other < one; other++) {
                double covariance = covariance(logits, one, other);
                double error = Math.sqrt(
                        (covariance(logits, one, one) * covariance(logits, other, other) + covariance * covariance)
                                / plates);
                assertEquals(0.24 * 0.24, covariance, 4 * error, one + " and " + other);
                assertTrue(4 * error < 0.02, "the bound says something");
            }
        }
    }

    /** ln(Rf/(1 − Rf)) of the height as read; a spot on a line is held half a millimetre off it. */
    private static double logit(ExercisePlate.Spot spot) {
        double rf = Math.max(0.01, Math.min(0.99, spot.rf()));
        return Math.log(rf / (1 - rf));
    }

    private static double covariance(List<double[]> values, int one, int other) {
        double meanOne =
                values.stream().mapToDouble(each -> each[one]).average().orElseThrow();
        double meanOther =
                values.stream().mapToDouble(each -> each[other]).average().orElseThrow();
        return values.stream()
                        .mapToDouble(each -> (each[one] - meanOne) * (each[other] - meanOther))
                        .sum()
                / (values.size() - 1);
    }

    // both errors are symmetric, so half of all plates read above the truth; bound: four standard errors of a share of
    // plates
    @Test
    void halfOfAllPlatesReadAboveTheTruth() {
        int plates = 4000;
        List<Double> truth = EXERCISE.truth().at(14);
        for (int spot = 0; spot < truth.size(); spot++) {
            int above = 0;
            for (int number = 1; number <= plates; number++) {
                ExercisePlate plate = ExercisePlate.of(EXERCISE, number, 14);
                double mm = plate.lanes().get(spot).get(0).mm();
                above += (mm - 10) / (plate.frontMm() - 10) > truth.get(spot) ? 1 : 0;
            }
            assertEquals(0.5, (double) above / plates, 4 * Math.sqrt(0.25 / plates) + 0.01, "spot " + spot);
        }
    }

    @Test
    void inTheLaneOfAllEachUnknownLiesInOneSpotAndSpotsDoNotTouch() {
        int merged = 0;
        for (ExerciseCode code : Exercises.codes(3)) {
            Exercise exercise = Exercises.of(code);
            for (double percent : new double[] {0, 2, 10, 30, 100}) {
                ExercisePlate plate = ExercisePlate.of(exercise, 1, percent);
                List<ExercisePlate.Spot> all =
                        plate.lanes().get(exercise.names().size());
                List<String> names = new ArrayList<>();
                all.forEach(spot -> names.addAll(spot.names()));
                assertEquals(exercise.names().size(), names.size());
                assertEquals(new TreeSet<>(exercise.names()), new TreeSet<>(names));
                for (int i = 1; i < all.size(); i++) {
                    double room = all.get(i).mm() - all.get(i - 1).mm();
                    double halves = (all.get(i).sizeMm() + all.get(i - 1).sizeMm()) / 2;
                    assertTrue(room >= halves - 0.51, code.text()); // centres are read to half a millimetre
                }
                merged += all.size() < names.size() ? 1 : 0;
            }
        }
        assertTrue(merged > 10, "some lie together: " + merged);
    }

    @Test
    void heightsAreReadToHalfAMillimetreAndSpotsOnLinesAreTold() {
        int onLines = 0;
        for (ExerciseCode code : Exercises.codes(3)) {
            Exercise exercise = Exercises.of(code);
            for (double percent : new double[] {0, 10, 100}) {
                ExercisePlate plate = ExercisePlate.of(exercise, 2, percent);
                for (ExercisePlate.Spot spot : plate.own().values()) {
                    assertEquals(Math.rint(2 * spot.mm()), 2 * spot.mm(), 0);
                    assertTrue(spot.mm() >= 10 && spot.mm() <= plate.frontMm());
                    double rf = (spot.mm() - 10) / (plate.frontMm() - 10);
                    assertEquals(rf, spot.rf(), 0.0051);
                    // a spot of 2 mm is on a line that it touches
                    assertEquals(spot.mm() - 10 <= 1, spot.limit() == Limit.AT_START);
                    assertEquals(plate.frontMm() - spot.mm() <= 1, spot.limit() == Limit.AT_FRONT);
                    onLines += spot.limit() == Limit.NONE ? 0 : 1;
                }
            }
        }
        assertTrue(onLines > 5, "some sit on lines: " + onLines);
    }
}
