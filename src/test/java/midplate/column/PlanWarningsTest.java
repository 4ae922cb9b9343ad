package midplate.column;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import midplate.chemistry.GroupCounts;
import midplate.words.English;
import midplate.words.Language;
import midplate.words.Message;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What a plan warns of, and what it refuses")
class PlanWarningsTest {
    private static final InventedLaw LAW = InventedLaw.at10(0.5, 0.25);

    private static List<String> warned(PlanAsked asked, BandLaw law) {
        return PlanAsked.codes(asked.plan(law).warnings());
    }

    private static PlanAsked pair(double massMg) {
        return PlanAsked.about("B", massMg, "A", "B");
    }

    private static Map<String, GroupCounts> groups(String spot, String... groups) {
        Map<String, Integer> counts = new java.util.HashMap<>();
        for (String group : groups) {
            counts.put(group, 1);
        }
        return Map.of(spot, new GroupCounts(counts, GroupCounts.Detail.GROUPS));
    }

    @Test
    void targetsThatRunTooLowOrTooHighAreTold() {
        Bed bed = new Cartridge(12);
        assertTrue(warned(pair(50).on(bed).pouring(Program.isocratic(2)), LAW).contains("rf-low"));
        assertTrue(warned(pair(50).on(bed).pouring(Program.isocratic(60)), LAW).contains("rf-high"));
        List<String> fine = warned(pair(50).on(bed).pouring(Program.isocratic(10)), LAW);
        assertFalse(fine.contains("rf-low") || fine.contains("rf-high"), fine.toString());
    }

    @Test
    void aLoadBeyondTheBedIsTold() {
        Message over = PlanAsked.find(pair(300).on(new Cartridge(4)).plan(LAW).warnings(), "load-over");
        assertEquals(5, over.args().get("runs"));
        assertFalse(warned(pair(60).on(new Cartridge(4)), LAW).contains("load-over"));
    }

    @Test
    void aLargeVolumeForAWetLoadIsToldAndNoneForADryOne() {
        Bed bed = new Cartridge(12);
        assertTrue(warned(pair(50).on(bed).loadedIn(3), LAW).contains("load-volume"));
        assertFalse(warned(pair(50).on(bed).loadedIn(1.9), LAW).contains("load-volume"));
        ColumnPlan dry = pair(50).on(bed).dry().plan(LAW);
        assertEquals(0, dry.load().loadMl(), 0);
        assertEquals(0.13, dry.load().loadSilicaGrams(), 0.01);
        assertTrue(PlanAsked.codes(dry.reasons()).contains("load-dry"));
        assertTrue(PlanAsked.codes(dry.cautions()).contains("caution-dust"));
    }

    @Test
    void littleOfALocalizingSolventIsTold() {
        assertTrue(warned(pair(50).pouring(Program.isocratic(3)), LAW).contains("little-strong"));
        assertFalse(warned(pair(50).pouring(Program.isocratic(10)), LAW).contains("little-strong"));
    }

    @Test
    void compoundsThatStreakOrMindAcidOrReactAreNamed() {
        ColumnPlan acid = pair(50).made(groups("A", "carboxylic-acid")).plan(LAW);
        assertEquals("A", English.value(PlanAsked.find(acid.warnings(), "streaks"), "spots"));
        ColumnPlan acetal = pair(50).made(groups("B", "acetal", "ester")).plan(LAW);
        assertEquals("B", English.value(PlanAsked.find(acetal.warnings(), "acid-sensitive"), "spots"));
        assertTrue(warned(pair(50).made(groups("B", "acyl-halide")), LAW).contains("reacts"));
        List<String> ester = warned(pair(50).made(groups("B", "ester")), LAW);
        assertFalse(ester.contains("acid-sensitive") || ester.contains("streaks"), ester.toString());
    }

    @Test
    void anotherPairIsNamedWhereItPartsTheTwoClearlyMoreOften() {
        InventedLaw close = InventedLaw.at10(0.26, 0.25);
        ColumnPlan plan = pair(50).plan(
                        close,
                        List.of(
                                PlanAsked.other("toluene", "acetone", 0.2),
                                PlanAsked.other("hexane", "dichloromethane", 0.6)));
        Message named = PlanAsked.find(plan.warnings(), "other-pair");
        assertEquals("dichloromethane", English.value(named, "strong"));
        assertTrue(English.said(named).contains("about 60 of 100")
                && English.said(named).contains("about 10 of 100"));
        List<String> little = PlanAsked.codes(pair(50).plan(close, List.of(PlanAsked.other("toluene", "acetone", 0.2)))
                .warnings());
        assertTrue(little.contains("try-other") && !little.contains("other-pair"), little.toString());
        List<String> good = PlanAsked.codes(pair(50).plan(LAW, List.of(PlanAsked.other("toluene", "acetone", 0.9)))
                .warnings());
        assertFalse(good.contains("other-pair"), good.toString());
    }

