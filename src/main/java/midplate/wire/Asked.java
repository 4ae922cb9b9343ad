package midplate.wire;

import java.util.List;
import midplate.advice.Question;

/**
 * A request for advice, read without a fault.
 *
 * @param id what the answer is to be called by: a text, a number, or null
 * @param question what is asked
 * @param predictAt shares of the stronger solvent to foretell [% v/v]
 * @param curves whether every ratio is to be told
 * @param notes what the reading itself has to say
 * @param structures what spots are said to be
 */
record Asked(
        Json id,
        Question question,
        List<Double> predictAt,
        CurvesWanted curves,
        List<Note> notes,
        List<SpotStructure> structures) {
    /** Whether every ratio is to be told. */
    enum CurvesWanted {
        YES,
        NO
    }

    Asked {
        predictAt = List.copyOf(predictAt);
        notes = List.copyOf(notes);
        structures = List.copyOf(structures);
    }
}
