package midplate.wire;

import com.fasterxml.jackson.databind.node.ObjectNode;
import midplate.catalogue.HrfSystems;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.WaysOfSeeing;
import midplate.identity.HrfCorrection;
import midplate.identity.IdentityAnswer;
import midplate.identity.IdentityQuestion;
import midplate.identity.SameOrNot;

/**
 * Whether a sample is one of its references, and hRf corrected by reference spots, as they are asked and answered, in one language.
 *
 * <p>Each method throws {@link BadInput} with all faults of an input it cannot take.
 */
public final class CheckAnswers {
    private final SolventCatalogue catalogue;
    private final Compounds compounds;
    private final SameOrNot same;
    private final Speech speech;

    CheckAnswers(SolventCatalogue catalogue, Compounds compounds, SameOrNot same, Speech speech) {
        this.catalogue = catalogue;
        this.compounds = compounds;
        this.same = same;
        this.speech = speech;
    }

    /**
     * What plates say of a sample beside its references, for doors that say it in words and for those that send JSON.
     *
     * @param question what was asked
     * @param answer what is said
     * @param json the answer to send
     */
    public record Compared(IdentityQuestion question, IdentityAnswer answer, String json) {}

    /** What plates say of a sample beside its references, asked in UTF-8. */
    public String identity(byte[] json) {
        FaultList faults = new FaultList(speech.texts());
        return identity(JsonText.decoded(json, faults), faults).json();
    }

    /** What plates say of a sample beside its references. */
    public Compared identity(String json) {
        return identity(json, new FaultList(speech.texts()));
    }

    private Compared identity(String json, FaultList faults) {
        IdentityQuestion question = new IdentityReader(catalogue, compounds, faults).read(JsonText.read(json, faults));
        return Exchange.told(faults, () -> {
            IdentityAnswer answer = same.judge(question);
            return new Compared(question, answer, new IdentityWriter(speech.texts()).write(answer));
        });
    }

    /** HRf corrected by reference spots, asked in UTF-8. */
    public String hrf(byte[] json) {
        FaultList faults = new FaultList(speech.texts());
        return hrf(JsonText.decoded(json, faults), faults);
    }

    /** HRf corrected by reference spots. */
    public String hrf(String json) {
        return hrf(json, new FaultList(speech.texts()));
    }

    private String hrf(String json, FaultList faults) {
        HrfSystems systems = HrfSystems.builtIn();
        var question = new HrfReader(systems, faults).read(JsonText.read(json, faults));
        return Exchange.told(
                faults,
                () -> new HrfWriter(speech).write(HrfCorrection.of(systems).correct(question)));
    }

    /** What checks choose from: the systems with reference spots, and the ways of seeing. */
    public String tables() {
        ObjectNode tables = JsonWriting.object();
        tables.set(
                "hrfSystems", new HrfWriter(speech).systems(HrfSystems.builtIn().all()));
        tables.set("ways", new WaysWriter(speech).table(WaysOfSeeing.builtIn()));
        return JsonWriting.text(tables);
    }
}
