package midplate.wire;

import java.util.List;
import java.util.function.Function;
import midplate.advice.Consultation;
import midplate.advice.Question;
import midplate.catalogue.ColumnLaw;
import midplate.catalogue.SolventCatalogue;
import midplate.column.BandLaw;
import midplate.column.ColumnForecast;
import midplate.column.ColumnPlan;
import midplate.column.ColumnPlanner;
import midplate.column.FractionPooling;
import midplate.plate.Setting;
import midplate.words.Texts;

/**
 * Columns as they are asked for and answered, in one language.
 *
 * <p>Each method throws {@link BadInput} with all faults of an input it cannot take.
 */
public final class ColumnAnswers {
    private final SolventCatalogue catalogue;
    private final Compounds compounds;
    private final Function<Question, Consultation> adviser;
    private final ColumnLaw law;
    private final Texts texts;

    ColumnAnswers(
            SolventCatalogue catalogue,
            Compounds compounds,
            Function<Question, Consultation> adviser,
            ColumnLaw law,
            Texts texts) {
        this.catalogue = catalogue;
        this.compounds = compounds;
        this.adviser = adviser;
        this.law = law;
        this.texts = texts;
    }

    /** What to do on a column, in UTF-8; the setting is taken where the request names none. */
    public String plan(byte[] json, Setting ifUnsaid) {
        FaultList faults = new FaultList(texts);
        return plan(JsonText.read(JsonText.decoded(json, faults), faults), ifUnsaid, faults)
                .json();
    }

    /** What to do on a column; the setting is taken where the request names none. */
    public ColumnAnswer plan(String json, Setting ifUnsaid) {
        FaultList faults = new FaultList(texts);
        return plan(JsonText.read(json, faults), ifUnsaid, faults);
    }

    ColumnAnswer plan(Json request, Setting ifUnsaid, FaultList faults) {
        AskedColumn asked = new ColumnQuestionReader(catalogue, compounds, ifUnsaid, faults).read(request);
        Question sample = asked.question().sample();
        return Exchange.told(faults, () -> {
            Consultation plates = adviser.apply(sample);
            BandLaw bands = ColumnForecast.of(
                    law, sample, plates.knowledge(), asked.question().earlier());
            ColumnPlanner planner = ColumnPlanner.of(catalogue);
            ColumnPlan plan = planner.plan(asked.question(), bands, plates);
            List<ColumnPlan.Prediction> predictions =
                    planner.predict(asked.question(), bands, plan.bed(), asked.predictAt());
            return new ColumnAnswer(
                    asked.question(),
                    plan,
                    asked.asked().notes(),
                    new ColumnPlanWriter(texts).write(asked, plan, predictions));
        });
    }

    /** Which tubes to pour together, and what the run says, in UTF-8. */
    public String fractions(byte[] json) {
        FaultList faults = new FaultList(texts);
        return fractions(JsonText.decoded(json, faults), faults);
    }

    /** Which tubes to pour together, and what the run says. */
    public String fractions(String json) {
        return fractions(json, new FaultList(texts));
    }

    private String fractions(String json, FaultList faults) {
        FractionsReader.Run run = new FractionsReader(faults).read(JsonText.read(json, faults));
        return Exchange.told(faults, () -> new FractionsWriter(texts).write(run, FractionPooling.pool(run.question())));
    }
}
