package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import midplate.inference.PreposteriorAnalysis;
import midplate.inference.RoundValue;

/**
 * Searches the rounds of so many plates for the one that is worth most. Among rounds worth the same, one that meets the aim at once
 * saves a plate, which counts {@link Scouting#WORTH_ITS_PLATES}. It is an exchange search: the best single ratio, the best to add to it, then each
 * plate exchanged in turn where that helps. What is found for fewer plates does not depend on how many are asked for.
 */
final class Rounds {
    private final PreposteriorAnalysis analysis;
    private final List<Ratio> candidates;

    Rounds(PreposteriorAnalysis analysis, List<Ratio> candidates) {
        this.analysis = analysis;
        this.candidates = candidates;
    }

    private record Found(List<Ratio> ratios, double score) {}

    /** The best rounds of one plate, of two, and so on; fewer where there are not so many ratios. */
    List<List<Ratio>> upTo(int plates) {
        List<List<Ratio>> rounds = new ArrayList<>();
        Found best = new Found(List.of(), 0);
        for (int count = 1; count <= Math.min(plates, candidates.size()); count++) {
            best = with(best.ratios());
            best = count > 1 ? exchanged(best) : best;
            rounds.add(best.ratios());
        }
        return rounds;
    }

    private Found exchanged(Found found) {
        Found best = found;
        for (int i = 0; i < found.ratios().size(); i++) {
            List<Ratio> others = new ArrayList<>(best.ratios());
            others.remove(i);
            Found other = with(others);
            best = other.score() > best.score() ? other : best;
        }
        return best;
    }

    /** These ratios and the best one beside them. */
    private Found with(List<Ratio> ratios) {
        Found best = new Found(List.of(), -1);
        for (Ratio candidate : candidates) {
            if (!ratios.contains(candidate)) {
                List<Ratio> more = new ArrayList<>(ratios);
                more.add(candidate);
                RoundValue value = value(more);
                double score = value.chance() + Scouting.WORTH_ITS_PLATES * value.now();
                best = score > best.score() ? new Found(List.copyOf(more), score) : best;
            }
        }
        return best;
    }

    private RoundValue value(List<Ratio> ratios) {
        return analysis.value(ratios.stream().map(Ratio::percentStrong).toList());
    }
}
