package midplate.inference;

import static midplate.inference.PairName.DICHLOROMETHANE_METHANOL;
import static midplate.inference.PairName.HEXANE_DIETHYL_ETHER;
import static midplate.inference.PairName.HEXANE_ETHYL_ACETATE;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Open measurements, on invented tables")
class OpenMeasurementsTest {
    @TempDir
    Path folder;

    @Test
    void aTableHasASeriesARowAndAPercentageAColumn() throws IOException {
        ReadingTable table = new TableText()
                .row(12, "CO", HEXANE_ETHYL_ACETATE, 50, 0.5)
                .row(3, "CC", HEXANE_ETHYL_ACETATE, 4.76, 0.1)
                .row(3, "CC", HEXANE_ETHYL_ACETATE, 50, 0.6)
                .read(folder)
                .table(HEXANE_ETHYL_ACETATE);
        assertEquals(List.of(new Series(3, "CC"), new Series(12, "CO")), table.series());
        assertArrayEquals(new double[] {4.76, 50}, table.percents());
        assertArrayEquals(new double[] {0.1, 0.6}, table.row(0));
        assertArrayEquals(new double[] {Double.NaN, 0.5}, table.row(1));
        assertEquals(OptionalInt.of(1), table.rowOf(new Series(12, "CO")));
        assertEquals(OptionalInt.empty(), table.rowOf(new Series(12, "CC")));
    }

    @Test
    void whatStandsTwiceInASeriesIsAveraged() throws IOException {
        ReadingTable table = new TableText()
                .row(1, "CC", DICHLOROMETHANE_METHANOL, 2, 0.30)
                .row(1, "CC", DICHLOROMETHANE_METHANOL, 2, 0.40)
                .read(folder)
                .table(DICHLOROMETHANE_METHANOL);
        assertEquals(0.35, table.rf(0, 0), 1e-12);
    }

    @Test
    void hexaneAloneBelongsToBothPairsAndCanBeLeftOut() throws IOException {
        OpenMeasurements all = new TableText()
                .row(1, "CC", HEXANE_ETHYL_ACETATE, 0, 0.1)
                .row(1, "CC", HEXANE_DIETHYL_ETHER, 50, 0.7)
                .row(2, "CO", HEXANE_ETHYL_ACETATE, 0, 0.2)
                .read(folder);
        ReadingTable ether = all.table(HEXANE_DIETHYL_ETHER);
        assertArrayEquals(new double[] {0, 50}, ether.percents());
        assertEquals(2, ether.series().size());
        assertArrayEquals(new double[] {50}, ether.above(0).percents());
        assertEquals(List.of(new Series(1, "CC")), ether.above(0).series());
        assertEquals(List.of(), ether.above(0).below(50).series());
        assertEquals(2, all.table(HEXANE_ETHYL_ACETATE).series().size());
        assertEquals(0, all.table(DICHLOROMETHANE_METHANOL).series().size());
    }

    // Own algebra: 0.07·100 and 0.57·100 are not whole in binary numbers; two decimals are.
    @Test
    void percentagesAreRoundedToTwoDecimals() {
        assertEquals(
                7,
                HEXANE_ETHYL_ACETATE
                        .percentIn(List.of(0.93, 0.07, 0.0, 0.0, 0.0))
                        .orElseThrow(),
                0);
        assertEquals(
                57,
                DICHLOROMETHANE_METHANOL
                        .percentIn(List.of(0.0, 0.0, 0.0, 0.43, 0.57))
                        .orElseThrow(),
                0);
        assertEquals(
                66.67,
                HEXANE_ETHYL_ACETATE
                        .percentIn(List.of(0.3333, 0.66667, 0.0, 0.0, 0.0))
                        .orElseThrow(),
                0);
        assertTrue(HEXANE_DIETHYL_ETHER
                .percentIn(List.of(0.93, 0.07, 0.0, 0.0, 0.0))
                .isEmpty());
    }

    @Test
    void anRfJustOutsideIsPutAtTheEnd() throws IOException {
        ReadingTable table = new TableText()
                .row(1, "CC", HEXANE_ETHYL_ACETATE, 0, -0.01)
                .row(1, "CC", HEXANE_ETHYL_ACETATE, 100, 1.007)
                .read(folder)
                .table(HEXANE_ETHYL_ACETATE);
        assertArrayEquals(new double[] {0, 1}, table.row(0));
    }

