package midplate.identity;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What the plates of a reaction show, spot by spot. */
final class ReactionSight {
    private final ReactionQuestion question;
    private final String start;

    ReactionSight(ReactionQuestion question, ReactionSpecies start) {
        this.question = question;
        this.start = start.name();
    }

    /** The reaction. */
    ReactionQuestion question() {
        return question;
    }

    /** The starting material that counts. */
    String startName() {
        return start;
    }

    /** The product that counts, where one is named. */
    Optional<String> productName() {
        return question.first(SpeciesPart.PRODUCT).map(ReactionSpecies::name);
    }

    /** The latest plate. */
    ReactionPlate last() {
        return question.plates().get(question.plates().size() - 1);
    }

    /** The plates on which a spot was looked for. */
    List<ReactionPlate> with(String species) {
        return question.plates().stream()
                .filter(plate -> plate.grade(species).isPresent())
                .toList();
    }

    /** How strongly a spot was seen last. */
    OptionalInt latest(String species) {
        List<ReactionPlate> plates = with(species);
        return plates.isEmpty()
                ? OptionalInt.empty()
                : plates.get(plates.size() - 1).grade(species);
    }

    /** How strongly a spot was seen at most; 0 where it never was. */
    int most(String species) {
        return with(species).stream()
                .mapToInt(plate -> plate.grade(species).orElseThrow())
                .max()
                .orElse(ReactionMark.UNSEEN);
    }

    /** Whether a spot was looked for, and on no plate seen. */
    boolean isNeverSeen(String species) {
        return !with(species).isEmpty() && most(species) == ReactionMark.UNSEEN;
    }

    /** Whether the latest plate is the only one, of those since a spot was last seen, on which it was looked for. */
    boolean isUnseenOnce(String species) {
        List<ReactionPlate> plates = with(species);
        int before = plates.size() - 2;
        return latest(species).orElse(ReactionMark.FULL) == ReactionMark.UNSEEN
                && (before < 0 || plates.get(before).grade(species).orElseThrow() > ReactionMark.UNSEEN);
    }

    /** The strongest of the other spots and of what stays at the start line that is stronger here than when first looked at. */
    int risenOther(ReactionPlate plate) {
        int strongest = ReactionMark.UNSEEN;
        for (ReactionSpecies species : question.of(SpeciesPart.OTHER)) {
            List<ReactionPlate> plates = with(species.name());
            int grade = plate.grade(species.name()).orElse(ReactionMark.UNSEEN);
            if (!plates.isEmpty() && grade > plates.get(0).grade(species.name()).orElseThrow()) {
                strongest = Math.max(strongest, grade);
            }
        }
        int line = plate.baseline().orElse(ReactionMark.UNSEEN);
        return line > firstBaseline() ? Math.max(strongest, line) : strongest;
    }

    /**
     * Another spot on the latest plate that came with the reaction and is plain, and either stronger than the product or on its way down: it
     * may still become the product, or be what came in its place.
     */
    Optional<String> plainOther() {
        int product = productName().map(name -> latest(name).orElse(0)).orElse(0);
        return question.of(SpeciesPart.OTHER).stream()
                .map(ReactionSpecies::name)
                .filter(name -> {
                    int now = last().grade(name).orElse(ReactionMark.UNSEEN);
                    List<ReactionPlate> plates = with(name);
                    return now >= ReactionMark.PLAIN
                            && now > plates.get(0).grade(name).orElseThrow()
                            && (now > product || now < most(name));
                })
                .findFirst();
    }

    /** What stayed at the start line when that was first looked at. */
    int firstBaseline() {
        return question.plates().stream()
                .flatMapToInt(plate -> plate.baseline().stream())
                .findFirst()
                .orElse(ReactionMark.UNSEEN);
    }
}
