package midplate.wire;

import java.util.List;
import java.util.function.Function;
import midplate.advice.Consultation;
import midplate.advice.Question;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.WaysOfSeeing;
import midplate.identity.Compound;
import midplate.identity.PartingEluents;
import midplate.identity.Purity;
import midplate.identity.PurityQuestion;
import midplate.identity.Seeing;
import midplate.identity.SeeingAnswer;
import midplate.plate.Setting;
import midplate.words.Texts;

/**
 * How to see compounds and what a plate says of purity, as they are asked and answered, in one language.
 *
 * <p>Each method throws {@link BadInput} with all faults of an input it cannot take.
 */
public final class SightAnswers {
    private final SolventCatalogue catalogue;
    private final Compounds compounds;
    private final Function<Question, Consultation> adviser;
    private final PartingEluents parting;
    private final Speech speech;
    private final Texts texts;

    SightAnswers(
            SolventCatalogue catalogue,
            Compounds compounds,
            Function<Question, Consultation> adviser,
            PartingEluents parting,
            Speech speech) {
        this.catalogue = catalogue;
        this.compounds = compounds;
        this.adviser = adviser;
        this.parting = parting;
        this.speech = speech;
        this.texts = speech.texts();
    }

    /** How to see compounds, asked in UTF-8. */
    public String seeing(byte[] json) {
        FaultList faults = new FaultList(texts);
        return seeing(JsonText.decoded(json, faults), faults);
    }

    /** How to see compounds. */
    public String seeing(String json) {
        return seeing(json, new FaultList(texts));
    }

    private String seeing(String json, FaultList faults) {
        return new SeeingWriter(speech).write(seen(json, faults));
    }

    /** The same for a door that says it in words. */
    public SeeingAnswer seen(String json) {
        return seen(json, new FaultList(texts));
    }

    private SeeingAnswer seen(String json, FaultList faults) {
        List<Compound> read = new SeeingReader(compounds, faults).read(JsonText.read(json, faults));
        return Seeing.of(WaysOfSeeing.builtIn()).look(read);
    }

    /** What a plate says of purity, asked in UTF-8. */
    public String purity(byte[] json) {
        FaultList faults = new FaultList(texts);
        return purity(JsonText.decoded(json, faults), faults);
    }

    /** What a plate says of purity. */
    public String purity(String json) {
        return purity(json, new FaultList(texts));
    }

    private String purity(String json, FaultList faults) {
        WaysOfSeeing ways = WaysOfSeeing.builtIn();
        PurityQuestion question = new PurityReader(
                        new EluentReader(catalogue, Setting.BENCH, faults), compounds, ways, faults)
                .read(JsonText.read(json, faults));
        return Exchange.told(
                faults,
                () -> new PurityWriter(texts)
                        .write(Purity.of(ways, adviser, parting).judge(question)));
    }
}
