package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.catalogue.MeasuredPairs;
import midplate.chemistry.GroupCounts;
import midplate.plate.Limit;
import midplate.plate.Reading;
import midplate.plate.Setting;
import midplate.words.Language;
import midplate.words.Message;
import midplate.words.Texts;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said where structures are known; readings are invented, structures labelled by hand. */
@DisplayName("Where a structure is known")
class StructuredAdviceTest {
    /** Acetophenone: six aromatic carbons, a methyl group, a ketone beside the ring. */
    private static final GroupCounts ACETOPHENONE =
            whole(Map.of("aromatic-carbon", 6, "alkyl-carbon", 1, "aryl-ketone", 1));

    private static final GroupCounts ACID = group("carboxylic-acid");
    private static final GroupCounts AMINE = group("primary-amine");

    private static GroupCounts whole(Map<String, Integer> counts) {
        return new GroupCounts(counts, GroupCounts.Detail.WHOLE);
    }

    private static GroupCounts group(String id) {
        return new GroupCounts(Map.of(id, 1), GroupCounts.Detail.CLASS);
    }

    private static Advice advice(Asking asking, Map<String, GroupCounts> structures) {
        return Asking.ADVISER.advise(asking.question().knowing(structures));
    }

    private static List<String> notes(Asking asking, Map<String, GroupCounts> structures) {
        return Asking.codes(advice(asking, structures).notes());
    }

    private static List<String> reasons(Asking asking, Map<String, GroupCounts> structures) {
        return Asking.codes(advice(asking, structures).why());
    }

    @Test
    void aReadingThatTheStructureDoesNotForetellIsToldWithBothNumbers() {
        Asking low = Asking.acetate().in(Setting.BENCH).run(50, Map.of("A", 0.1));
        Message note = Asking.find(advice(low, Map.of("A", ACETOPHENONE)).notes(), "structure-contradicted");
        assertEquals(Message.of("advice.read-at", "rf", 0.1), note.args().get("where"));
        double from = (Double) note.args().get("low");
        double to = (Double) note.args().get("high");
        assertTrue(from > 0.1 && from < to && to <= 1, from + " to " + to);
        Forecast again = Asking.ADVISER
                .predict(low.question().knowing(Map.of("A", ACETOPHENONE)), List.of(50.0))
                .get(0);
        assertEquals(0.1, again.spots().get(0).rf(), 0.05, "the reading wins");
    }

    // The band is that of 98 of 100: the 90 % band of the first plate, which takes 3 in 100 to lie anywhere, is
    // narrower.
    @ParameterizedTest
    @CsvSource({"AUTOMATED, 10", "BENCH, 10", "CLASS, 25"})
    void aReadingInsideWhatTheStructureForetellsIsNoContradiction(Setting setting, double percent) {
        SpotForecast first = Asking.ADVISER
                .predict(Asking.acetate().in(setting).question().knowing(Map.of("A", ACETOPHENONE)), List.of(percent))
                .get(0)
                .spots()
                .get(0);
        for (double rf : new double[] {first.low(), first.rf(), first.high()}) {
            Asking read = Asking.acetate().in(setting).run(percent, Map.of("A", rf));
            assertFalse(notes(read, Map.of("A", ACETOPHENONE)).contains("structure-contradicted"), "Rf " + rf);
        }
    }

    // The theory may be off as well as the structure: dichloromethane foretold from ethyl acetate is by 1.1 ln units.
    @ParameterizedTest
    @CsvSource({"toluene, ethyl acetate, 10", "dichloromethane, ethyl acetate, 10", "hexane, acetone, 10"})
    void aReadingInsideWhatTheoryForetellsOfTheStructureIsNoContradiction(String weak, String strong, double percent) {
        Question first = Asking.about(weak, strong).question().knowing(Map.of("A", ACETOPHENONE));
        SpotForecast foretold =
                Asking.ADVISER.predict(first, List.of(percent)).get(0).spots().get(0);
        for (double rf : new double[] {foretold.low(), foretold.rf(), foretold.high()}) {
            Asking read = Asking.about(weak, strong).run(percent, Map.of("A", rf));
            assertFalse(notes(read, Map.of("A", ACETOPHENONE)).contains("structure-contradicted"), "Rf " + rf);
        }
    }

