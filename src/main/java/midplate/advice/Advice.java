package midplate.advice;

import java.util.List;
import midplate.catalogue.PairBasis;
import midplate.words.Message;

/**
 * The answer: what to pour next, what will happen, and why.
 *
 * @param ratio the mixture to pour, weak : strong by volume
 * @param forecast what the plate with that mixture will show, with the chance that every spot lies in the window
 * @param bestPercentStrong the optimum before it was made pourable [% v/v]
 * @param bestChance the chance of the goal there [1]
 * @param pour millilitres, and what the glassware does to the answer
 * @param why the reasons, in the order to be read; the first is the whole in one sentence
 * @param notes what must be known beside it: contradictions, stand-ins, demixing, runs not used
 * @param chanceNoRatioWorks the chance that no ratio of this pair has every true Rf in the window [1]
 * @param alternatives what to do instead, the likeliest first; empty while the advice itself is good
 * @param goal the chance that every spot lies in the window and the named pairs apart
 * @param card what to do at the jar
 * @param basis what the model of the pair rests on
 */
public record Advice(
        Ratio ratio,
        Forecast forecast,
        double bestPercentStrong,
        double bestChance,
        Pour pour,
        List<Message> why,
        List<Message> notes,
        double chanceNoRatioWorks,
        List<Alternative> alternatives,
        Goal goal,
        PourCard card,
        PairBasis basis) {
    /** Keeps its own copies. */
    public Advice {
        why = List.copyOf(why);
        notes = List.copyOf(notes);
        alternatives = List.copyOf(alternatives);
    }
}
