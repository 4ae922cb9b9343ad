package midplate.wire;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.UnaryOperator;
import midplate.identity.LaneRole;
import midplate.identity.SpotShape;
import midplate.notebook.ComparedCandidate;
import midplate.notebook.ComparisonPlate;
import midplate.notebook.Entered;
import midplate.notebook.ReactionPlate;
import midplate.notebook.ReactionSpecies;
import midplate.notebook.StudyChecks;
import midplate.notebook.StudyComparison;
import midplate.notebook.StudyHrf;
import midplate.notebook.StudyPlate;
import midplate.notebook.StudyPurity;
import midplate.notebook.StudyReaction;
import midplate.notebook.StudySpot;
import midplate.notebook.TubeMark;

/** Invented checks for {@link RandomStudies}. */
final class RandomChecks {
    private final RandomStudies values;
    private final Random random;
    private final UnaryOperator<String> names;

    /** @param names gives an id with that letter before it that nothing of the study has */
    RandomChecks(RandomStudies values, Random random, UnaryOperator<String> names) {
        this.values = values;
        this.random = random;
        this.names = names;
    }

    StudyChecks next(List<String> spots) {
        return new StudyChecks(
                values.perhaps(this::comparison),
                values.perhaps(() -> purity(spots)),
                values.perhaps(this::hrf),
                values.perhaps(() -> reaction(spots)));
    }

    private StudySpot compound(String letter) {
        return new StudySpot(names.apply(letter), values.one(RandomStudies.ODD), values.perhaps(values::identity));
    }

    private StudyComparison comparison() {
        List<StudySpot> references = values.some(4, () -> compound("k"));
        List<String> ids = references.stream().map(StudySpot::id).toList();
        return new StudyComparison(
                references,
                values.some(
                        3,
                        () -> new ComparedCandidate(
                                compound("n"), values.perhaps(values::entered), values.perhaps(values::entered))),
                values.some(
                        3,
                        () -> new ComparisonPlate(
                                names.apply("i"),
                                values.eluent(),
                                values.entered(),
                                values.entered(),
                                values.some(5, () -> lane(ids)))));
    }

    private ComparisonPlate.Lane lane(List<String> references) {
        LaneRole role = references.isEmpty() ? LaneRole.UNKNOWN : values.one(List.of(LaneRole.values()));
        return new ComparisonPlate.Lane(
                names.apply("l"),
                role,
                role == LaneRole.UNKNOWN ? Optional.empty() : Optional.of(values.one(references)),
                values.some(
                        3,
                        () -> new ComparisonPlate.Reading(
                                names.apply("e"),
                                values.one(List.of(StudyPlate.Given.values())),
                                values.entered(),
                                values.perhaps(values::entered),
                                values.perhaps(() -> values.one(List.of(SpotShape.values()))))));
    }

    private StudyPurity purity(List<String> spots) {
        return new StudyPurity(
                values.perhaps(() -> values.one(spots)),
                values.entered(),
                values.entered(),
                values.chosen(List.of("uv-254", "iodine", "permanganate", "of_a_later-table"), 3),
                values.entered(),
                values.entered(),
                values.entered(),
                values.perhaps(() -> values.one(List.of(StudyPurity.AtStart.values()))));
    }

    private StudyHrf hrf() {
        Map<String, Entered> measured = new LinkedHashMap<>();
        values.chosen(RandomStudies.ODD, 4).forEach(name -> measured.put(name, values.entered()));
        return new StudyHrf(
                values.one(RandomStudies.ODD),
                measured,
                values.some(
                        3, () -> new StudyHrf.Spot(names.apply("h"), values.one(RandomStudies.ODD), values.entered())));
    }

    private StudyReaction reaction(List<String> spots) {
        List<ReactionSpecies> species = values.some(
                4,
                () -> new ReactionSpecies(
                        compound("x"),
                        values.one(List.of(ReactionSpecies.Part.values())),
                        values.perhaps(() -> values.one(spots))));
        List<String> ids = species.stream().map(each -> each.compound().id()).toList();
        return new StudyReaction(
                values.entered(),
                values.eluent(),
                species,
                values.some(
                        6,
                        () -> new ReactionPlate(
                                names.apply("t"),
                                values.entered(),
                                marks(ids),
                                random.nextBoolean() ? OptionalInt.of(grade()) : OptionalInt.empty())));
    }

    private int grade() {
        return random.nextInt(TubeMark.STRONGEST + 1);
    }

    private List<ReactionPlate.Mark> marks(List<String> species) {
        return values.chosen(species, 3).stream()
                .map(each -> new ReactionPlate.Mark(each, grade(), values.perhaps(values::entered)))
                .toList();
    }
}