    @Test
    void withCurvesOfPairsThatSayNothingOfEachOtherAStructureSaysNothingInATheoryPair() {
        MeasuredPairs curves = MeasuredPairs.builtIn(Asking.CATALOGUE);
        Adviser apart = Adviser.of(
                Asking.CATALOGUE,
                new MeasuredPairs(curves.pairs(), Optional.empty(), curves.structures(), curves.theory()));
        Question question = Asking.about("hexane", "acetone").question();
        assertEquals(
                apart.predict(question, List.of(20.0)),
                apart.predict(question.knowing(Map.of("A", ACETOPHENONE)), List.of(20.0)));
    }

    @Test
    void aBoundContradictsOnlyWhatItRulesOut() {
        Reading notAbove = new Reading(0.03, Limit.AT_START, Reading.of(0.03).standardError());
        Asking atStart = Asking.acetate().in(Setting.BENCH).read(50, "A", notAbove);
        Message note = Asking.find(advice(atStart, Map.of("A", ACETOPHENONE)).notes(), "structure-contradicted");
        assertEquals(Message.of("advice.read-at-start"), note.args().get("where"));
        Asking inHexane = Asking.acetate().in(Setting.BENCH).read(0, "A", notAbove);
        assertFalse(notes(inHexane, Map.of("A", ACETOPHENONE)).contains("structure-contradicted"));
    }

    @Test
    void withoutAStructureNothingIsSaidOfOne() {
        Asking asking = Asking.acetate().in(Setting.BENCH).run(50, Map.of("A", 0.1));
        Advice advice = asking.advice();
        assertTrue(Asking.codes(advice.notes()).stream().noneMatch(code -> code.startsWith("str")));
        assertTrue(Asking.codes(advice.why()).stream().noneMatch(code -> code.startsWith("why-structure")));
    }

    @Test
    void theFirstPlateIsCalledAGuess() {
        Advice advice = advice(Asking.acetate().in(Setting.BENCH), Map.of("A", ACETOPHENONE));
        Message first = advice.why().get(0);
        assertEquals("why-structure-first", first.code());
        assertTrue(Asking.codes(advice.notes()).stream().noneMatch(code -> code.startsWith("spot-unread")));
        List<String> half = reasons(Asking.acetate().spots("A", "B"), Map.of("A", ACETOPHENONE));
        assertEquals("why-no-plate", half.get(0), "of B nothing is known");
        Asking two = Asking.acetate().spots("A", "B");
        assertTrue(notes(two, Map.of("A", ACETOPHENONE)).contains("spot-unread-first-name"));
        assertTrue(notes(two, Map.of()).contains("spot-unread-first"));
        assertTrue(half.contains("why-structure"));
    }

    @Test
    void theGroupThatHoldsBackMostIsNamedWithItsSupport() {
        Message why =
                Asking.find(advice(Asking.acetate(), Map.of("A", ACETOPHENONE)).why(), "why-structure");
        assertEquals(Message.of("group.aryl-ketone"), why.args().get("group"));
        assertTrue((Integer) why.args().get("compounds") >= 10);
        assertTrue(reasons(Asking.acetate(), Map.of("A", ACID)).contains("why-structure-part"));
    }