    @Test
    void cautionsPutTheSheetFirstAndFitTheBed() {
        ColumnPlan cartridge = pair(50).plan(LAW);
        ColumnPlan glass = pair(50).on(GlassColumn.of(20)).plan(LAW);
        assertEquals("caution-sheet-first", cartridge.cautions().get(0).code());
        assertTrue(PlanAsked.codes(cartridge.cautions()).containsAll(List.of("caution-solvent", "caution-cartridge")));
        assertTrue(PlanAsked.codes(glass.cautions()).containsAll(List.of("caution-glass", "caution-dust")));
        assertFalse(PlanAsked.codes(glass.cautions()).contains("caution-peroxides"));
    }

    /** Over the warnings stands what groups say; that silica is acid at all is a caution. */
    @Test
    void thatACompoundMayMindAcidIsACautionUnlessItsGroupsAreKnown() {
        assertFalse(warned(pair(50), LAW).contains("acid-unknown"));
        assertTrue(PlanAsked.codes(pair(50).plan(LAW).cautions()).contains("acid-unknown"));
        ColumnPlan ester = pair(50).made(groups("B", "ester")).plan(LAW);
        assertFalse(PlanAsked.codes(ester.cautions()).contains("acid-unknown"));
    }

    /** H373 and the caution on nerves of hexane, H225 of ethyl acetate: the catalogue's rows. */
    @Test
    void cautionsSayWhatTheLabelsOfTheSolventsSayAndWhatToWatch() {
        List<Message> cautions = pair(50).plan(LAW).cautions();
        List<String> labels = cautions.stream()
                .filter(message -> message.code().equals("caution-label"))
                .map(English::said)
                .toList();
        assertEquals(2, labels.size(), labels.toString());
        assertTrue(labels.get(0).contains("H373") && labels.get(1).contains("H225"), labels.toString());
        List<String> codes = PlanAsked.codes(cautions);
        assertTrue(
                codes.containsAll(List.of(
                        "caution-nerves",
                        "caution-wear",
                        "caution-look",
                        "caution-bed-cartridge",
                        "caution-used-silica")),
                codes.toString());
        assertFalse(codes.contains("caution-boils-low"));
        List<String> glass =
                PlanAsked.codes(pair(50).on(GlassColumn.of(20)).plan(LAW).cautions());
        assertTrue(glass.containsAll(List.of("caution-bed-glass", "caution-used-glass")), glass.toString());
    }

    @Test
    void aLoadBeyondTheBedIsPlannedForOnePortionAndSaidSoFirst() {
        PlanAsked asked = pair(250).on(new Cartridge(4)).pouring(Program.isocratic(10));
        ColumnPlan plan = asked.plan(LAW);
        int runs = plan.load().runs();
        assertEquals(250.0 / runs, plan.load().massMg(), 1e-9);
        assertTrue(
                runs > 1 && plan.load().massMg() <= plan.load().mostMg(),
                plan.load().toString());
        Message first = plan.warnings().get(0);
        assertEquals("portion-wet", first.code());
        assertEquals(plan.load().portion().orElseThrow(), first);
        assertEquals(runs, first.args().get("runs"));
        ColumnPlan one = pair(250.0 / runs)
                .on(new Cartridge(4))
                .pouring(Program.isocratic(10))
                .plan(LAW);
        assertEquals(one.bands(), plan.bands());
        assertEquals(one.chancePure(), plan.chancePure(), 0);
        assertEquals(
                BedHabits.drySilicaGrams(250.0 / runs),
                asked.dry().plan(LAW).load().loadSilicaGrams(),
                1e-9);
    }

