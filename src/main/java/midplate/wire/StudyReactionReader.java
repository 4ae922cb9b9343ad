package midplate.wire;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import midplate.notebook.ReactionPlate;
import midplate.notebook.ReactionSpecies;
import midplate.notebook.StudyReaction;
import midplate.words.Message;

/** Reads a reaction that is followed in a study, as it was entered. */
final class StudyReactionReader {
    static final int MOST_SPECIES = 30;
    static final int MOST_PLATES = 200;

    static final List<String> REACTION =
            StudyChecksReader.with(StudyChecksReader.ELUENT, "expectedMinutes", "species", "plates");
    static final List<String> SPECIES = StudyChecksReader.with(StudyChecksReader.COMPOUND, "part");
    static final List<String> PLATE = List.of("id", "minutes", "marks");
    static final List<String> MARK = List.of("species", "strength");

    private static final List<String> PARTS = Stream.of(ReactionSpecies.Part.values())
            .map(ReactionSpecies.Part::id)
            .toList();

    private final StudyChecksReader parts;
    private final FaultList faults;
    private final StudyIds species;
    private final Set<String> plates = new HashSet<>();

    StudyReactionReader(StudyChecksReader parts, FaultList faults) {
        this.parts = parts;
        this.faults = faults;
        this.species = new StudyIds("species", faults);
    }

    /** The reaction. */
    Optional<StudyReaction> read(String path, Json value) {
        return StudyFields.of(path, value, faults, REACTION, List.of("percentStrong"))
                .map(fields -> new StudyReaction(
                        fields.entered("expectedMinutes"),
                        parts.eluent(fields),
                        fields.each("species", MOST_SPECIES, this::species),
                        fields.each("plates", MOST_PLATES, this::plate)));
    }

    private Optional<ReactionSpecies> species(String path, Json value) {
        List<String> optional = StudyChecksReader.with(StudyChecksReader.SAID, "spot");
        return StudyFields.of(path, value, faults, SPECIES, optional)
                .map(fields -> new ReactionSpecies(
                        parts.compound(fields, species),
                        ReactionSpecies.Part.values()[PARTS.indexOf(fields.choice("part", PARTS))],
                        parts.spot(fields)));
    }

    private Optional<ReactionPlate> plate(String path, Json value) {
        return StudyFields.of(path, value, faults, PLATE, List.of("baseline")).map(fields -> {
            Set<String> marked = new HashSet<>();
            return new ReactionPlate(
                    fields.freshId("id", plates),
                    fields.entered("minutes"),
                    fields.each("marks", MOST_SPECIES, (place, mark) -> mark(place, mark, marked)),
                    fields.has("baseline")
                            ? OptionalInt.of(StudyStrength.of(fields, "baseline"))
                            : OptionalInt.empty());
        });
    }

    private Optional<ReactionPlate.Mark> mark(String path, Json value, Set<String> marked) {
        return StudyFields.of(path, value, faults, MARK, List.of("rf")).map(fields -> {
            Optional<String> of = species.refer(fields, "species");
            of.filter(id -> !marked.add(id))
                    .ifPresent(id -> fields.fault(
                            "species",
                            Message.of("fault.id-twice", "id", id),
                            Message.of("allowed.each-name-once"),
                            Message.of("todo.keep-one")));
            return new ReactionPlate.Mark(
                    of.orElse(""), StudyStrength.of(fields, "strength"), fields.enteredIfAny("rf"));
        });
    }
}
