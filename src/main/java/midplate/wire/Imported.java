package midplate.wire;

import java.util.List;
import midplate.notebook.Study;
import midplate.notebook.StudyPlate;
import midplate.notebook.StudySpot;
import midplate.words.Message;

/** What was found in a file that somebody brought. Nothing of it is kept until the page sends it to be kept. */
sealed interface Imported {
    /**
     * A study.
     *
     * @param study as it stands in the file, in the newest version
     * @param notes what to know of it
     */
    record WholeStudy(Study study, List<Message> notes) implements Imported {}

    /**
     * Plates out of a table.
     *
     * @param plan which column holds what
     * @param decimal what stands before decimals
     * @param delimiter what parts the cells
     * @param spots those of the study they are read into, then the new ones
     * @param plates the plates
     * @param read the rows, with those that were not taken
     * @param notes what to know of them
     */
    record Runs(
            ColumnPlan plan,
            TableNumbers.Decimal decimal,
            char delimiter,
            List<StudySpot> spots,
            List<StudyPlate> plates,
            RunRows read,
            List<Message> notes)
            implements Imported {}
}
