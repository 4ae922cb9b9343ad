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
        List<Pair> pairs = new ArrayList<>();
        for (Verdict verdict : verdicts) {
            if (verdict.outcome() != Verdict.Outcome.DIFFERENT && verdict.rf().isPresent()) {
                pairs.add(new Pair(sample(verdict.rf()), reference(verdict)));
            }
        }
        if (pairs.isEmpty()) {
            Compound sample = sample(verdicts.stream()
                    .map(Verdict::rf)
                    .filter(OptionalDouble::isPresent)
                    .findFirst()
                    .orElse(OptionalDouble.empty()));
            candidates.ifPresent(left -> left.each().stream()
                    .filter(each -> each.standing() == CandidatesWithin.Standing.LEFT)
                    .sorted(Comparator.comparingDouble(CandidatesWithin.Each::chanceWithin)
                            .reversed())
                    .forEach(each -> pairs.add(new Pair(sample, candidate(each)))));
        }
        return eluent.isEmpty()
                ? List.of()
                : PartingWords.sourcedOnce(merged(pairs.stream()
                        .limit(MOST_ASKED)
                        .map(pair -> parting.apart(eluent.get(), pair.one(), pair.other(), ALL))
                        .toList()));
    }

    /** A spot of the sample and what it is to be parted from. */
    private record Pair(Compound one, Compound other) {}

    /** The sample by its spot at this Rf; each of its spots may be another compound. */
    private Compound sample(OptionalDouble read) {
        return question.unknown()
                .map(known -> new Compound(known.name(), read.isPresent() ? read : known.rf(), known.structure()))
                .orElse(new Compound("?", read, Optional.empty()));
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

    /** A candidate where it is said to lie; what the model foretold is no reading. */
    private Compound candidate(CandidatesWithin.Each each) {
        Optional<Candidate> known = question.candidates().stream()
                .filter(one -> one.name().equals(each.name()))
                .findFirst();
        OptionalDouble said = each.from() == CandidatesWithin.From.MODEL
                ? OptionalDouble.empty()
                : OptionalDouble.of(each.rf().value());
        return new Compound(each.name(), said, known.flatMap(Candidate::structure));
    }

    private static List<NextEluent> merged(List<List<NextEluent>> lists) {
        Map<List<Solvent>, List<NextEluent>> byJar = new LinkedHashMap<>();
        for (List<NextEluent> list : lists) {
            Map<List<Solvent>, NextEluent> best = new LinkedHashMap<>();
            list.forEach(next -> best.putIfAbsent(next.solvents(), next));
            best.forEach((jar, next) ->
                    byJar.computeIfAbsent(jar, none -> new ArrayList<>()).add(next));
        }
        return byJar.values().stream()
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
