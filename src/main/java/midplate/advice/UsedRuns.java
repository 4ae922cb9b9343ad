package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.PlatePair;
import midplate.chemistry.Solvent;
import midplate.inference.PlateModels;
import midplate.inference.PlateRun;
import midplate.plate.Eluent;
import midplate.plate.Run;
import midplate.words.Message;

/**
 * Which of the plates that were run count for a question, and what to say of the others.
 *
 * @param own plates in the pair asked about, in the order given
 * @param others plates in other pairs, measured or by theory, that say something about it
 * @param notes what to say of plates that count less or not at all
 */
record UsedRuns(List<PlateRun> own, List<PlateRun> others, List<Message> notes) {
    UsedRuns {
        own = List.copyOf(own);
        others = List.copyOf(others);
        notes = List.copyOf(notes);
    }

    /** All plates that count. */
    List<PlateRun> all() {
        List<PlateRun> all = new ArrayList<>(own);
        all.addAll(others);
        return all;
    }

    /**
     * Sorts the plates of a question. Each pair is checked; a plate with another additive, on another sorbent or in a pair
     * that says nothing about the one asked about does not count. A plate in one pure solvent counts for every pair that has it, in
     * either place.
     */
    static UsedRuns of(Question question, PlatePair asked, PairChoice pairs, PlateModels models) {
        List<PlateRun> own = new ArrayList<>();
        List<PlateRun> others = new ArrayList<>();
        List<Message> notes = new ArrayList<>();
        for (int i = 0; i < question.runs().size(); i++) {
            Run run = question.runs().get(i);
            Eluent eluent = run.eluent();
            pairs.check("runs[" + i + "].", eluent.sorbent(), eluent.weak(), eluent.strong());
            int number = i + 1;
            OptionalDouble percent = percentIn(asked, eluent, pairs);
            if (eluent.sorbent() != question.sorbent()) {
                notes.add(Message.of(
                        "advice.run-other-sorbent",
                        "run",
                        number,
                        "sorbent",
                        eluent.sorbent().said()));
            } else if (!sameAdditive(eluent.additive(), question.additive())) {
                notes.add(Message.of("advice.run-other-additive", "run", number));
            } else if (percent.isPresent()) {
                own.add(new PlateRun(
                        asked.id(), percent.getAsDouble(), run.readings(), i, run.unlabelled(), run.notSeen()));
                notes.addAll(pairs.standInNotes(
                        eluent.weak(), eluent.strong(), question.wishes().shelf()));
            } else {
                Optional<PlatePair> other = pairs.find(eluent.sorbent(), eluent.weak(), eluent.strong());
                boolean linked = other.filter(pair -> models.isLinked(pair.id(), asked.id()))
                        .isPresent();
                if (linked && !run.unlabelled().isEmpty()) {
                    notes.add(Message.of("advice.unlabelled-other-pair", "run", number));
                }
                if (!linked) {
                    notes.add(Message.of("advice.run-not-measured", "run", number));
                } else if (!run.readings().isEmpty()) {
                    others.add(new PlateRun(other.get().id(), eluent.percentStrong(), run.readings()));
                    notes.add(Message.of("advice.run-other-pair", "run", number));
                }
            }
        }
        return new UsedRuns(own, others, notes);
    }

    /** The share at which an eluent is one of a pair, or one of its two solvents alone; empty where it is neither [% v/v]. */
    private static OptionalDouble percentIn(PlatePair asked, Eluent eluent, PairChoice pairs) {
        Solvent weak = pairs.standard(eluent.weak());
        Solvent strong = pairs.standard(eluent.strong());
        double percent = eluent.percentStrong();
        if (weak.equals(asked.weak()) && strong.equals(asked.strong())) {
            return OptionalDouble.of(percent);
        }
        if (percent > 0 && percent < 100) {
            return OptionalDouble.empty();
        }
        Solvent pure = percent == 0 ? weak : strong;
        if (pure.equals(asked.weak())) {
            return OptionalDouble.of(0);
        }
        return pure.equals(asked.strong()) ? OptionalDouble.of(100) : OptionalDouble.empty();
    }

    private static boolean sameAdditive(Optional<String> one, Optional<String> other) {
        return one.map(UsedRuns::plain).equals(other.map(UsedRuns::plain));
    }

    private static String plain(String additive) {
        return additive.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
