package midplate.lesson;

import java.util.function.Function;
import midplate.advice.Consultation;
import midplate.advice.Question;
import midplate.catalogue.SolventCatalogue;

/**
 * What lessons compute with: the adviser itself, and the published data.
 *
 * @param catalogue the solvents
 * @param adviser learns what the plates of a question say; refuses two solvents of which not even theory exists
 */
public record LessonModel(SolventCatalogue catalogue, Function<Question, Consultation> adviser) {
    /** What is known of a sample before any plate. */
    public Consultation consult(LessonSample sample) {
        return adviser.apply(sample.question());
    }
}
