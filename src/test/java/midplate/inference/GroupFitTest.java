package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import midplate.catalogue.Basis;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.Source;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What the parts of a molecule add")
class GroupFitTest {
    private static final Source SOURCE = new Source("Invented2000", "invented", "2000", Optional.empty());

    private static FunctionalGroup group(String id, FunctionalGroup.Kind kind, double energy, Basis basis) {
        return new FunctionalGroup(id, kind, energy, basis, "", SOURCE, List.of(), "invented", "C");
    }

    /** One size, three groups with a published energy, one by analogy that is wrong, one that hardly occurs. */
    private static final FunctionalGroups GROUPS = new FunctionalGroups(List.of(
            group("carbon", FunctionalGroup.Kind.SIZE, 0, Basis.OWN),
            group("weak", FunctionalGroup.Kind.GROUP, 1, Basis.MEMORY),
            group("middle", FunctionalGroup.Kind.GROUP, 4, Basis.MEMORY),
            group("strong", FunctionalGroup.Kind.GROUP, 8, Basis.MEMORY),
            group("guessed", FunctionalGroup.Kind.GROUP, 6, Basis.OWN),
            group("rare", FunctionalGroup.Kind.GROUP, 5, Basis.MEMORY)));

    private static final MoleculeParts PARTS = new MoleculeParts(GROUPS);
    /** Constant, carbon, the groups around −0.5 for each unit of energy but the guessed one, further groups. */
    private static final double[] TRUTH = {3, 0.15, -1, -1.4, -4.3, -1, -2.5, 1.2};

    private static final double NOISE = 0.3;

    private static double[][] rows(int count, Random random) {
        double[][] rows = new double[count][];
        for (int i = 0; i < count; i++) {
            double[] row = new double[PARTS.count()];
            row[0] = 1;
            row[1] = random.nextInt(8);
            for (int k = 2; k < 6; k++) {
                row[k] = random.nextInt(3) == 0 ? 1 + random.nextInt(2) : 0;
            }
            row[6] = i == 0 ? 1 : 0;
            row[7] = random.nextDouble() * 2;
            rows[i] = row;
        }
        return rows;
    }

    private static double[] traits(double[][] rows, Random random) {
        return Arrays.stream(rows)
                .mapToDouble(row -> {
                    double y = NOISE * random.nextGaussian();
                    for (int k = 0; k < row.length; k++) {
                        y += row[k] * TRUTH[k];
                    }
                    return y;
                })
                .toArray();
    }

    private static GroupFit.Fitted fitted(GroupFit.Energies energies, long seed) {
        Random random = new Random(seed);
        double[][] rows = rows(150, random);
        return GroupFit.fit(PARTS, energies, rows, traits(rows, random), new double[150]);
    }

    // The truth is what the data were made with.
    @Test
    void whatTheDataWereMadeWithIsFoundWithinTheErrorsItSays() {
        int within = 0;
        int all = 0;
        for (long seed = 1; seed <= 5; seed++) {
            GroupFit.Fitted fitted = fitted(GroupFit.Energies.COUNT, seed);
            for (int k = 0; k < TRUTH.length; k++) {
                double error = Math.sqrt(fitted.covariance()[k][k]);
                within += Math.abs(fitted.effects()[k] - TRUTH[k]) < 2 * error ? 1 : 0;
                all++;
            }
            assertEquals(NOISE * NOISE, fitted.residual(), 0.4 * NOISE * NOISE);
            assertTrue(fitted.scale() > 0.35 && fitted.scale() < 0.65, "made with 0.5: " + fitted.scale());
        }
        assertTrue(within >= 0.85 * all, within + " of " + all + " within two standard errors");
    }

    @Test
    void aGroupThatHardlyOccursStaysNearItsEnergyWithAWideBand() {
        GroupFit.Fitted fitted = fitted(GroupFit.Energies.COUNT, 7);
        double rare = Math.sqrt(fitted.covariance()[6][6]);
        double often = Math.sqrt(fitted.covariance()[3][3]);
        assertTrue(rare > 2 * often, rare + " against " + often);
        assertEquals(-2.5, fitted.effects()[6], 3 * rare);
    }

    @Test
    void withoutEnergiesTheRareGroupIsKnownWorse() {
        double with = fitted(GroupFit.Energies.COUNT, 7).covariance()[6][6];
        double ridge = fitted(GroupFit.Energies.ALIKE, 7).covariance()[6][6];
        assertTrue(ridge > with, ridge + " against " + with);
    }

    // (XᵀX/σ² + P⁻¹)⁻¹ (Xᵀy/σ² + P⁻¹m) is the textbook form of the same answer (Bishop2006, eq. 3.50 and 3.51).
    @Test
    void theAnswerIsThatOfTheNormalEquations() {
        Random random = new Random(3);
        double[][] rows = rows(60, random);
        double[] y = traits(rows, random);
        GroupFit.Fitted fitted = GroupFit.fit(PARTS, GroupFit.Energies.ALIKE, rows, y, new double[60]);
        RealMatrix x = new Array2DRowRealMatrix(rows);
        double residual = fitted.residual();
        // the prior variance that belongs to what was found, from the trace of its own identity
        double ratio = ratio(x, fitted);
        RealMatrix precision = x.transpose().multiply(x).scalarMultiply(1 / residual);
        for (int k = 1; k < PARTS.count(); k++) {
            precision.addToEntry(k, k, 1 / ratio);
        }
        precision.addToEntry(0, 0, 1 / 100.0);
        RealMatrix covariance = new LUDecomposition(precision).getSolver().getInverse();
        double[] effects = covariance.operate(x.transpose()
                .operate(MatrixUtils.createRealVector(y).mapDivide(residual).toArray()));
        assertArrayEquals(effects, fitted.effects(), 0.02);
        for (int k = 0; k < effects.length; k++) {
            assertEquals(covariance.getEntry(k, k), fitted.covariance()[k][k], 0.03 * covariance.getEntry(k, k));
        }
    }

    /** Prior variance p of the parts: precision = XᵀX/σ² + 1/p, so p = 1/(precision − XᵀX/σ²). */
    private static double ratio(RealMatrix x, GroupFit.Fitted fitted) {
        RealMatrix precision = new LUDecomposition(new Array2DRowRealMatrix(fitted.covariance()))
                .getSolver()
                .getInverse();
        RealMatrix told = x.transpose().multiply(x).scalarMultiply(1 / fitted.residual());
        return 1 / precision.subtract(told).getEntry(3, 3);
    }
}
