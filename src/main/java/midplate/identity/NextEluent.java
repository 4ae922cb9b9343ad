package midplate.identity;

import java.util.List;
import midplate.advice.Ratio;
import midplate.catalogue.PairBasis;
import midplate.chemistry.Solvent;
import midplate.words.Message;

/**
 * An eluent in which two compounds may come apart.
 *
 * @param weak the weaker solvent
 * @param strong the stronger solvent
 * @param ratio what to pour
 * @param basis what the model of the pair rests on
 * @param chanceApart the chance that both lie in the window 0.2 to 0.8 and at least 0.1 apart in Rf [1]
 * @param expectedGap the distance in Rf to expect [1]
 * @param text all of it in a sentence, with why
 */
public record NextEluent(
        Solvent weak,
        Solvent strong,
        Ratio ratio,
        PairBasis basis,
        double chanceApart,
        double expectedGap,
        Message text) {
    /** The same with another sentence. */
    NextEluent saying(Message sentence) {
        return new NextEluent(weak, strong, ratio, basis, chanceApart, expectedGap, sentence);
    }

    /** What is poured: both solvents, or the one that stands alone; a pure liquid is one eluent whatever it was paired with. */
    List<Solvent> solvents() {
        return ratio.strong() == 0 ? List.of(weak) : ratio.weak() == 0 ? List.of(strong) : List.of(weak, strong);
    }
}
