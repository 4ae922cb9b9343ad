package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import midplate.catalogue.PlatePair;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Simulated compounds on the packed curve, whose plates and columns come from formulas written here and not from the program. */
@DisplayName("The law of columns, fitted to simulated ones")
class SimulatedColumnsTest {
    private static final double OUTSIDE = 9;
    private static final double VOID = 1.5;
    private static final double HOLD = 4;
    private static final double STEEPNESS = 1.2;
    private static final double DRIFT = 0.3;
    private static final double SPOT = 0.25;
    private static final double SCATTER = 0.06;
    private static final int COMPOUNDS = 40;

    @TempDir
    Path folder;

    private final Random random = new Random(7);

    /** Rf and columns of every compound at the measured shares at which all compounds climb alike. */
    private List<ColumnCompound> simulated() throws IOException {
        PlatePair pair = Plates.CURVES.pairs().get(0);
        TableText plates = new TableText();
        StringBuilder columns = new StringBuilder(
                "cas,name,smiles,cartridge,petroleum_ether_parts,ethyl_acetate_parts,flow_ml_min,load_ul,start_ml,end_ml\n");
        for (int i = 0; i < COMPOUNDS; i++) {
            double c = -2.5 + 3.0 * i / COMPOUNDS;
            double s = 0.9 + 0.2 * random.nextDouble();
            double delta = SPOT * random.nextGaussian();
            for (int j = 0; j < pair.percentStrong().size(); j++) {
                double percent = pair.percentStrong().get(j);
                if (percent < 10) {
                    continue;
                }
                double eta = c + s * pair.strength().get(j);
                double rf = 1.025 / (1 + Math.exp(-eta)) - 0.0125 + 0.01 * random.nextGaussian();
                plates.row(i, "sim" + i, PairName.HEXANE_ETHYL_ACETATE, percent, Math.max(0, Math.min(1, rf)));
                for (int grams : new int[] {4, 25}) {
                    double held =
                            HOLD * grams * Math.exp(-STEEPNESS * eta - DRIFT * (Math.log(1 + percent) - 2) + delta);
                    double middle = (OUTSIDE + VOID * grams + held) * Math.exp(SCATTER * random.nextGaussian());
                    columns.append(String.format(
                            Locale.ROOT,
                            ",,sim%d,%dg,%.4f,%.4f,10,100,%.4f,%.4f%n",
                            i,
                            grams,
                            100 - percent,
                            percent,
                            0.8 * middle,
                            1.2 * middle));
                }
            }
        }
        Files.writeString(folder.resolve("column.csv"), columns.toString().replace("\r", ""));
        return ColumnCompound.joined(
                plates.read(folder), ColumnMeasurements.read(folder).orElseThrow(), pair);
    }

    @Test
    void comesBackAsItWasPutIn() throws IOException {
        List<ColumnCompound> compounds = simulated();
        assertEquals(COMPOUNDS, compounds.size());
        ColumnLikelihood law =
                ColumnFit.of(compounds, EnumSet.allOf(ColumnTerm.class)).law();
        assertEquals(OUTSIDE, law.outsideMl(), 0.8);
        assertEquals(VOID, law.voidMlPerGram(), 0.15);
        // h, γ and λ lean on each other: what is held at ratios that were run is what they foretell
        for (double percent : new double[] {16.67, 66.67}) {
            for (double eta : new double[] {-1, 0.5}) {
                double place = Math.log(1 + percent) - 2;
                double put = HOLD * Math.exp(-STEEPNESS * eta - DRIFT * place);
                double found = law.holdMlPerGram() * Math.exp(-law.steepness() * eta - law.drift() * place);
                assertEquals(1, found / put, 0.15, percent + " %, η " + eta);
            }
        }
        assertEquals(STEEPNESS, law.steepness(), 0.15);
        assertEquals(DRIFT, law.drift(), 0.2);
        assertEquals(SPOT, law.spotSpread(), 0.1);
        assertTrue(law.scatter() > 0.7 * SCATTER && law.scatter() < 2 * SCATTER, "σ " + law.scatter());
    }

    @Test
    void findsTheTermsThatAreThere() throws IOException {
        List<ColumnCompound> compounds = simulated();
        Set<ColumnTerm> found =
                ColumnFit.chosen(compounds, EnumSet.allOf(ColumnTerm.class)).terms();
        assertEquals(EnumSet.of(ColumnTerm.STEEPNESS, ColumnTerm.DRIFT, ColumnTerm.SPOT), found);
    }
}
