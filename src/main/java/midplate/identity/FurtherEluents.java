package midplate.identity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.chemistry.Solvent;

/** The eluents to run next: those in which the sample and what it was not told apart from are likeliest to part. */
final class FurtherEluents {
    /** So many are told. */
    private static final int MOST = 4;
    /** So many references and candidates are asked for, the most likely ones; each takes a third of a second. */
    private static final int MOST_ASKED = 3;
    /** More than any model offers. */
    private static final int ALL = 50;

    private final PartingEluents parting;
    private final IdentityQuestion question;

    FurtherEluents(PartingEluents parting, IdentityQuestion question) {
        this.parting = parting;
        this.question = question;
    }

    /** The eluents, by the mean of their chances over all that is to be parted from the sample. */
    List<NextEluent> next(List<Verdict> verdicts, Optional<CandidatesWithin> candidates) {
        Optional<PlateEluent> eluent = question.eluent();
        List<Compound> others = new ArrayList<>();
        OptionalDouble rf = OptionalDouble.empty();
        for (Verdict verdict : verdicts) {
            if (verdict.outcome() != Verdict.Outcome.DIFFERENT && verdict.rf().isPresent()) {
                rf = verdict.rf();
                others.add(reference(verdict));
            }
        }
        if (others.isEmpty()) {
            candidates.ifPresent(left -> left.each().stream()
                    .filter(each -> each.chanceWithin() >= PlateComparison.COUNTS_FROM)
                    .sorted(Comparator.comparingDouble(CandidatesWithin.Each::chanceWithin)
                            .reversed())
                    .forEach(each -> others.add(candidate(each))));
        }
        if (eluent.isEmpty() || others.isEmpty()) {
            return List.of();
        }
        OptionalDouble read = rf;
        Compound sample = question.unknown()
                .map(known -> new Compound(known.name(), read.isPresent() ? read : known.rf(), known.structure()))
                .orElse(new Compound("?", read, Optional.empty()));
        return merged(others.stream()
                .limit(MOST_ASKED)
                .map(other -> parting.apart(eluent.get(), sample, other, ALL))
                .toList());
    }

    /** A reference where it was read beside the sample. */
    private Compound reference(Verdict verdict) {
        double at =
                verdict.rf().orElseThrow() - verdict.gapRf().map(RfRange::value).orElse(0.0);
        Optional<Compound> known = question.references().stream()
                .filter(each -> each.name().equals(verdict.reference()))
                .findFirst();
        return new Compound(
                verdict.reference(),
                OptionalDouble.of(Math.min(1, Math.max(0, at))),
                known.flatMap(Compound::structure));
    }

    private Compound candidate(CandidatesWithin.Each each) {
        Optional<Candidate> known = question.candidates().stream()
                .filter(one -> one.name().equals(each.name()))
                .findFirst();
        return new Compound(each.name(), OptionalDouble.of(each.rf().value()), known.flatMap(Candidate::structure));
    }

    private static List<NextEluent> merged(List<List<NextEluent>> lists) {
        Map<List<Solvent>, List<NextEluent>> byPair = new LinkedHashMap<>();
        for (List<NextEluent> list : lists) {
            Map<List<Solvent>, NextEluent> best = new LinkedHashMap<>();
            list.forEach(next -> best.putIfAbsent(List.of(next.weak(), next.strong()), next));
            best.forEach((pair, next) ->
                    byPair.computeIfAbsent(pair, none -> new ArrayList<>()).add(next));
        }
        return byPair.values().stream()
                .sorted(Comparator.comparingDouble((List<NextEluent> each) ->
                        -each.stream().mapToDouble(NextEluent::chanceApart).sum()))
                // what is told is the chance for the pair of compounds that parts worst there
                .map(each -> each.stream()
                        .min(Comparator.comparingDouble(NextEluent::chanceApart))
                        .orElseThrow())
                .limit(MOST)
                .toList();
    }
}
