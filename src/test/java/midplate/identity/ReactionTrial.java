package midplate.identity;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import midplate.identity.invented.InventedReactions;
import midplate.identity.invented.InventedReactions.Kind;
import midplate.identity.invented.InventedReactions.Reaction;
import midplate.identity.invented.InventedReactions.Truth;

/** Counts how verdicts on made-up reactions fare, plate after plate; the whole table is printed by {@link #main}. */
final class ReactionTrial {
    /** What became of verdicts. */
    static final class Count {
        int right;
        int notTold;
        int wrong;

        int all() {
            return right + notTold + wrong;
        }

        private double percent(int part) {
            return all() == 0 ? 0 : 100.0 * part / all();
        }
    }

    final Map<Kind, Count> byKind = new EnumMap<>(Kind.class);
    final Map<Truth, Count> byTruth = new EnumMap<>(Truth.class);
    /** What was said of each truth. */
    final Map<Truth, Map<ReactionState, Integer>> told = new EnumMap<>(Truth.class);

    int reactions;
    int verdicts;
    int falseEnds;
    int reactionsWithFalseEnd;
    int falseStalls;
    int reactionsWithFalseStall;
    int falseWrongs;
    int reactionsWithFalseWrong;
    int ends;
    int endsTold;
    int platesFromEndToTold;
    final int[] endsByPlates = new int[6];

    /** The whole table; the arguments are a seed and how many reactions. */
    public static void main(String[] arguments) {
        ReactionTrial trial = new ReactionTrial();
        trial.run(Long.parseLong(arguments[0]), Integer.parseInt(arguments[1]));
        System.out.print(trial.table());
    }

    void run(long seed, int count) {
        InventedReactions made = new InventedReactions(seed);
        for (int i = 0; i < count; i++) {
            follow(made.next());
        }
    }

    private void follow(Reaction reaction) {
        reactions++;
        boolean falseEnd = false;
        boolean falseStall = false;
        boolean falseWrong = false;
        int endedAt = -1;
        boolean endTold = false;
        List<ReactionPlate> plates = new ArrayList<>();
        for (int i = 0; i < InventedReactions.MINUTES.length; i++) {
            plates.add(plate(reaction, i));
            if (i == 0) {
                continue;
            }
            ReactionState state = ReactionCourse.of((here, one, other, most) -> List.of())
                    .follow(question(plates))
                    .state();
            verdicts++;
            Truth truth = reaction.truth()[i];
            told.computeIfAbsent(truth, key -> new EnumMap<>(ReactionState.class))
                    .merge(state, 1, Integer::sum);
            count(byKind.computeIfAbsent(reaction.kind(), kind -> new Count()), state, truth);
            count(byTruth.computeIfAbsent(truth, kind -> new Count()), state, truth);
            boolean end = state == ReactionState.FINISHED && reaction.left()[i] > 0.1;
            boolean stall = state == ReactionState.STALLED && truth == Truth.RUNNING;
            boolean wrong =
                    state == ReactionState.GONE_WRONG && truth != Truth.GONE_WRONG && truth != Truth.NEARLY_GONE_WRONG;
            falseEnds += end ? 1 : 0;
            falseStalls += stall ? 1 : 0;
            falseWrongs += wrong ? 1 : 0;
            falseEnd |= end;
            falseStall |= stall;
            falseWrong |= wrong;
            if (truth == Truth.FINISHED && endedAt < 0) {
                endedAt = i;
                ends++;
            }
            if (endedAt >= 0 && state == ReactionState.FINISHED && !endTold) {
                endTold = true;
                endsTold++;
                platesFromEndToTold += i - endedAt;
                endsByPlates[i - endedAt]++;
            }
        }
        reactionsWithFalseEnd += falseEnd ? 1 : 0;
        reactionsWithFalseStall += falseStall ? 1 : 0;
        reactionsWithFalseWrong += falseWrong ? 1 : 0;
    }

    private static void count(Count count, ReactionState state, Truth truth) {
        if (state == ReactionState.NOT_TOLD) {
            count.notTold++;
        } else if (isRight(state, truth)) {
            count.right++;
        } else {
            count.wrong++;
        }
    }

    private static boolean isRight(ReactionState state, Truth truth) {
        return switch (truth) {
            case RUNNING -> state == ReactionState.RUNNING;
            case FINISHED -> state == ReactionState.FINISHED;
            case RUNNING_OR_FINISHED -> state == ReactionState.RUNNING || state == ReactionState.FINISHED;
            case STALLED -> state == ReactionState.STALLED;
            case RUNNING_OR_STALLED -> state == ReactionState.RUNNING || state == ReactionState.STALLED;
            case GONE_WRONG -> state == ReactionState.GONE_WRONG;
            case NEARLY_GONE_WRONG -> true;
        };
    }

    private static ReactionPlate plate(Reaction reaction, int at) {
        return new ReactionPlate(
                InventedReactions.MINUTES[at],
                List.of(
                        new ReactionMark("SM", reaction.start()[at], OptionalDouble.empty()),
                        new ReactionMark("P", reaction.product()[at], OptionalDouble.empty()),
                        new ReactionMark("X", reaction.other()[at], OptionalDouble.empty())),
                OptionalInt.of(reaction.baseline()[at]));
    }

    private static ReactionQuestion question(List<ReactionPlate> plates) {
        return new ReactionQuestion(
                List.of(
                        species("SM", SpeciesPart.START),
                        species("P", SpeciesPart.PRODUCT),
                        species("X", SpeciesPart.OTHER)),
                plates,
                Optional.empty(),
                OptionalDouble.empty());
    }

    private static ReactionSpecies species(String name, SpeciesPart part) {
        return new ReactionSpecies(new Compound(name, OptionalDouble.empty(), Optional.empty()), part);
    }

    String table() {
        StringBuilder text = new StringBuilder();
        byKind.forEach((kind, count) -> text.append(line(kind.name(), count)));
        byTruth.forEach((truth, count) -> text.append(line("true: " + truth.name(), count)));
        told.forEach(
                (truth, said) -> text.append(truth).append(' ').append(said).append(System.lineSeparator()));
        text.append(String.format(
                Locale.ROOT,
                "%d reactions, %d verdicts%nfalse end: %.2f %% of verdicts, %.2f %% of reactions%n"
                        + "false stall: %.2f %%, %.2f %%%nfalse gone wrong: %.2f %%, %.2f %%%n"
                        + "ends %d, told %d, plates after the first at the end %s%n",
                reactions,
                verdicts,
                100.0 * falseEnds / verdicts,
                100.0 * reactionsWithFalseEnd / reactions,
                100.0 * falseStalls / verdicts,
                100.0 * reactionsWithFalseStall / reactions,
                100.0 * falseWrongs / verdicts,
                100.0 * reactionsWithFalseWrong / reactions,
                ends,
                endsTold,
                java.util.Arrays.toString(endsByPlates)));
        return text.toString();
    }

    private static String line(String name, Count count) {
        return String.format(
                Locale.ROOT,
                "| %s | %.0f %% | %.0f %% | %.1f %% | %d |%n",
                name,
                count.percent(count.right),
                count.percent(count.notTold),
                count.percent(count.wrong),
                count.all());
    }
}