    // Two aliphatic amines among the compounds measured (README): fewer than ten.
    @Test
    void aRareGroupIsToldOnceAndWhatOnlyCarriesItIsNot() {
        List<Message> why = advice(Asking.acetate(), Map.of("A", AMINE)).why();
        Message held = Asking.find(why, "why-structure-part");
        assertEquals(Message.of("group.primary-amine"), held.args().get("group"));
        String text = Texts.english().render(held);
        assertTrue(text.matches(".*measured with it: only [1-9]\\."), text);
        assertFalse(Asking.codes(why).contains("why-structure-rare"));
        GroupCounts sugar = whole(Map.of("alkyl-carbon", 6, "alcohol", 5, "alkyl-ether", 1));
        Message rare = Asking.find(advice(Asking.acetate(), Map.of("A", sugar)).why(), "why-structure-rare");
        assertEquals(Message.of("group.alkyl-ether"), rare.args().get("group"));
        assertFalse(reasons(Asking.acetate(), Map.of("A", ACETOPHENONE)).contains("why-structure-rare"));
    }

    // Common practice, no source: against an ion, or for a sugar, neither acid nor base in the eluent helps.
    @Test
    void whatNoAdditiveMovesIsToldSo() {
        Asking methanol = Asking.about("dichloromethane", "methanol");
        GroupCounts sugar = whole(Map.of("alkyl-carbon", 6, "alcohol", 5, "alkyl-ether", 1));
        assertTrue(notes(methanol, Map.of("A", sugar)).contains("too-polar-aqueous"));
        assertTrue(notes(Asking.acetate(), Map.of("A", sugar)).contains("too-polar"), "methanol moves it better");
        GroupCounts ion = whole(Map.of("alkyl-carbon", 4, "onium-ion", 1, "carboxylic-acid", 1));
        assertTrue(notes(Asking.acetate(), Map.of("A", ion)).contains("too-polar-aqueous"));
    }

    @Test
    void aBandIsCalledWideOnlyWhereItIs() {
        for (GroupCounts each : List.of(AMINE, ACETOPHENONE, BENZYL_ALCOHOL)) {
            for (Asking asking : List.of(
                    Asking.acetate().in(Setting.BENCH),
                    Asking.acetate().in(Setting.BENCH).run(10, Map.of("A", 0.4)))) {
                Advice advice = advice(asking, Map.of("A", each));
                SpotForecast spot = advice.forecast().spots().get(0);
                assertEquals(
                        spot.high() - spot.low() > 0.5,
                        Asking.codes(advice.why()).contains("why-structure-wide"),
                        spot.toString());
            }
        }
    }

    @Test
    void aGroupThatWasNeverMeasuredIsCalledAnEstimate() {
        GroupCounts boronic = whole(Map.of("aromatic-carbon", 6, "boronic-acid", 1));
        List<String> why = reasons(Asking.acetate(), Map.of("A", boronic));
        assertTrue(why.contains("why-structure-unmeasured"), why.toString());
        assertFalse(why.contains("why-structure-rare"), why.toString());
    }

    @Test
    void atALineItIsToldWhatTheStructureNarrows() {
        Map<String, GroupCounts> known = Map.of("A", ACETOPHENONE);
        Asking line = Asking.acetate().in(Setting.BENCH).run(0, Map.of("A", 0.0));
        Message adds = Asking.find(advice(line, known).why(), "why-structure-adds");
        double with = (Double) adds.args().get("high") - (Double) adds.args().get("low");
        double without =
                (Double) adds.args().get("highWithout") - (Double) adds.args().get("lowWithout");
        assertTrue(with < without, with + " and " + without);
        Asking middle = Asking.acetate().in(Setting.BENCH).run(10, Map.of("A", 0.4));
        assertFalse(reasons(middle, known).contains("why-structure-adds"));
    }

    // Own: a spot that stays low is brought nearest to the window by the strongest mixture, one that runs high by the
    // weakest.
    @ParameterizedTest
    @CsvSource({"hexane, ethyl acetate, 100", "dichloromethane, methanol, 9"})
    void whatStaysLowWithoutHopeGetsTheStrongestMixture(String weak, String strong, double least) {
        GroupCounts sugar = whole(Map.of("alkyl-carbon", 6, "alcohol", 5, "alkyl-ether", 1));
        Asking asking = Asking.about(weak, strong).in(Setting.BENCH);
        Advice advice = advice(asking, Map.of("A", sugar));
        assertTrue(advice.goal().chance() < 0.05, "no hope: " + advice.goal().chance());
        assertTrue(advice.forecast().percentStrong() >= least, advice.ratio().toString());
        assertTrue(advice.alternatives().stream()
                .noneMatch(way -> way.what().code().equals("instead-repeat")));
    }

