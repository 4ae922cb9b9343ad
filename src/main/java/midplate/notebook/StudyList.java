package midplate.notebook;

import java.util.List;

/**
 * A part of the studies in the folder, the newest first.
 *
 * @param total how many the search found in all
 * @param studies those of the part asked for
 * @param troubles files that are no studies at hand, of the whole folder
 */
public record StudyList(int total, List<StudySummary> studies, List<FolderTrouble> troubles) {
    /** Keeps its own copies. */
    public StudyList {
        studies = List.copyOf(studies);
        troubles = List.copyOf(troubles);
    }
}
