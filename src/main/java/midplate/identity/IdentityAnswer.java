package midplate.identity;

import java.util.List;
import java.util.Optional;
import midplate.words.Message;

/**
 * What the plates say of a sample beside its references.
 *
 * @param verdicts one for each reference, in the order asked
 * @param mixture that the sample looks like several of the references together, if it does
 * @param unexplained spots of the sample that no reference accounts for, if there are any
 * @param candidates which of the candidates are left, where some were given and can be compared
 * @param next in which eluents those not told apart are likeliest to part
 * @param secondWays how else to tell them apart
 * @param warnings what to mind in these plates
 * @param cautions what to mind at the bench
 */
public record IdentityAnswer(
        List<Verdict> verdicts,
        Optional<Message> mixture,
        Optional<Message> unexplained,
        Optional<CandidatesWithin> candidates,
        List<NextEluent> next,
        List<Message> secondWays,
        List<Message> warnings,
        List<Message> cautions) {
    /** Keeps its own copies. */
    public IdentityAnswer {
        verdicts = List.copyOf(verdicts);
        next = List.copyOf(next);
        secondWays = List.copyOf(secondWays);
        warnings = List.copyOf(warnings);
        cautions = List.copyOf(cautions);
    }
}
