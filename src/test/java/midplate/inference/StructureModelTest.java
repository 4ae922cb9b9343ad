package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.catalogue.Basis;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.GroupEffects;
import midplate.catalogue.JointTraits;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.Source;
import midplate.chemistry.GroupCounts;
import midplate.plate.Reading;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What a structure says before any plate")
class StructureModelTest {
    private static final Source SOURCE = new Source("Invented2000", "invented", "2000", Optional.empty());
    private static final FunctionalGroups GROUPS = new FunctionalGroups(List.of(
            new FunctionalGroup(
                    "carbon", FunctionalGroup.Kind.SIZE, 0, Basis.OWN, "", SOURCE, List.of(), "invented", "C"),
            new FunctionalGroup(
                    "often", FunctionalGroup.Kind.GROUP, 4, Basis.OWN, "", SOURCE, List.of(), "invented", "O"),
            new FunctionalGroup(
                    "rare", FunctionalGroup.Kind.GROUP, 6, Basis.OWN, "", SOURCE, List.of(), "invented", "N")));

    /** Invented effects: c = 2 + 0.1 for each carbon − 2 for each "often" − 3 for each "rare" + 1 for a further group. */
    private static final GroupEffects EFFECTS = new GroupEffects(
            Plates.ACETATE,
            List.of(
                    new GroupEffects.Effect(GroupEffects.CONSTANT, 2, 1, 100, 1),
                    new GroupEffects.Effect("carbon", 0.1, 0, 90, 20),
                    new GroupEffects.Effect("often", -2, 0, 50, 2),
                    new GroupEffects.Effect("rare", -3, 0.1, 2, 1),
                    new GroupEffects.Effect(GroupEffects.FURTHER, 1, 0, 30, 2)),
            0.5,
            diagonal(0.01, 0.0001, 0.01, 0.25, 0.01),
            diagonal(0.001, 0, 0.001, 0.001, 0.001),
            0.16,
            0.01,
            List.of(new GroupEffects.Typical("carbon", 6, 9)),
            0.5,
            0.01,
            100);

    private static final JointTraits PACKED =
            MeasuredPairs.builtIn(SolventCatalogue.builtIn()).joint().orElseThrow();
    /** As packed, without what other groups than these do. */
    private static final JointTraits JOINT = new JointTraits(
            PACKED.axes(), PACKED.means(), PACKED.covariance(), PACKED.reaches(), PACKED.width(), List.of());

    private static final PlateModels MODELS = PlateModels.of(
            new MeasuredPairs(
                    MeasuredPairs.builtIn(SolventCatalogue.builtIn()).pairs(), Optional.of(JOINT), List.of(EFFECTS)),
            GROUPS);

    private static List<Double> diagonal(double... variances) {
        List<Double> triangle = new ArrayList<>();
        for (int i = 0; i < variances.length; i++) {
            triangle.addAll(Collections.nCopies(i, 0.0));
            triangle.add(variances[i]);
        }
        return triangle;
    }

    private static GroupCounts counts(GroupCounts.Detail detail, Map<String, Integer> counts) {
        return new GroupCounts(counts, detail);
    }

    private static GroupCounts whole(Map<String, Integer> counts) {
        return counts(GroupCounts.Detail.WHOLE, counts);
    }

    private static StructureForecast forecast(GroupCounts counts) {
        return MODELS.forecast(Plates.ACETATE, counts).orElseThrow();
    }

    private static Outlook outlook(GroupCounts counts, PlateRun... runs) {
        Knowledge knowledge =
                MODELS.learn(Plates.ACETATE, Setting.AUTOMATED, List.of("A"), List.of(runs), Map.of("A", counts));
        return MODELS.outlook(knowledge, Setting.AUTOMATED, 0.2, 0.8);
    }

    // Own algebra from the invented effects.
    @Test
    void theTraitsAreSumsOverTheParts() {
        StructureForecast one = forecast(whole(Map.of("carbon", 7, "often", 1)));
        assertEquals(2 + 0.7 - 2, one.c(), 1e-12);
        assertEquals(0.16 + 0.01 + 49 * 0.0001 + 0.01, one.varianceC(), 1e-12);
        StructureForecast two = forecast(whole(Map.of("often", 1, "rare", 1)));
        assertEquals(2 - 2 - 3 + 4 / 5.0, two.c(), 1e-12, "the weaker of two counts as a further group");
        assertEquals(1.1, two.s(), 1e-12);
        assertEquals("rare", two.heldBy().orElseThrow().id());
        assertEquals(
                List.of("rare"),
                two.rare().stream().map(StructureForecast.Part::id).toList());
        assertTrue(one.rare().isEmpty());
        assertTrue(two.varianceC() > one.varianceC() + 0.2, "a rare group is known worse");
    }

    // With an internal bond that takes 1.5 off each of its "rare" groups, −3 becomes −1.5, less than the −2 of "often".
    @Test
    void whatSurroundsAGroupCountsWithItWhereNoneStandsFree() {
        FunctionalGroups groups = new FunctionalGroups(List.of(
                GROUPS.all().get(0),
                GROUPS.all().get(1),
                GROUPS.all().get(2),
                new FunctionalGroup(
                        "bond",
                        FunctionalGroup.Kind.SURROUNDING,
                        0,
                        Basis.OWN,
                        "",
                        SOURCE,
                        List.of("rare"),
                        "invented",
                        "N")));
        List<StructureForecast.Part> parts = List.of(
                new StructureForecast.Part("often", 1, -2, 0.1, 50),
                new StructureForecast.Part("rare", 1, -3, 0.1, 2),
                new StructureForecast.Part("bond", 1, 1.5, 0.1, 2));
        assertEquals(
                "often",
                HeldBy.of(groups, whole(Map.of("often", 1, "rare", 1, "bond", 1)), parts)
                        .orElseThrow()
                        .id());
        assertEquals(
                "rare",
                HeldBy.of(groups, whole(Map.of("often", 1, "rare", 2, "bond", 1)), parts)
                        .orElseThrow()
                        .id(),
                "one of the two stands free");
        assertTrue(
                HeldBy.of(groups, whole(Map.of("bond", 1)), parts.subList(2, 3)).isEmpty());
    }

