package midplate.identity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.advice.Adviser;
import midplate.advice.Ratio;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.PairBasis;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.WayOfSeeing;
import midplate.catalogue.WaysOfSeeing;
import midplate.chemistry.Sorbent;
import midplate.identity.PurityAnswer.Hidden;
import midplate.identity.PurityAnswer.Kind;
import midplate.identity.PurityQuestion.StartSpot;
import midplate.plate.Setting;
import midplate.structure.Structures;
import midplate.words.English;
import midplate.words.Message;
import midplate.words.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a plate says of purity. The samples are invented. */
class PurityTest {
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    private static final Adviser ADVISER = Adviser.builtIn(CATALOGUE);
    private static final WaysOfSeeing WAYS = WaysOfSeeing.builtIn();
    private static final Purity PURITY = Purity.of(WAYS, ADVISER::consult, (here, one, other, most) -> List.of());

    private static PlateEluent eluent(Sorbent sorbent, double percent) {
        return new PlateEluent(
                sorbent,
                CATALOGUE.solvent("hexane"),
                CATALOGUE.solvent("ethyl acetate"),
                percent,
                Optional.empty(),
                Setting.BENCH,
                List.of());
    }

    private static PurityQuestion asked(double rf, double sizeMm, double volumeUl, String... ways) {
        return new PurityQuestion(
                new Compound("B", OptionalDouble.of(rf), Optional.empty()),
                1,
                Optional.of(eluent(Sorbent.SILICA, 20)),
                Arrays.stream(ways).map(id -> WAYS.find(id).orElseThrow()).toList(),
                OptionalDouble.of(volumeUl),
                OptionalDouble.of(1),
                1,
                OptionalDouble.of(sizeMm),
                OptionalDouble.of(50),
                Optional.of(StartSpot.NONE));
    }

    private static PurityQuestion in(Optional<PlateEluent> eluent, PurityQuestion other) {
        return new PurityQuestion(
                other.spot(),
                other.spotsSeen(),
                eluent,
                other.seenBy(),
                other.volumeUl(),
                other.concentrationPercent(),
                other.touches(),
                other.sizeMm(),
                other.runMm(),
                other.startSpot());
    }

