package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.GroupDifference;
import midplate.catalogue.JointTraits;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.TheoryPair;
import midplate.catalogue.TheoryPairs;
import midplate.chemistry.GroupCounts;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Own algebra of normal curves on the packed traits; readings and compounds are invented. */
@DisplayName("What some pairs say of another one")
class AcrossPairsTest {
    /** The steps of the grids on which compounds are weighed blur c so much [ln units]. */
    private static final double BLUR = 0.02;

    private static final JointTraits TRAITS = Plates.CURVES.joint().orElseThrow();
    private static final MoleculeParts PARTS = new MoleculeParts(FunctionalGroups.builtIn());
    private static final AcrossPairs ACROSS = new AcrossPairs(Optional.of(TRAITS), PARTS);
    private static final TheoryPairs THEORY = TheoryPairs.of(
            SolventCatalogue.builtIn(), Plates.CURVES, Plates.CURVES.theory().orElseThrow());
    private static final AcrossPairs.Place ACETATE = measured(Plates.ACETATE);
    private static final AcrossPairs.Place ETHER = measured(Plates.ETHER);
    private static final AcrossPairs.Place METHANOL = measured(Plates.METHANOL);
    private static final AcrossPairs.Place ACETONE = theory("silica-hexane-acetone");
    private static final AcrossPairs.Place TOLUENE = theory("silica-toluene-ethyl-acetate");
    private static final double[] KETONE = PARTS.row(new GroupCounts(
            Map.of("aromatic-carbon", 6, "alkyl-carbon", 1, "aryl-ketone", 1), GroupCounts.Detail.WHOLE));

    private static AcrossPairs.Place measured(String id) {
        return new AcrossPairs.Place(id, Optional.empty());
    }

    private static AcrossPairs.Place theory(String id) {
        return new AcrossPairs.Place(id, THEORY.find(id));
    }

    private static PairModel model(AcrossPairs.Place place) {
        return place.theory()
                .map(theory -> PairModel.of(theory.pair()))
                .orElseGet(() -> Plates.BUILT_IN.find(place.id()).orElseThrow());
    }

    private static AcrossPairs.Read read(AcrossPairs.Place place, double percent, double rf) {
        PairModel model = model(place);
        List<Trial> trials = PlateRuns.trials("A", List.of(Plates.run(place.id(), percent, Map.of("A", rf))));
        TraitCloud after = SpotEvidence.of(model, PlateScatter.of(Setting.AUTOMATED), trials, model.prior())
                .cloud();
        return new AcrossPairs.Read(place, model.prior(), after);
    }

    private static TraitPrior prior(AcrossPairs.Place to, double[] row, AcrossPairs.Read... reads) {
        return ACROSS.prior(to, model(to).prior(), List.of(reads), row);
    }

    private static TraitPrior plain(AcrossPairs.Place to, AcrossPairs.Read... reads) {
        return ACROSS.prior(to, model(to).prior(), List.of(reads), null);
    }

    @Test
    void aStructureMovesWhatIsExpectedByWhatItsGroupsDoInTheOnePairBeyondTheOther() {
        GroupShift shift = shift(Plates.ACETATE, Plates.METHANOL);
        assertTrue(Math.abs(shift.shift(KETONE)) > 10 * BLUR, "moves by " + shift.shift(KETONE));
        AcrossPairs.Read read = read(ACETATE, 25, 0.4);
        TraitPrior known = prior(METHANOL, KETONE, read);
        assertEquals(
                plain(METHANOL, read).cloud().meanC() + shift.shift(KETONE),
                known.cloud().meanC(),
                BLUR);
        Moments from = Moments.of(read.after(), 3);
        double carried =
                JointNormal.of(TRAITS).link(Plates.ACETATE, Plates.METHANOL).carriedC(from);
        assertEquals(Math.sqrt(carried + shift.variance(KETONE)), deviation(known), BLUR);
    }

