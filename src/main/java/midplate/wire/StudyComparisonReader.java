package midplate.wire;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import midplate.identity.LaneRole;
import midplate.identity.SpotShape;
import midplate.notebook.ComparedCandidate;
import midplate.notebook.ComparisonPlate;
import midplate.notebook.StudyComparison;
import midplate.notebook.StudyPlate.Given;

/** Reads a sample beside references in a study, as it was entered. */
final class StudyComparisonReader {
    static final int MOST_COMPOUNDS = 50;
    static final int MOST_PLATES = 20;
    static final int MOST_LANES = 30;
    static final int MOST_READINGS = 50;

    static final List<String> COMPARISON = List.of("references", "candidates", "plates");
    static final List<String> PLATE =
            StudyChecksReader.with(StudyChecksReader.ELUENT, "id", "startMm", "frontMm", "lanes");
    static final List<String> LANE = List.of("id", "role", "readings");
    static final List<String> READING = List.of("id");
    static final List<String> READING_OPTIONAL = List.of("centreMm", "rf", "sizeMm", "shape");

    private static final List<String> ROLES =
            Stream.of(LaneRole.values()).map(LaneRole::id).toList();
    private static final List<String> SHAPES =
            Stream.of(SpotShape.values()).map(SpotShape::id).toList();

    private final StudyChecksReader parts;
    private final FaultList faults;
    private final StudyIds references;
    private final StudyIds candidates;
    private final Set<String> plates = new HashSet<>();
    private final Set<String> lanes = new HashSet<>();
    private final Set<String> readings = new HashSet<>();

    StudyComparisonReader(StudyChecksReader parts, FaultList faults) {
        this.parts = parts;
        this.faults = faults;
        this.references = new StudyIds("references", faults);
        this.candidates = new StudyIds("candidates", faults);
    }

    /** The comparison. */
    Optional<StudyComparison> read(String path, Json value) {
        return StudyFields.of(path, value, faults, COMPARISON, List.of())
                .map(fields -> new StudyComparison(
                        fields.each(
                                "references",
                                MOST_COMPOUNDS,
                                (place, came) -> StudyFields.of(
                                                place, came, faults, StudyChecksReader.COMPOUND, StudyChecksReader.SAID)
                                        .map(each -> parts.compound(each, references))),
                        fields.each("candidates", MOST_COMPOUNDS, this::candidate),
                        fields.each("plates", MOST_PLATES, this::plate)));
    }

    private Optional<ComparedCandidate> candidate(String path, Json value) {
        List<String> optional = StudyChecksReader.with(StudyChecksReader.SAID, "rf", "hrf");
        return StudyFields.of(path, value, faults, StudyChecksReader.COMPOUND, optional)
                .map(fields -> new ComparedCandidate(
                        parts.compound(fields, candidates), fields.enteredIfAny("rf"), fields.enteredIfAny("hrf")));
    }

    private Optional<ComparisonPlate> plate(String path, Json value) {
        return StudyFields.of(path, value, faults, PLATE, List.of("percentStrong"))
                .map(fields -> new ComparisonPlate(
                        fields.freshId("id", plates),
                        parts.eluent(fields),
                        fields.entered("startMm"),
                        fields.entered("frontMm"),
                        fields.each("lanes", MOST_LANES, this::lane)));
    }

    private Optional<ComparisonPlate.Lane> lane(String path, Json value) {
        return StudyFields.of(path, value, faults, LANE, List.of("reference")).map(fields -> {
            LaneRole role = LaneRole.values()[ROLES.indexOf(fields.choice("role", ROLES))];
            if (role != LaneRole.UNKNOWN) {
                fields.demand("reference");
            }
            return new ComparisonPlate.Lane(
                    fields.freshId("id", lanes),
                    role,
                    references.refer(fields, "reference"),
                    fields.each("readings", MOST_READINGS, this::reading));
        });
    }

    private Optional<ComparisonPlate.Reading> reading(String path, Json value) {
        return StudyFields.of(path, value, faults, READING, READING_OPTIONAL).map(fields -> {
            Given given = StudyPlateReader.given(fields, faults);
            return new ComparisonPlate.Reading(
                    fields.freshId("id", readings),
                    given,
                    fields.entered(given == Given.RF ? "rf" : "centreMm"),
                    fields.enteredIfAny("sizeMm"),
                    fields.any("shape").map(came -> shape(fields)));
        });
    }

    private static SpotShape shape(StudyFields fields) {
        return SpotShape.values()[SHAPES.indexOf(fields.choice("shape", SHAPES))];
    }
}
