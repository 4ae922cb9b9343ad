package midplate.wire;

import java.nio.file.Path;
import java.util.List;
import midplate.advice.Advice;
import midplate.advice.Adviser;
import midplate.advice.Curves;
import midplate.advice.Forecast;
import midplate.advice.Question;
import midplate.catalogue.SolventCatalogue;

/** Whoever answers questions: the adviser, or in a test of the doors a stand-in with fixed answers. */
interface Advising {
    Advice advise(Question question);

    List<Forecast> predict(Question question, List<Double> percentStrong);

    Curves curves(Question question);

    /** An adviser with the curves in a folder. */
    static Advising calibrated(SolventCatalogue catalogue, Path curves) {
        return by(Adviser.of(catalogue, curves));
    }

    /** The adviser. */
    static Advising by(Adviser adviser) {
        return new Advising() {
            @Override
            public Advice advise(Question question) {
                return adviser.advise(question);
            }

            @Override
            public List<Forecast> predict(Question question, List<Double> percentStrong) {
                return adviser.predict(question, percentStrong);
            }

            @Override
            public Curves curves(Question question) {
                return adviser.curves(question);
            }
        };
    }
}
