package midplate.notebook;

import java.time.Instant;
import java.util.List;
import midplate.notebook.Study.Keeping;
import midplate.notebook.Study.Origin;
import midplate.words.Message;

/**
 * What a list shows of a study.
 *
 * @param id its name among all studies
 * @param title what a person calls it; may be empty
 * @param created when it was first kept
 * @param modified when it was last kept
 * @param keeping whether it is at hand or put away
 * @param origin whose plates they are
 * @param plates how many were run
 * @param spots the names of its compounds
 * @param tag of the file it stands in
 * @param notices what a person should know of that file
 * @param scored what became of each of its advices
 */
public record StudySummary(
        StudyId id,
        String title,
        Instant created,
        Instant modified,
        Keeping keeping,
        Origin origin,
        int plates,
        List<String> spots,
        StudyTag tag,
        List<Message> notices,
        List<ScoredAdvice> scored) {
    /** Keeps its own copies. */
    public StudySummary {
        spots = List.copyOf(spots);
        notices = List.copyOf(notices);
        scored = List.copyOf(scored);
    }

    /** The summary of a study. */
    static StudySummary of(KeptStudy kept) {
        Study study = kept.study();
        return new StudySummary(
                study.id(),
                study.title(),
                study.created(),
                study.modified(),
                study.keeping(),
                study.origin(),
                study.plates().size(),
                study.spots().stream().map(StudySpot::name).toList(),
                kept.tag(),
                kept.notices(),
                AdviceOutcomes.of(study));
    }
}