    @Test
    void whatRunsHighWithoutHopeGetsTheWeakestMixture() {
        Asking asking = Asking.about("dichloromethane", "methanol").run(0, Map.of("A", 0.97));
        Advice advice = asking.run(1, Map.of("A", 0.98)).advice();
        assertTrue(advice.goal().chance() < 0.05, "no hope: " + advice.goal().chance());
        assertEquals(0, advice.forecast().percentStrong());
    }

    @Test
    void aPairForWhichNoStructuresWereFittedSaysSo() {
        MeasuredPairs built = MeasuredPairs.builtIn(Asking.CATALOGUE);
        Adviser bare = Adviser.of(Asking.CATALOGUE, new MeasuredPairs(built.pairs(), built.joint(), List.of()));
        Advice advice = bare.advise(Asking.acetate().question().knowing(Map.of("A", ACETOPHENONE)));
        assertTrue(Asking.codes(advice.notes()).contains("structure-not-fitted"));
        assertEquals("why-no-plate", advice.why().get(0).code());
    }

    // Common practice, no source.
    @ParameterizedTest
    @CsvSource({
        "carboxylic-acid, streaks-acid",
        "phenol, streaks-weak-acid",
        "secondary-amine, streaks-base",
        "aniline, streaks-weak-base",
        "enolised-diketone, streaks-chelator",
        "boronic-acid, streaks-boronic-acid",
        "phosphine-oxide, streaks-acceptor"
    })
    void whatStreaksIsToldWithWhatHelps(String group, String code) {
        List<Message> notes =
                advice(Asking.acetate(), Map.of("A", group(group))).notes();
        for (Language language : Language.values()) {
            String text = Texts.of(language).render(Asking.find(notes, code));
            assertTrue(text.startsWith("A: "), text);
            assertTrue(text.contains(language == Language.ENGLISH ? "common practice" : "übliche Praxis"), text);
        }
    }

    @Test
    void whatDoesNotStreakHasNoSuchNote() {
        GroupCounts salicyl = whole(Map.of("aromatic-carbon", 6, "phenol", 1, "aldehyde", 1, "inner-h-bond", 1));
        for (GroupCounts each : List.of(ACETOPHENONE, group("ester"), salicyl)) {
            assertTrue(
                    notes(Asking.acetate(), Map.of("A", each)).stream().noneMatch(code -> code.startsWith("streaks")));
        }
    }

    @Test
    void aWeakReasonIsNotToldBesideAStrongOne() {
        GroupCounts both = whole(Map.of("aromatic-carbon", 6, "carboxylic-acid", 1, "phenol", 1));
        List<String> notes = notes(Asking.acetate(), Map.of("A", both));
        assertTrue(notes.contains("streaks-acid"));
        assertFalse(notes.contains("streaks-weak-acid"));
    }

    @Test
    void anAcidAndABaseAreNotToBeTreatedInOneJar() {
        Asking two = Asking.acetate().spots("A", "B", "C");
        List<Message> notes =
                advice(two, Map.of("A", ACID, "B", AMINE, "C", ACID)).notes();
        assertTrue(Asking.codes(notes).contains("streaks-both"));
        String acid = Texts.english().render(Asking.find(notes, "streaks-acid"));
        assertTrue(acid.startsWith("A, C: "), acid);
        List<String> codes = Asking.codes(notes);
        for (String once : List.of("additive-system", "handle-acetic-acid", "handle-triethylamine")) {
            assertEquals(1, codes.stream().filter(once::equals).count(), once);
        }
    }

