package midplate.notebook;

import java.util.List;
import java.util.stream.Stream;

/**
 * A sample beside references.
 *
 * @param references what runs beside it, by ids to which lanes refer
 * @param candidates what else it might be
 * @param plates in the order they were run
 */
public record StudyComparison(
        List<StudySpot> references, List<ComparedCandidate> candidates, List<ComparisonPlate> plates) {
    /** Keeps its own copies. */
    public StudyComparison {
        references = List.copyOf(references);
        candidates = List.copyOf(candidates);
        plates = List.copyOf(plates);
    }

    /** The names of references and candidates. */
    Stream<String> names() {
        return Stream.concat(references.stream(), candidates.stream().map(ComparedCandidate::compound))
                .map(StudySpot::name);
    }
}