    // Own algebra: ten carbons beyond the largest compound, each evenly between 0 and 0.2, all alike: variance
    // (10·0.1)²/3.
    @Test
    void moreOfAPartThanWasMeasuredWidens() {
        double inside = forecast(whole(Map.of("carbon", 20))).varianceC();
        double beyond = forecast(whole(Map.of("carbon", 30))).varianceC();
        assertEquals((900 - 400) * 0.0001 + 1 / 3.0, beyond - inside, 1e-12);
        assertEquals(5, forecast(whole(Map.of("carbon", 30))).c(), 1e-12, "the middle goes on in a line");
    }

    @Test
    void whatIsNotKnownOfAStructureWidens() {
        StructureForecast whole = forecast(whole(Map.of("carbon", 6, "often", 1)));
        StructureForecast groups = forecast(counts(GroupCounts.Detail.GROUPS, Map.of("often", 1)));
        StructureForecast compoundClass = forecast(counts(GroupCounts.Detail.CLASS, Map.of("often", 1)));
        assertEquals(whole.c(), groups.c(), 1e-12);
        assertEquals(whole.varianceC() + 0.01 * 9, groups.varianceC(), 1e-12);
        assertEquals(groups.varianceC() + 0.5, compoundClass.varianceC(), 1e-12);
        assertEquals(
                whole.varianceC(),
                forecast(counts(GroupCounts.Detail.GROUPS, Map.of("often", 1, "carbon", 6)))
                        .varianceC(),
                1e-12,
                "carbons that were said are known");
    }

    // At the reference share G is 0, and so is L: there η = c.
    @Test
    void theFirstPlateIsForetoldFromTheStructure() {
        Outlook outlook = outlook(whole(Map.of("carbon", 7, "often", 1)));
        assertEquals(1 / (1 + Math.exp(-0.7)), outlook.spot(0, 25).rf(), 0.02);
        Knowledge unknown = MODELS.learn(Plates.ACETATE, Setting.AUTOMATED, List.of("A"), List.of());
        Outlook without = MODELS.outlook(unknown, Setting.AUTOMATED, 0.2, 0.8);
        assertTrue(outlook.spot(0, 25).high() - outlook.spot(0, 25).low()
                < without.spot(0, 25).high() - without.spot(0, 25).low());
    }

    @Test
    void aReadingThatContradictsTheStructureWins() {
        GroupCounts held = whole(Map.of("carbon", 6, "rare", 1));
        assertTrue(outlook(held).spot(0, 25).rf() < 0.45);
        PlateRun high = new PlateRun(Plates.ACETATE, 25, Map.of("A", Reading.of(0.9)));
        assertEquals(0.9, outlook(held, high).spot(0, 25).rf(), 0.05);
        PlateRun low = new PlateRun(Plates.ACETATE, 25, Map.of("A", Reading.of(0.5)));
        assertEquals(0.5, outlook(whole(Map.of("carbon", 20)), low).spot(0, 25).rf(), 0.06);
    }

    @Test
    void aReadingThatSaysLittleIsHelpedByTheStructure() {
        PlateRun atStart = new PlateRun(Plates.ACETATE, 0, Map.of("A", Reading.of(0.0)));
        Outlook told = outlook(whole(Map.of("carbon", 7, "often", 1)), atStart);
        Knowledge read = MODELS.learn(Plates.ACETATE, Setting.AUTOMATED, List.of("A"), List.of(atStart));
        Outlook untold = MODELS.outlook(read, Setting.AUTOMATED, 0.2, 0.8);
        double narrower = told.spot(0, 25).high() - told.spot(0, 25).low();
        assertTrue(
                narrower < 0.7 * (untold.spot(0, 25).high() - untold.spot(0, 25).low()));
    }

    @Test
    void inAPairWithoutFittedEffectsAStructureSaysNothing() {
        String methanol = "silica-dichloromethane-methanol";
        GroupCounts counts = whole(Map.of("often", 1));
        assertTrue(MODELS.forecast(methanol, counts).isEmpty());
        assertEquals(
                MODELS.learn(methanol, Setting.AUTOMATED, List.of("A"), List.of())
                        .meanC(0),
                MODELS.learn(methanol, Setting.AUTOMATED, List.of("A"), List.of(), Map.of("A", counts))
                        .meanC(0),
                1e-12);
    }

    @Test
    void effectsOfOtherGroupsAreRefused() {
        FunctionalGroups fewer = new FunctionalGroups(GROUPS.all().subList(0, 2));
        MeasuredPairs measured = new MeasuredPairs(
                MeasuredPairs.builtIn(SolventCatalogue.builtIn()).pairs(), Optional.empty(), List.of(EFFECTS));
        Exception refused = assertThrows(IllegalArgumentException.class, () -> PlateModels.of(measured, fewer));
        assertTrue(refused.getMessage().contains("groups.csv"), refused.getMessage());
    }
}