    // Common practice, no source: neither acid nor base helps against these.
    @Test
    void nothingIsToBeAddedForAZwitterionOrAnIon() {
        GroupCounts aminoAcid = whole(Map.of("alkyl-carbon", 3, "carboxylic-acid", 1, "primary-amine", 1));
        List<Message> notes = advice(Asking.acetate(), Map.of("A", aminoAcid)).notes();
        Message told = Asking.find(notes, "of-spot");
        assertEquals(Message.of("structure.zwitterion"), told.args().get("note"));
        GroupCounts betaine = whole(Map.of("alkyl-carbon", 4, "carboxylic-acid", 1, "onium-ion", 1));
        for (GroupCounts each : List.of(aminoAcid, betaine)) {
            List<String> codes = notes(Asking.acetate(), Map.of("A", each));
            assertTrue(
                    codes.stream()
                            .noneMatch(code -> code.startsWith("streaks")
                                    || code.startsWith("handle")
                                    || code.startsWith("additive")),
                    codes.toString());
        }
    }

    private static final GroupCounts BENZYL_ALCOHOL =
            whole(Map.of("aromatic-carbon", 6, "alkyl-carbon", 1, "alcohol", 1));

    private static final GroupCounts BIPHENYL = whole(Map.of("aromatic-carbon", 12));

    @Test
    void severalSpotsThatRanTooLowAreToldOnce() {
        Asking low = Asking.acetate()
                .spots("A", "B", "C")
                .in(Setting.BENCH)
                .run(50, Map.of("A", 0.05, "B", 0.06, "C", 0.07));
        Map<String, GroupCounts> known = Map.of("A", ACETOPHENONE, "B", ACETOPHENONE, "C", BIPHENYL);
        List<String> codes = notes(low, known);
        assertTrue(codes.contains("structure-ran-low"), codes.toString());
        assertFalse(codes.contains("structure-contradicted"), codes.toString());
        String text = Texts.english().render(Asking.find(advice(low, known).notes(), "structure-ran-low"));
        assertTrue(text.startsWith("A, B, C: each ran far lower"), text);
    }

    @Test
    void twoNamesToBeExchangedAreTold() {
        Map<String, GroupCounts> known = Map.of("A", BENZYL_ALCOHOL, "B", BIPHENYL);
        Asking swapped = Asking.acetate().spots("A", "B").in(Setting.BENCH).run(10, Map.of("A", 0.8, "B", 0.1));
        List<String> codes = notes(swapped, known);
        assertTrue(codes.contains("structure-exchanged"), codes.toString());
        assertTrue(codes.stream().noneMatch("structure-contradicted"::equals), codes.toString());
        Asking right = Asking.acetate().spots("A", "B").in(Setting.BENCH).run(10, Map.of("A", 0.1, "B", 0.8));
        assertTrue(notes(right, known).stream().noneMatch(code -> code.startsWith("structure-")));
    }

    @Test
    void withMethanolAmmoniaIsNamed() {
        Asking methanol = Asking.about("dichloromethane", "methanol");
        assertTrue(notes(methanol, Map.of("A", AMINE)).contains("streaks-base-methanol"));
    }

    @Test
    void anAdditiveThatIsInTheEluentIsNotAdvisedAgain() {
        assertTrue(notes(Asking.acetate().with("1 % acetic acid"), Map.of("A", ACID)).stream()
                .noneMatch(code -> code.startsWith("streaks")));
    }

    @Test
    void whatIsNotOnTheShelfIsNotNamed() {
        Asking shelf = Asking.acetate().shelf("hexane", "ethyl acetate", "acetic acid");
        List<Message> notes =
                advice(shelf.spots("A", "B"), Map.of("A", ACID, "B", AMINE)).notes();
        String acid = Texts.english().render(Asking.find(notes, "streaks-acid"));
        assertTrue(acid.contains("acetic acid"), acid);
        String amine = Texts.english().render(Asking.find(notes, "streaks-shelf-none"));
        assertFalse(amine.contains("triethylamine"), amine);
        assertEquals(Optional.empty(), shelf.question().additive());
    }
}
