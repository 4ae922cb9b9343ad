package midplate.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import midplate.plate.Reading;

/** Plates that were run, sorted out by pair. */
record PlateRuns(List<PlateRun> runs) {
    PlateRuns {
        runs = List.copyOf(runs);
    }

    /** Those in a pair, in an order that depends on what was read and not on when, or under which heading, it was typed. */
    List<PlateRun> in(String pair, List<String> spots) {
        List<PlateRun> own = new ArrayList<>();
        for (PlateRun run : runs) {
            if (run.pair().equals(pair)) {
                own.add(run);
            }
        }
        if (own.size() > 1) {
            own.sort(byContent(spots));
        }
        return own;
    }

    /** The pairs that were run but for one, each once. */
    List<String> pairsBeside(String pair) {
        List<String> others = new ArrayList<>();
        for (PlateRun run : runs) {
            if (!run.pair().equals(pair) && !others.contains(run.pair())) {
                others.add(run.pair());
            }
        }
        others.sort(null);
        return others;
    }

    private static Comparator<PlateRun> byContent(List<String> spots) {
        Comparator<PlateRun> order = Comparator.comparingDouble(PlateRun::percent);
        for (String spot : spots.stream().sorted().toList()) {
            order = order.thenComparing(
                    run -> Optional.ofNullable(run.readings().get(spot)), PlateRuns::compare);
        }
        return order.thenComparing(LaneToMatch.PLATES);
    }

    private static int compare(Optional<Reading> one, Optional<Reading> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return Boolean.compare(one.isEmpty(), other.isEmpty());
        }
        return Trial.READING.compare(one.get(), other.get());
    }

    /** The labelled readings of a spot on some plates. */
    static List<Trial> trials(String spot, List<PlateRun> plates) {
        List<Trial> trials = new ArrayList<>();
        for (int plate = 0; plate < plates.size(); plate++) {
            Reading reading = plates.get(plate).readings().get(spot);
            if (reading != null) {
                trials.add(new Trial(plate, plates.get(plate).percent(), reading));
            }
        }
        return trials;
    }

    /** The readings alone, in an order of their own. */
    static List<Trial> onAnyPlate(List<Trial> trials) {
        List<Trial> sorted = new ArrayList<>();
        for (Trial trial : trials) {
            sorted.add(new Trial(0, trial.percent(), trial.reading(), trial.blur()));
        }
        sorted.sort(Trial.BY_CONTENT);
        return sorted;
    }

    static boolean anyUnlabelled(List<PlateRun> runs) {
        for (PlateRun run : runs) {
            if (!run.unlabelled().isEmpty()) {
                return true;
            }
        }
        return false;
    }
}
