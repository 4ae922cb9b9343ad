package midplate.wire;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import midplate.catalogue.EluentRules;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.notebook.JarAdditive;
import midplate.notebook.SaidAdditive;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * The eluent that a row tells, each part as far as it does.
 *
 * @param weak the weaker solvent
 * @param strong the stronger solvent
 * @param typed the ratio as it is to stand on the sheet
 * @param percentStrong what that means [% v/v]
 * @param additive what is added
 * @param said all of it in the words of the file
 */
record RunJar(
        Optional<Solvent> weak,
        Optional<Solvent> strong,
        Optional<String> typed,
        OptionalDouble percentStrong,
        Optional<JarAdditive> additive,
        String said) {
    /** A ratio and a share beside it may differ by this, as people round shares [% v/v]. */
    private static final double ROUNDED = 0.5;

    /** Reads rows of one table. */
    static final class Reader {
        private final TableColumns plan;
        private final TableNumbers numbers;
        private final SolventWords words;
        private final EluentRules rules;
        private final Sorbent sorbent;
        private final SolventWords.Two usual;

        Reader(
                TableColumns plan,
                TableNumbers numbers,
                SolventWords words,
                EluentRules rules,
                Sorbent sorbent,
                SolventWords.Two usual) {
            this.plan = plan;
            this.numbers = numbers;
            this.words = words;
            this.rules = rules;
            this.sorbent = sorbent;
            this.usual = usual;
        }

        /**
         * The eluent of a row.
         *
         * @throws Refusal where a part cannot be taken
         */
        RunJar of(SheetRows.Row row) {
            String cell = plan.cell(row, RunColumn.ELUENT);
            String added = plan.cell(row, RunColumn.ADDITIVE);
            RunRows.checkLength(RunColumn.ELUENT, cell, RunRows.LONGEST_TEXT);
            RunRows.checkLength(RunColumn.ADDITIVE, added, RunRows.LONGEST_TEXT);
            Optional<Solvent> toldWeak = solvent(row, RunColumn.WEAK).or(() -> shared(1));
            Optional<Solvent> toldStrong = solvent(row, RunColumn.STRONG).or(() -> shared(0));
            Optional<TypedEluent> typed = cell.isEmpty()
                    ? Optional.empty()
                    : Optional.of(
                            inOrder(typed(cell), toldWeak.orElse(toldStrong.isEmpty() ? usual.first() : null), cell));
            List<Solvent> named = typed.map(TypedEluent::solvents).orElse(List.of());
            Optional<Solvent> weak = agreed(RunColumn.WEAK, toldWeak, named.size() < 2 ? null : named.get(0));
            Optional<Solvent> strong =
                    agreed(RunColumn.STRONG, toldStrong, named.isEmpty() ? null : named.get(named.size() - 1));
            OptionalDouble share = share(row);
            Optional<String> ratio = typed.map(TypedEluent::ratio).filter(text -> !text.isEmpty());
            OptionalDouble meant = typed.map(TypedEluent::percent).orElse(OptionalDouble.empty());
            if (meant.isPresent()
                    && share.isPresent()
                    && Math.abs(meant.getAsDouble() - share.getAsDouble()) > ROUNDED) {
                throw contradicted(plan.cell(row, RunColumn.PERCENT_STRONG), meant.getAsDouble());
            }
            if (meant.isEmpty() && share.isPresent()) {
                ratio = Optional.of(JsonWriting.exact(share.getAsDouble()).asText());
                meant = share;
            }
            return new RunJar(
                    weak,
                    strong,
                    ratio,
                    meant,
                    added.isEmpty() ? Optional.empty() : Optional.of(SaidAdditive.of(added)),
                    said(row));
        }

        private Optional<Solvent> shared(int index) {
            List<Solvent> named = plan.shared();
            return index < named.size() ? Optional.of(named.get(index)) : Optional.empty();
        }

        private Optional<Solvent> solvent(SheetRows.Row row, RunColumn column) {
            String cell = plan.cell(row, column);
            return cell.isEmpty() ? Optional.empty() : Optional.of(words.solvent(column, ShownText.of(cell)));
        }

        private TypedEluent typed(String cell) {
            TypedEluent typed = TypedEluent.of(cell, words);
            return plan.pair().map(typed::under).orElse(typed);
        }

        /** What the row says of the eluent, in the words of the file. */
        private String said(SheetRows.Row row) {
            String eluent = plan.cell(row, RunColumn.ELUENT);
            String share = plan.cell(row, RunColumn.PERCENT_STRONG);
            boolean namedAbove = plan.pair().isPresent() && !eluent.isEmpty();
            return Stream.of(
                            namedAbove ? plan.called(RunColumn.ELUENT) + ": " + eluent : eluent,
                            share.isEmpty() ? "" : plan.called(RunColumn.PERCENT_STRONG) + ": " + share,
                            plan.cell(row, RunColumn.WEAK),
                            plan.cell(row, RunColumn.STRONG),
                            plan.cell(row, RunColumn.ADDITIVE))
                    .filter(cell -> !cell.isEmpty())
                    .collect(Collectors.joining(" | "));
        }

        /** One solvent from both places that name one. */
        private static Optional<Solvent> agreed(RunColumn column, Optional<Solvent> told, @Nullable Solvent named) {
            if (told.isPresent() && named != null && !told.get().equals(named)) {
                throw new Refusal(
                        column.id(),
                        Message.of("import.names-two", "one", told.get().said(), "other", named.said()),
                        named.name(),
                        Allowed.words(told.get().name()),
                        Message.of("todo.keep-one"));
            }
            return told.or(() -> Optional.ofNullable(named));
        }

        /** The weaker solvent first; people write the stronger one first as well, and a ratio with names says which is which. */
        private TypedEluent inOrder(TypedEluent typed, @Nullable Solvent weak, String cell) {
            List<Solvent> named = typed.solvents();
            if (named.isEmpty()) {
                return typed;
            }
            if (named.size() == 1) {
                boolean ofWeak = named.get(0).equals(weak);
                return ofWeak ? TypedEluent.inOrder(typed.rest()) : typed;
            }
            Solvent first = named.get(0);
            Solvent second = named.get(1);
            boolean strongFirst = isReversed(first, second);
            boolean halves = typed.percent().equals(OptionalDouble.of(50));
            if (typed.of() == TypedEluent.Of.ONE_OF_TWO
                    && !halves
                    && typed.percent().isPresent()) {
                return ofFirst(typed, strongFirst, cell);
            }
            return strongFirst ? typed.turned() : typed;
        }

        /** At the bench a share beside two names is that of the first where this is the stronger; else nobody knows. */
        private TypedEluent ofFirst(TypedEluent typed, boolean strongFirst, String cell) {
            Solvent first = typed.solvents().get(0);
            Solvent second = typed.solvents().get(1);
            boolean noEluent = !strongFirst
                    && rules.against(RunColumn.ELUENT.id(), sorbent, first, second)
                            .isPresent(); // is told with the plate
            if (!strongFirst && !noEluent) {
                Message ofSecond = shareIn(typed, second, first);
                Message ofFirst = shareIn(typed, first, second);
                throw new Refusal(
                        RunColumn.ELUENT.id(),
                        Message.of("import.share-of-which", "share", typed.ratio(), "one", ofSecond, "other", ofFirst),
                        ShownText.of(cell),
                        Allowed.either(List.of(ofSecond, ofFirst)),
                        Message.of("todo.write-share-in"));
            }
            return new TypedEluent(typed.ratio(), typed.percent(), List.of(second, first), TypedEluent.Of.IN_ORDER);
        }

        private static Message shareIn(TypedEluent typed, Solvent of, Solvent in) {
            return Message.of("import.share-in", "share", typed.ratio(), "strong", of.said(), "weak", in.said());
        }

        private boolean isReversed(Solvent first, Solvent second) {
            return rules.against(RunColumn.ELUENT.id(), sorbent, first, second)
                    .filter(refusal -> refusal.reason().code().equals("pair-reversed"))
                    .isPresent();
        }

        private OptionalDouble share(SheetRows.Row row) {
            String came = plan.cell(row, RunColumn.PERCENT_STRONG);
            String cell =
                    came.endsWith("%") ? came.substring(0, came.length() - 1).strip() : came;
            if (cell.isEmpty()) {
                return OptionalDouble.empty();
            }
            RunColumn column = RunColumn.PERCENT_STRONG;
            Message allowed = Allowed.closed(0, 100);
            double percent = numbers.read(column, cell, plan.factor(column), allowed)
                    .value()
                    .orElseThrow();
            if (!(percent >= 0 && percent <= 100)) {
                throw new Refusal(
                        column.id(),
                        Message.of("plate.percent-out-of-range", "percent", percent),
                        ShownText.of(cell),
                        allowed,
                        Message.of("todo.give-percent-of-volumes"));
            }
            return OptionalDouble.of(percent + 0.0);
        }

        private static Refusal contradicted(String came, double meant) {
            return new Refusal(
                    RunColumn.PERCENT_STRONG.id(),
                    Message.of("import.ratio-and-share", "percent", meant, "came", ShownText.of(came)),
                    ShownText.of(came),
                    Message.of("allowed.about-percent", "percent", meant),
                    Message.of("todo.correct-ratio-or-share"));
        }
    }
}