    @Test
    void inATheoryPairTheErrorOfTheTheoryIsOnTopOfWhatTheStructureSays() {
        AcrossPairs.Read read = read(METHANOL, 3, 0.4);
        double base = prior(ACETATE, KETONE, read).varianceC();
        double deviation = deviationC(TOLUENE);
        assertEquals(Math.sqrt(base + deviation * deviation), deviation(prior(TOLUENE, KETONE, read)), BLUR);
    }

    @Test
    void inATheoryPairACompoundIsAsInItsBaseAndAsMuchLessSureAsTheTheoryIs() {
        AcrossPairs.Read read = read(ACETATE, 25, 0.4);
        Moments base = Moments.of(read.after(), 3);
        TraitPrior there = plain(ACETONE, read);
        double deviation = deviationC(ACETONE);
        assertEquals(base.mean()[0], there.cloud().meanC(), BLUR);
        assertEquals(Math.sqrt(base.covariance()[0][0] + deviation * deviation), deviation(there), BLUR);
    }

    @Test
    void aReadingInATheoryPairSaysLessThanOneInItsBase() {
        double byTheory = plain(ETHER, read(ACETONE, 20, 0.4)).varianceC();
        assertTrue(byTheory > plain(ETHER, read(ACETATE, 25, 0.4)).varianceC());
        assertTrue(byTheory < model(ETHER).prior().varianceC());
    }

    @Test
    void theBaseAndAThirdPairTogetherTellMoreOfATheoryPairThanEither() {
        // on the start line of the base a spot may lie anywhere below
        AcrossPairs.Read base = read(ACETATE, 5, 0);
        AcrossPairs.Read third = read(METHANOL, 3, 0.4);
        double both = deviation(plain(ACETONE, base, third));
        assertTrue(both < deviation(plain(ACETONE, third)) - 0.05);
        assertTrue(both < deviation(plain(ACETONE, base)) - 0.05);
    }

    private static double deviation(TraitPrior prior) {
        return Math.sqrt(prior.varianceC());
    }

    // Variances of what is apart add up; a structure that makes c less sure leaves its correlation with s.
    @Test
    void cAndSGoTogetherAroundALinkAsItSays() {
        AcrossPairs.Read read = read(ACETATE, 25, 0.4);
        double[][] around = {{0.25, 0.03}, {0.03, 0.01}};
        LinkedPair link = new LinkedPair(new double[][] {{1, 0, 0}, {0, 1, 0}}, new double[2], around);
        double from = Moments.of(read.after(), 2).covariance()[0][1];
        TraitPrior acetate = model(ACETATE).prior();
        assertEquals(from + 0.03, together(link.prior(read.after(), acetate)), 0.003);
        assertEquals(from + 0.06, together(link.moved(0, 1).prior(read.after(), acetate)), 0.006);
    }

    private static double together(TraitPrior prior) {
        return Moments.of(prior.cloud(), 2).covariance()[0][1];
    }

    @Test
    void pairsAreLinkedByWhatTheyBorrowFrom() {
        assertTrue(ACROSS.isLinked(ACETONE, TOLUENE));
        assertTrue(ACROSS.isLinked(ACETONE, ACETATE) && ACROSS.isLinked(METHANOL, ACETONE));
        assertFalse(ACROSS.isLinked(ACETONE, ACETONE));
        assertFalse(ACROSS.isLinked(measured("silica-hexane-water"), ACETATE));
        assertTrue(ACROSS.reaches(ACETONE, ACETATE, 9), "of one base any compound counts");
        assertFalse(ACROSS.reaches(ACETONE, METHANOL, 9), "such a compound was never measured in both");
    }

    private static GroupShift shift(String from, String to) {
        GroupDifference difference = TRAITS.differences().stream()
                .filter(each -> each.from().equals(from) && each.to().equals(to))
                .findFirst()
                .orElseThrow();
        return new GroupShift(PARTS, difference);
    }

    private static double deviationC(AcrossPairs.Place place) {
        return place.theory().map(TheoryPair::deviationC).orElseThrow();
    }
}