    @Test
    void moreThanTenPortionsAreNoJobForTheColumn() {
        ColumnPlan plan = pair(2500).on(new Cartridge(4)).plan(LAW);
        assertTrue(plan.load().runs() > 10);
        assertTrue(PlanAsked.codes(plan.warnings()).contains("too-many-portions"));
        assertFalse(warned(pair(250).on(new Cartridge(4)), LAW).contains("too-many-portions"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, 5_000_000, Double.POSITIVE_INFINITY})
    void aMassThatCannotBeIsRefused(double massMg) {
        Refusal refusal = assertThrows(Refusal.class, () -> pair(massMg).plan(LAW));
        assertEquals("column.massMg", refusal.field());
        assertEquals("(0, 100000]", English.said(refusal.allowed()));
    }

    @Test
    void aTargetThatIsNoSpotIsRefusedWithTheSpots() {
        Refusal refusal = assertThrows(
                Refusal.class, () -> PlanAsked.about("Z", 50, "A", "B").plan(LAW));
        assertEquals("column.target", refusal.field());
        assertEquals("A, B", English.said(refusal.allowed()));
    }

    @Test
    void allFaultsAreFoundAtOnce() {
        ColumnQuestion good = pair(50).question();
        ColumnQuestion bad = new ColumnQuestion(
                good.sample(),
                "Z",
                0,
                good.bed(),
                good.loading(),
                OptionalDouble.of(-1),
                OptionalDouble.of(0),
                OptionalDouble.of(Double.NaN),
                good.program(),
                good.elution(),
                List.of(new ObservedBand("Q", new Cartridge(4), Program.isocratic(5), 30, 20, 0)));
        assertEquals(
                List.of(
                        "column.target",
                        "column.massMg",
                        "column.loadMl",
                        "column.flowMlMin",
                        "column.fractionMl",
                        "column.earlier[0].spot",
                        "column.earlier[0].endMl",
                        "column.earlier[0].errorMl"),
                ColumnFaults.in(bad).stream().map(Refusal::field).toList());
    }

    // 0 is taken, so it is among what is allowed
    @Test
    void whatAnEarlierBandMayStartAtIsWhatIsTaken() {
        ColumnQuestion good = pair(50).question();
        for (double start : new double[] {0, -1}) {
            ObservedBand band = new ObservedBand("A", new Cartridge(4), Program.isocratic(5), start, 20, 1);
            List<Refusal> faults = ColumnFaults.in(new ColumnQuestion(
                    good.sample(),
                    good.target(),
                    good.massMg(),
                    good.bed(),
                    good.loading(),
                    good.loadMl(),
                    good.flowMlMin(),
                    good.fractionMl(),
                    good.program(),
                    good.elution(),
                    List.of(band)));
            assertEquals(
                    start < 0 ? List.of("[0, ∞)") : List.of(),
                    faults.stream().map(fault -> English.said(fault.allowed())).toList());
        }
    }

    @Test
    void stepsThatCannotBePouredAreRefusedWithTheirPlace() {
        List<Program.Step> steps = List.of(
                new Program.Step(5, Double.POSITIVE_INFINITY),
                new Program.Step(101, 20),
                new Program.Step(-1, 0),
                new Program.Step(Double.NaN, Double.NaN));
        assertEquals(
                List.of(
                        "column.steps[0].volumeMl",
                        "column.steps[1].percentStrong",
                        "column.steps[2].percentStrong",
                        "column.steps[2].volumeMl",
                        "column.steps[3].percentStrong",
                        "column.steps[3].volumeMl"),
                Program.faults(steps).stream().map(Refusal::field).toList());
        assertThrows(Refusal.class, () -> new Program(steps));
        assertThrows(Refusal.class, () -> new Program(List.of()));
        List<Program.Step> eleven = java.util.Collections.nCopies(11, new Program.Step(5, 10));
        assertEquals(
                "column.steps",
                assertThrows(Refusal.class, () -> new Program(eleven)).field());
    }

    // 1e-9 ml: a list of so many fractions would not fit into memory
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 1e-9})
    void fractionsTooSmallToHandleAreRefused(double ml) {
        Refusal refusal = assertThrows(
                Refusal.class,
                () -> pair(50).on(new Cartridge(120)).fractions(ml).plan(LAW));
        assertEquals("column.fractionMl", refusal.field());
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everythingThatAPlanSaysReadsInEveryLanguage(Language language) {
        Texts texts = Texts.of(language);
        for (PlanAsked asked : List.of(
                pair(50),
                pair(5000),
                pair(250).dry().on(GlassColumn.of(20)),
                pair(50).by(ColumnQuestion.Elution.STEPS),
                pair(50).pouring(new Program(List.of(new Program.Step(2, 20), new Program.Step(3, 20)))))) {
            for (InventedLaw law : List.of(LAW, InventedLaw.at10(0.26, 0.25), InventedLaw.at10(0.1, 0.3))) {
                ColumnPlan plan = asked.plan(law);
                for (List<Message> said : List.of(plan.reasons(), plan.warnings(), plan.cautions())) {
                    said.forEach(message -> assertFalse(texts.render(message).contains("{"), message.key()));
                }
                assertFalse(texts.render(plan.chanceInWords()).isBlank());
            }
        }
    }
}
