package midplate.wire;

import midplate.catalogue.SolventCatalogue;
import midplate.identity.PartingEluents;
import midplate.identity.ReactionCourse;
import midplate.identity.ReactionQuestion;
import midplate.words.Texts;

/**
 * Reactions as they are asked about and answered, in one language.
 *
 * <p>Each method throws {@link BadInput} with all faults of an input it cannot take.
 */
public final class ReactionAnswers {
    private final SolventCatalogue catalogue;
    private final Compounds compounds;
    private final PartingEluents parting;
    private final Texts texts;

    ReactionAnswers(SolventCatalogue catalogue, Compounds compounds, PartingEluents parting, Texts texts) {
        this.catalogue = catalogue;
        this.compounds = compounds;
        this.parting = parting;
        this.texts = texts;
    }

    /** How far a reaction has come, asked in UTF-8. */
    public String reaction(byte[] json) {
        FaultList faults = new FaultList(texts);
        return reaction(JsonText.decoded(json, faults), faults);
    }

    /** How far a reaction has come. */
    public String reaction(String json) {
        return reaction(json, new FaultList(texts));
    }

    private String reaction(String json, FaultList faults) {
        ReactionQuestion question = new ReactionReader(catalogue, compounds, faults).read(JsonText.read(json, faults));
        return Exchange.told(
                faults,
                () -> new ReactionWriter(texts)
                        .write(question, ReactionCourse.of(parting).follow(question)));
    }
}
