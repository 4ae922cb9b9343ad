package midplate.notebook;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * What plates were asked beside the search for an eluent; each part is absent while nobody thought of it.
 *
 * @param identity a sample beside references
 * @param purity what is known of a spot that may be pure
 * @param hrf reference spots by which hRf are corrected
 * @param reaction a reaction that is followed
 */
public record StudyChecks(
        Optional<StudyComparison> identity,
        Optional<StudyPurity> purity,
        Optional<StudyHrf> hrf,
        Optional<StudyReaction> reaction) {
    /** The names that a person gave in them. */
    Stream<String> names() {
        return Stream.of(
                        identity.stream().flatMap(StudyComparison::names),
                        hrf.stream().flatMap(each -> each.spots().stream()).map(StudyHrf.Spot::name),
                        reaction.stream()
                                .flatMap(each -> each.species().stream())
                                .map(each -> each.compound().name()))
                .flatMap(each -> each);
    }
}
