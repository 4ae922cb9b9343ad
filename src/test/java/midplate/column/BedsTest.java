package midplate.column;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import midplate.words.English;
import midplate.words.Refusal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Beds and what they carry")
class BedsTest {
    private static final double APART = Double.POSITIVE_INFINITY;

    @Test
    void aCartridgeThatDoesNotExistIsRefusedWithThoseThatDo() {
        for (double grams : new double[] {13, 0, -4, Double.NaN, 400}) {
            Refusal refusal = assertThrows(Refusal.class, () -> new Cartridge(grams));
            assertEquals("column.bed.cartridgeGrams", refusal.field());
            assertEquals("4, 8, 12, 25, 40, 80, 120", English.said(refusal.allowed()));
        }
    }

    @Test
    void sizesThatWereMeasuredAreToldFromThoseBetweenAndBeyond() {
        assertEquals(
                List.of(
                        BedBasis.MEASURED,
                        BedBasis.MEASURED,
                        BedBasis.BETWEEN,
                        BedBasis.MEASURED,
                        BedBasis.MEASURED,
                        BedBasis.EXTRAPOLATED,
                        BedBasis.EXTRAPOLATED),
                Cartridge.SIZES.stream()
                        .map(size -> new Cartridge(size).basis())
                        .toList());
        assertEquals(BedBasis.PUBLISHED, GlassColumn.of(20).basis());
    }

    @Test
    void aGlassColumnOutsideTheTableIsRefused() {
        for (double diameter : new double[] {9, 51, Double.NaN}) {
            assertEquals(
                    "column.bed.diameterMm",
                    assertThrows(Refusal.class, () -> GlassColumn.of(diameter)).field());
        }
        for (double height : new double[] {99, 251, Double.NaN}) {
            assertEquals(
                    "column.bed.bedMm",
                    assertThrows(Refusal.class, () -> new GlassColumn(20, height))
                            .field());
        }
    }

    /** Bed of 15 cm: 11.8, 47.1, 106, 188, 295 ml (own algebra on the published table), half a gram of silica in each. */
    @Test
    void silicaOfAGlassColumnIsHalfAGramAMillilitre() {
        double[] ml = {11.8, 47.1, 106, 188, 295};
        for (int i = 0; i < ml.length; i++) {
            assertEquals(ml[i] / 2, GlassColumn.of(10 * (i + 1)).silicaGrams(), 0.005 * ml[i]);
        }
    }

    /** Still, Kahn, Mitra 1978, Table I, the row of 40 mm with its 600 mg. */
    @Test
    void glassColumnsCarryWhatIsPrinted() {
        double[] wide = {100, 400, 900, 1600, 2500};
        double[] narrow = {40, 160, 360, 600, 1000};
        for (int i = 0; i < wide.length; i++) {
            assertEquals(wide[i], BedLoad.mostMg(GlassColumn.of(10 * (i + 1)), 0.2), 1e-9);
            assertEquals(narrow[i], BedLoad.mostMg(GlassColumn.of(10 * (i + 1)), 0.1), 1e-9);
            assertEquals(
                    (narrow[i] + wide[i]) / 2, BedLoad.mostMg(GlassColumn.of(10 * (i + 1)), 0.15), 1e-9, "half-way");
        }
    }

    @Test
    void betweenRowsTheLoadGoesWithTheSquareOfTheDiameterAndNeverFalls() {
        assertEquals(625, BedLoad.mostMg(GlassColumn.of(25), 0.3), 1e-9);
        assertEquals(250, BedLoad.mostMg(GlassColumn.of(25), 0.1), 1e-9);
        double before = 0;
        for (double diameter = 10; diameter <= 50; diameter += 0.5) {
            double now = BedLoad.mostMg(GlassColumn.of(diameter), 0.15);
            assertTrue(now >= before, diameter + " mm");
            before = now;
        }
    }

    @Test
    void aHigherBedCarriesInProportion() {
        assertEquals(400 * 200 / 150.0, BedLoad.mostMg(new GlassColumn(20, 200), 0.2), 1e-9);
    }

