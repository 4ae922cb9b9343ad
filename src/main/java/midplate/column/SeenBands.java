package midplate.column;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.column.FractionAnswer.SeenBand;
import midplate.words.Message;

/**
 * Where each compound left, from the first and the last tube that show it. Either end may be off by half a fraction, and by half a
 * fraction more for each neighbouring tube that nobody looked at: the end is then put into the middle of what is left open.
 */
final class SeenBands {
    /** With so many empty tubes in a row inside, it is no one band. */
    private static final int BROKEN = 2;

    private final FractionQuestion question;
    private final List<SeenBand> bands = new ArrayList<>();
    private final List<Message> notes = new ArrayList<>();

    SeenBands(FractionQuestion question) {
        this.question = question;
        question.spots().forEach(spot -> band(spot).ifPresent(bands::add));
    }

    List<SeenBand> all() {
        return List.copyOf(bands);
    }

    /** Of the compounds without a band, why. */
    List<Message> notes() {
        return List.copyOf(notes);
    }

    private Optional<SeenBand> band(String spot) {
        List<Tube> tubes = question.tubes();
        int first = 0;
        while (first < tubes.size() && tubes.get(first).strength(spot) == 0) {
            first++;
        }
        if (first == tubes.size()) {
            return Optional.empty();
        }
        int last = tubes.size() - 1;
        while (tubes.get(last).strength(spot) == 0) {
            last--;
        }
        int openBefore = notLookedAt(first - 1, -1);
        int openAfter = notLookedAt(last + 1, 1);
        if (first - openBefore == 0 && question.collectedFromMl() > 0) {
            notes.add(Message.of("column.band-begun", "spot", spot));
            return Optional.empty();
        }
        if (last + openAfter == tubes.size() - 1) {
            notes.add(Message.of("column.band-not-over", "spot", spot));
            return Optional.empty();
        }
        if (isBroken(spot, first, last)) {
            notes.add(Message.of("column.band-broken", "spot", spot));
            return Optional.empty();
        }
        double half = question.fractionMl() / 2;
        double start = question.collectedFromMl() + first * question.fractionMl() - openBefore * half;
        double end = question.collectedFromMl() + (last + 1) * question.fractionMl() + openAfter * half;
        return Optional.of(new SeenBand(spot, start, end, half * (1 + Math.max(openBefore, openAfter))));
    }

    /** How many tubes from a place on nobody looked at. */
    private int notLookedAt(int from, int step) {
        int count = 0;
        for (int at = from;
                at >= 0
                        && at < question.tubes().size()
                        && !question.tubes().get(at).isLookedAt();
                at += step) {
            count++;
        }
        return count;
    }

    private boolean isBroken(String spot, int first, int last) {
        int without = 0;
        for (int at = first; at <= last; at++) {
            Tube tube = question.tubes().get(at);
            without = tube.isLookedAt() && tube.strength(spot) == 0 ? without + 1 : 0;
            if (without >= BROKEN) {
                return true;
            }
        }
        return false;
    }
}
