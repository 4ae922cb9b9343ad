package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import midplate.catalogue.Basis;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.GroupDifference;
import midplate.catalogue.Source;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Own algebra on invented groups. */
@DisplayName("What groups do in one pair beyond another")
class GroupShiftTest {
    private static final Source SOURCE = new Source("Invented2000", "invented", "2000", Optional.empty());

    private static FunctionalGroup group(String id) {
        return new FunctionalGroup(
                id, FunctionalGroup.Kind.GROUP, 4, Basis.MEMORY, "", SOURCE, List.of(), "invented", "C");
    }

    private static final MoleculeParts PARTS =
            new MoleculeParts(new FunctionalGroups(List.of(group("one"), group("two"), group("three"))));
    /** Of one and three; two was never seen. */
    private static final GroupShift SHIFT = new GroupShift(
            PARTS,
            new GroupDifference(
                    "a",
                    "b",
                    List.of(
                            new GroupDifference.Part("constant", 0.1, 30),
                            new GroupDifference.Part("one", -0.4, 9),
                            new GroupDifference.Part("three", 0.3, 4)),
                    List.of(0.01, 0.002, 0.05, 0.0, -0.01, 0.09),
                    0.25,
                    0.16,
                    30));

    @Test
    void isTheSumOfWhatIsThere() {
        assertEquals(0.1 - 0.8, SHIFT.shift(new double[] {1, 2, 0, 0, 0}), 1e-12);
        assertEquals(0.1 - 0.4 + 0.3, SHIFT.shift(new double[] {1, 1, 5, 1, 0}), 1e-12);
    }

    @Test
    void isAsSureAsItsPartsTogether() {
        double seen = 0.16 + 0.01 + 2 * 2 * 0.002 + 4 * 0.05;
        assertEquals(seen, SHIFT.variance(new double[] {1, 2, 0, 0, 0}), 1e-12);
        assertEquals(seen + 9 * 0.25, SHIFT.variance(new double[] {1, 2, 3, 0, 0}), 1e-12);
        assertEquals(
                0.16 + 0.01 + 0.05 + 0.09 + 2 * 0.002 - 2 * 0.01, SHIFT.variance(new double[] {1, 1, 0, 1, 0}), 1e-12);
    }
}