    /** 1.7 % and 0.68 % of the silica: 1.00 and 0.40 mg/mm² over π/4 · 150 mm · 0.5 g/ml. */
    @Test
    void cartridgesCarryTheSameShareOfTheirSilica() {
        assertEquals(0.01698, BedLoad.mostMg(new Cartridge(40), APART) / 40_000, 5e-6);
        assertEquals(0.00679, BedLoad.mostMg(new Cartridge(40), 0.1) / 40_000, 5e-6);
    }

    @Test
    void closerThanTheTableTheLoadFallsInStepDownToWhatPlatesTell() {
        Cartridge bed = new Cartridge(40);
        double narrow = BedLoad.mostMg(bed, 0.1);
        assertEquals(narrow / 2, BedLoad.mostMg(bed, 0.05), 1e-9);
        assertEquals(0.3 * narrow, BedLoad.mostMg(bed, 0), 1e-9);
        assertEquals(0.3 * narrow, BedLoad.mostMg(bed, 0.02), 1e-9);
    }

    @Test
    void moreMassNeedsALargerBedAndCloserSpotsToo() {
        double before = 0;
        for (double mass : new double[] {50, 100, 200, 400, 650, 1300, 2000, 2500}) {
            double grams = BedLoad.smallest(mass, APART).orElseThrow().silicaGrams();
            assertTrue(grams > before, mass + " mg");
            before = grams;
        }
        assertEquals(Optional.of(new Cartridge(12)), BedLoad.smallest(200, 0.3));
        assertEquals(Optional.of(new Cartridge(40)), BedLoad.smallest(200, 0.1));
        assertEquals(Optional.empty(), BedLoad.smallest(2501, APART));
    }

    @Test
    void cartridgesRunAsTheyWereMeasuredAndGlassByFallingHead() {
        double[][] flows = {{4, 10}, {8, 10}, {25, 15}, {40, 30}};
        for (double[] each : flows) {
            assertEquals(each[1], BedHabits.flowMlMin(new Cartridge(each[0])), 0);
        }
        assertEquals(11, BedHabits.flowMlMin(new Cartridge(12)), 0);
        // Twice the silica in a like bed: 30 · 2^(2/3) = 47.6, three times: 62.4.
        assertEquals(48, BedHabits.flowMlMin(new Cartridge(80)), 0);
        assertEquals(62, BedHabits.flowMlMin(new Cartridge(120)), 0);
        // π/4 · (2 cm)² · 5 cm/min = 15.7 ml/min.
        assertEquals(15.7, BedHabits.flowMlMin(GlassColumn.of(20)), 0.05);
    }

    @Test
    void fractionsCutTheBandWantedIntoSixInUsualTubes() {
        double[] printed = {5, 10, 20, 30, 50};
        for (int i = 0; i < printed.length; i++) {
            assertEquals(printed[i], BedHabits.fractionMl(GlassColumn.of(10 * (i + 1)), 400, 10), 0);
        }
        assertEquals(6, BedHabits.fractionMl(GlassColumn.of(20), 40, 10), 0);
        // the largest tubes beside 4, 12, 25 to 40 and 80 to 120 g: common practice, no source
        double[][] largest = {{4, 8}, {12, 15}, {25, 25}, {40, 25}, {80, 50}, {120, 50}};
        for (double[] each : largest) {
            assertEquals(each[1], BedHabits.fractionMl(new Cartridge(each[0]), 1000, 500), 0);
        }
        assertEquals(5, BedHabits.fractionMl(new Cartridge(12), 35, 150), 0);
        // no more than 80 tubes
        assertEquals(10, BedHabits.fractionMl(new Cartridge(12), 16, 800), 0);
    }

    /** 2.5 times the sample in silica, of which eluent fills 0.8 of the volume at 0.5 g/ml: 0.1 g · 2.5 · 1.6 ml/g. */
    @Test
    void aDryLoadCountsWithTheVoidOfItsSilica() {
        assertEquals(0.4, BedHabits.dryMl(100), 1e-9);
    }

    @Test
    void aWetLoadStaysWithinATenthOfTheVoid() {
        assertEquals(0.4, BedHabits.wetMl(200, 19), 1e-9);
        assertEquals(1.9, BedHabits.wetMl(2000, 19), 1e-9);
        assertEquals(0.1, BedHabits.wetMl(1, 19), 1e-9);
    }
}