    // Own algebra: the differences of CC are 0.2 and 0.12, mean 0.16, above 0.15; those of CO 0.2 and 0.08, mean 0.14.
    @Test
    void structuresThatContradictThemselvesAreLeftOutAndListed() throws IOException {
        OpenMeasurements all = new TableText()
                .row(1, "CC", HEXANE_ETHYL_ACETATE, 25, 0.3)
                .row(1, "CC", HEXANE_ETHYL_ACETATE, 50, 0.6)
                .row(2, "CC", HEXANE_ETHYL_ACETATE, 25, 0.5)
                .row(2, "CC", HEXANE_ETHYL_ACETATE, 50, 0.72)
                .row(3, "CO", HEXANE_ETHYL_ACETATE, 25, 0.3)
                .row(3, "CO", HEXANE_ETHYL_ACETATE, 50, 0.6)
                .row(4, "CO", HEXANE_ETHYL_ACETATE, 25, 0.5)
                .row(4, "CO", HEXANE_ETHYL_ACETATE, 50, 0.68)
                .read(folder);
        assertEquals(1, all.contradictions().size());
        assertEquals("CC", all.contradictions().get(0).smiles());
        assertEquals(0.16, all.contradictions().get(0).meanSpread(), 1e-12);
        assertEquals(List.of("CO"), all.structures());
        assertEquals(8, all.rowsRead());
        assertEquals(4, all.rows().size());
    }

    @Test
    void repeatsAreListedByStructureAndEluent() throws IOException {
        OpenMeasurements all = new TableText()
                .row(9, "CO", HEXANE_ETHYL_ACETATE, 50, 0.55)
                .row(4, "CO", HEXANE_ETHYL_ACETATE, 50, 0.60)
                .row(4, "CO", HEXANE_ETHYL_ACETATE, 25, 0.40)
                .read(folder);
        assertEquals(1, all.repeats().size());
        Repeat repeat = all.repeats().get(0);
        assertEquals("CO", repeat.smiles());
        assertEquals(List.of(0.60, 0.55), repeat.rfs(), "in the order of their series");
        assertEquals(0.05, repeat.spread(), 1e-12);
        assertEquals(50, HEXANE_ETHYL_ACETATE.percentIn(repeat.fractions()).orElseThrow(), 0);
        assertTrue(DICHLOROMETHANE_METHANOL.percentIn(repeat.fractions()).isEmpty());
    }

    // Own: the bytes of the file hashed by another route.
    @Test
    void theDigestIsThatOfTheFile() throws Exception {
        OpenMeasurements all =
                new TableText().row(1, "CC", HEXANE_ETHYL_ACETATE, 25, 0.3).read(folder);
        byte[] bytes = Files.readAllBytes(folder.resolve("tlc.csv"));
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
        assertEquals(String.format("%064x", new BigInteger(1, digest)), all.sha256());
    }

    @Test
    void aFoldSplitsStructuresAndKeepsWhatWasLeftOutListed() throws IOException {
        OpenMeasurements all = new TableText()
                .row(1, "c1ccccc1", HEXANE_ETHYL_ACETATE, 25, 0.3)
                .row(2, "CCO", HEXANE_ETHYL_ACETATE, 25, 0.3)
                .row(3, "COc1ccccc1", HEXANE_ETHYL_ACETATE, 25, 0.3)
                .row(4, "CCO", HEXANE_ETHYL_ACETATE, 50, 0.3)
                .read(folder);
        Fold fold = Fold.of("4/5");
        OpenMeasurements inside = all.select(fold, Fold.Part.INSIDE);
        OpenMeasurements outside = all.select(fold, Fold.Part.OUTSIDE);
        assertEquals(List.of("CCO", "c1ccccc1"), inside.structures());
        assertEquals(List.of("COc1ccccc1"), outside.structures());
        assertEquals(all.rows().size(), inside.rows().size() + outside.rows().size());
        assertEquals(all.sha256(), outside.sha256());
        assertFalse(inside.series().isEmpty());
    }
}