    private static Hidden hidden(PurityAnswer answer, Kind kind) {
        return answer.couldHide().stream()
                .filter(each -> each.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static double chance(double rf, double sizeMm) {
        return hidden(PURITY.judge(asked(rf, sizeMm, 1, "uv-254")), Kind.COINCIDING)
                .chance()
                .orElseThrow();
    }

    private static boolean says(List<Message> messages, String key) {
        return messages.stream().anyMatch(message -> message.key().equals(key));
    }

    @Test
    void oneSpotIsNeverCalledPure() {
        PurityAnswer answer = PURITY.judge(asked(0.4, 3, 1, "uv-254", "iodine"));
        String seen = English.said(answer.seen());
        assertTrue(seen.contains("One compound") && seen.contains("UV light at 254 nm"), seen);
        assertTrue(seen.contains("not the same as pure"), seen);
        assertEquals(
                Arrays.asList(Kind.values()),
                answer.couldHide().stream().map(Hidden::kind).toList());
    }

    /** Own algebra: what moves on the plate lies in one of the strips that fill it. */
    @Test
    void theChancesOfStripsThatFillThePlateSumToOne() {
        HiddenCompound compound = HiddenCompound.in(eluent(Sorbent.SILICA, 20), ADVISER::consult);
        double sum = 0;
        for (int strip = 0; strip < 10; strip++) {
            double low = 0.03 + 0.094 * strip;
            sum += compound.between(low, low + 0.094);
        }
        assertEquals(1, sum, 1e-6);
        assertTrue(compound.atStart() > 0 && compound.atFront() > 0);
        assertTrue(compound.atStart() + compound.atFront() < 0.5);
    }

    @Test
    void aLargerSpotHidesMore() {
        double small = chance(0.4, 2);
        double large = chance(0.4, 6);
        assertTrue(small > 0 && small < large && large < 0.6, small + " " + large);
        // where the density hardly changes, three times the width holds about three times as many
        assertEquals(3, large / small, 0.3);
    }

    @Test
    void aStrongerEluentSendsMoreWithTheFrontAndLeavesLessBehind() {
        HiddenCompound weak = HiddenCompound.in(eluent(Sorbent.SILICA, 5), ADVISER::consult);
        HiddenCompound strong = HiddenCompound.in(eluent(Sorbent.SILICA, 60), ADVISER::consult);
        assertTrue(strong.atFront() > weak.atFront());
        assertTrue(strong.atStart() < weak.atStart());
    }

    @Test
    void withoutAnEluentTheModelIsNotAskedAndThatIsSaid() {
        Purity mute = Purity.of(
                WAYS,
                question -> {
                    throw new AssertionError("asked");
                },
                (here, one, other, most) -> {
                    throw new AssertionError("asked");
                });
        PurityQuestion plain = asked(0.4, 3, 1, "uv-254");
        PurityAnswer without = mute.judge(in(Optional.empty(), plain));
        assertTrue(hidden(without, Kind.COINCIDING).chance().isEmpty());
        assertTrue(says(without.warnings(), "pure.warn-no-eluent"));
        PurityAnswer alumina = mute.judge(in(Optional.of(eluent(Sorbent.ALUMINA, 20)), plain));
        assertTrue(hidden(alumina, Kind.COINCIDING).chance().isEmpty());
        assertTrue(says(alumina.warnings(), "pure.warn-sorbent"));
    }

    /** The plate still shows what it shows. */
    @Test
    void anEluentThatTheModelRefusesIsNoFault() {
        Purity refused = Purity.of(
                WAYS,
                question -> {
                    throw new Refusal(
                            "strong",
                            Message.of("pure.hide-like"),
                            "",
                            Message.of("pure.hide-like"),
                            Message.of("pure.hide-like"));
                },
                (here, one, other, most) -> List.of());
        PurityAnswer answer = refused.judge(asked(0.4, 3, 1, "uv-254"));
        assertTrue(hidden(answer, Kind.COINCIDING).chance().isEmpty());
        assertTrue(says(answer.warnings(), "pure.warn-no-model"));
        assertTrue(answer.amounts().isPresent());
    }

    @ParameterizedTest
    @CsvSource({"0", "0.03", "0.97", "1"})
    void atALineNothingIsParted(double rf) {
        PurityAnswer answer = PURITY.judge(asked(rf, 3, 1, "uv-254"));
        assertTrue(hidden(answer, Kind.COINCIDING).chance().isEmpty());
        assertTrue(says(answer.warnings(), "pure.warn-at-line"));
        assertEquals(List.of(), answer.next());
    }

    @ParameterizedTest
    @CsvSource({"0.0301", "0.05", "0.5", "0.95", "0.9699"})
    void everywhereElseThereIsAChance(double rf) {
        double chance = chance(rf, 0.1);
        assertTrue(chance > 0 && chance < 0.5, rf + ": " + chance);
    }

    /** 1 µl of 1 % (1 g in 100 ml) holds 10 µg; 1 % of that is 0.1 µg. */
    @Test
    void amountsAreVolumeTimesConcentration() {
        PurityAnswer.Amounts amounts =
                PURITY.judge(asked(0.4, 3, 1, "uv-254")).amounts().orElseThrow();
        assertEquals(10, amounts.appliedUg(), 1e-12);
        assertEquals(0.1, amounts.onePercentUg(), 1e-12);
        WayOfSeeing lamp = WAYS.find("uv-254").orElseThrow();
        PurityAnswer.Shares least = amounts.leastPercent().orElseThrow();
        assertEquals(lamp.leastUg() / 10 * 100, least.low(), 1e-12);
        assertEquals(lamp.mostUg() / 10 * 100, least.high(), 1e-12);
        assertEquals(
                least.low() / 4,
                PURITY.judge(asked(0.4, 3, 4, "uv-254"))
                        .amounts()
                        .orElseThrow()
                        .leastPercent()
                        .orElseThrow()
                        .low(),
                1e-12);
    }

    @Test
    void tooLittleShowsNothingAndTooMuchIsWarnedOf() {
        PurityAnswer.Shares least = PURITY.judge(asked(0.4, 3, 0.001, "uv-254"))
                .amounts()
                .orElseThrow()
                .leastPercent()
                .orElseThrow();
        assertEquals(100, least.low(), 0, "never above all of it");
        assertEquals(100, least.high(), 0);
        assertTrue(says(PURITY.judge(asked(0.4, 3, 50, "uv-254")).warnings(), "pure.warn-overloaded"));
        assertFalse(says(PURITY.judge(asked(0.4, 3, 1, "uv-254")).warnings(), "pure.warn-overloaded"));
    }

    @Test
    void withoutAWayOfLookingNoShareIsNamed() {
        PurityAnswer.Amounts amounts = PURITY.judge(asked(0.4, 3, 1)).amounts().orElseThrow();
        assertTrue(amounts.leastPercent().isEmpty());
    }

    @Test
    void theLampMissesWhatDoesNotAbsorbAndFurtherWaysAreNamed() {
        PurityAnswer lamp = PURITY.judge(asked(0.4, 3, 1, "uv-254"));
        String blind = English.said(hidden(lamp, Kind.BLIND).text());
        for (String group : List.of("alcohol", "ester", "hydrocarbon", "primary amine", "dialkyl ether")) {
            assertTrue(blind.contains(group), blind);
        }
        assertFalse(blind.contains("aromatic"), blind);
        List<String> more = lamp.secondWays().stream().map(English::said).toList();
        assertTrue(more.get(0).startsWith("iodine vapour"), more.toString());
        assertTrue(more.get(1).contains("alcohol"), more.toString());
        String stain = English.said(
                hidden(PURITY.judge(asked(0.4, 3, 1, "ninhydrin")), Kind.BLIND).text());
        assertTrue(stain.contains("aromatic ring"), stain);
        assertFalse(stain.contains("primary amine"), stain);
    }

    @Test
    void theOrderOfTheWaysChangesNoChanceAndNoAmount() {
        PurityAnswer one = PURITY.judge(asked(0.4, 3, 1, "uv-254", "iodine"));
        PurityAnswer other = PURITY.judge(asked(0.4, 3, 1, "iodine", "uv-254"));
        assertEquals(
                one.couldHide().stream().map(Hidden::chance).toList(),
                other.couldHide().stream().map(Hidden::chance).toList());
        assertEquals(
                one.amounts().orElseThrow().leastPercent(),
                other.amounts().orElseThrow().leastPercent());
        assertEquals(one.cautions(), other.cautions());
    }

    /** What finds eluents is asked about the spot and a compound of which nothing is known at the same Rf. */
    @Test
    void theNextEluentIsSaidForACompoundUnderTheSpot() {
        NextEluent found = new NextEluent(
                CATALOGUE.solvent("toluene"),
                CATALOGUE.solvent("acetone"),
                new Ratio(9, 1),
                PairBasis.THEORY,
                0.4,
                0.1,
                Message.of("pure.way-other"));
        Purity purity = Purity.of(WAYS, ADVISER::consult, (here, one, other, most) -> {
            assertEquals(OptionalDouble.of(0.4), one.rf());
            assertEquals(OptionalDouble.of(0.4), other.rf());
            assertTrue(other.structure().isEmpty());
            return List.of(found);
        });
        PurityAnswer answer = purity.judge(asked(0.4, 3, 1, "uv-254"));
        String said = English.said(answer.next().get(0).text());
        assertTrue(
                said.startsWith("If something hides")
                        && said.contains("toluene/acetone 9:1")
                        && said.contains("40 %")
                        && said.contains("theory"),
                said);
        assertTrue(says(answer.cautions(), "pure.caution-eluent"));
        assertEquals("seeing.caution-sheet-first", answer.cautions().get(0).key());
    }

    /** Common practice: a saturated alcohol is not seen under the lamp, an aromatic one is. */
    @Test
    void aSpotThatTheWaysUsedCannotHaveShownIsSomethingElse() {
        Structures structures = Structures.of(FunctionalGroups.builtIn());
        for (String smiles : List.of("CCCCO", "OCc1ccccc1")) {
            PurityQuestion plain = asked(0.4, 3, 1, "uv-254");
            PurityQuestion told = new PurityQuestion(
                    new Compound(
                            "B",
                            OptionalDouble.of(0.4),
                            Optional.of(structures.read("smiles", smiles).counts())),
                    1,
                    plain.eluent(),
                    plain.seenBy(),
                    plain.volumeUl(),
                    plain.concentrationPercent(),
                    1,
                    plain.sizeMm(),
                    plain.runMm(),
                    plain.startSpot());
            assertEquals(
                    smiles.equals("CCCCO"), says(PURITY.judge(told).warnings(), "pure.warn-something-else"), smiles);
        }
    }

    /** Salts, polymers and grease are no compounds of the kind measured. */
    @Test
    void noNumberIsGivenForTheStartLineAndTheFront() {
        PurityAnswer answer = PURITY.judge(asked(0.4, 3, 1, "uv-254"));
        for (Kind kind : List.of(Kind.BASELINE, Kind.FRONT)) {
            assertTrue(hidden(answer, kind).chance().isEmpty());
            String said = English.said(hidden(answer, kind).text());
            assertFalse(said.contains("%"), said);
        }
        assertTrue(hidden(answer, Kind.COINCIDING).chance().isPresent());
    }

    @Test
    void cautionsAreFewAndKeepWhatAReagentHasOfItsOwn() {
        List<Message> lamp = PURITY.judge(asked(0.4, 3, 1, "uv-254")).cautions();
        assertEquals("seeing.caution-sheet-first", lamp.get(0).key());
        assertTrue(lamp.size() <= 4, lamp.toString());
        assertTrue(says(lamp, "seeing.caution-cabinet") && says(lamp, "pure.caution-stains"), lamp.toString());
        assertFalse(says(lamp, "seeing.caution-dnph"));
        assertTrue(says(PURITY.judge(asked(0.4, 3, 1, "dinitrophenylhydrazine")).cautions(), "seeing.caution-dnph"));
        assertTrue(says(PURITY.judge(asked(0.4, 3, 1, "sulfuric-acid")).cautions(), "seeing.caution-char"));
    }

    @Test
    void moreSpotsAreNotOneCompoundUnlessItChangesOnTheLayer() {
        PurityQuestion one = asked(0.4, 3, 1, "uv-254");
        PurityQuestion three = new PurityQuestion(
                one.spot(),
                3,
                one.eluent(),
                one.seenBy(),
                one.volumeUl(),
                one.concentrationPercent(),
                one.touches(),
                one.sizeMm(),
                one.runMm(),
                Optional.of(StartSpot.STRONG));
        PurityAnswer answer = PURITY.judge(three);
        assertTrue(English.said(answer.seen()).startsWith("3 spots"), English.said(answer.seen()));
        assertTrue(says(answer.secondWays(), "pure.way-square"));
        assertTrue(says(answer.secondWays(), "pure.way-stronger"));
    }

    @ParameterizedTest
    @CsvSource({
        "NaN, 3, 1, rf",
        "1.01, 3, 1, rf",
        "-0.1, 3, 1, rf",
        "0.4, 0, 1, sizeMm",
        "0.4, NaN, 1, sizeMm",
        "0.4, 50, 1, sizeMm",
        "0.4, 51, 1, sizeMm",
        "0.4, 3, 0, volumeUl",
        "0.4, 3, -1, volumeUl",
        "0.4, 3, NaN, volumeUl",
        "0.4, 3, Infinity, volumeUl",
        "0.4, 3, 1000000, volumeUl"
    })
    void whatCannotBeIsRefusedWithItsField(double rf, double sizeMm, double volumeUl, String field) {
        Refusal refusal = assertThrows(Refusal.class, () -> PURITY.judge(asked(rf, sizeMm, volumeUl, "uv-254")));
        assertEquals(field, refusal.field());
    }
}
