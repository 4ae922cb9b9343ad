package midplate.wire;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.EluentRules;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.notebook.JarAdditive;
import midplate.notebook.SaidAdditive;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * The eluent that a row tells, each part as far as it does.
 *
 * @param weak the weaker solvent
 * @param strong the stronger solvent
 * @param typed the ratio as it is to stand on the sheet
 * @param percentStrong what that means [% v/v]
 * @param additive what is added
 */
record RunJar(
        Optional<Solvent> weak,
        Optional<Solvent> strong,
        Optional<String> typed,
        OptionalDouble percentStrong,
        Optional<JarAdditive> additive) {
    /** A ratio and a share beside it may differ by this, as people round shares [% v/v]. */
    private static final double ROUNDED = 0.5;

    /** Reads rows of one table. */
    static final class Reader {
        private final ColumnPlan plan;
        private final TableNumbers numbers;
        private final SolventWords words;
        private final EluentRules rules;
        private final Sorbent sorbent;

        Reader(ColumnPlan plan, TableNumbers numbers, SolventWords words, EluentRules rules, Sorbent sorbent) {
            this.plan = plan;
            this.numbers = numbers;
            this.words = words;
            this.rules = rules;
            this.sorbent = sorbent;
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
            Optional<TypedEluent> typed =
                    cell.isEmpty() ? Optional.empty() : Optional.of(inOrder(TypedEluent.of(cell, words)));
            Optional<Solvent> weak = solvent(row, RunColumn.WEAK)
                    .or(() -> typed.flatMap(TypedEluent::solvents).map(SolventWords.Two::first))
                    .or(() -> shared(1));
            Optional<Solvent> strong = solvent(row, RunColumn.STRONG)
                    .or(() -> typed.flatMap(TypedEluent::solvents).map(SolventWords.Two::second))
                    .or(() -> shared(0));
            OptionalDouble share = share(row);
            Optional<String> ratio = typed.map(TypedEluent::ratio).filter(text -> !text.isEmpty());
            OptionalDouble meant = typed.map(TypedEluent::percentStrong).orElse(OptionalDouble.empty());
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
                    added.isEmpty() ? Optional.empty() : Optional.of(SaidAdditive.of(added)));
        }

        private Optional<Solvent> shared(int index) {
            List<Solvent> named = plan.shared();
            return index < named.size() ? Optional.of(named.get(index)) : Optional.empty();
        }

        private Optional<Solvent> solvent(SheetRows.Row row, RunColumn column) {
            String cell = plan.cell(row, column);
            return cell.isEmpty() ? Optional.empty() : Optional.of(words.solvent(column, ShownText.of(cell)));
        }

        /** People write the stronger solvent first as well; a ratio with names says which is which. */
        private TypedEluent inOrder(TypedEluent typed) {
            boolean reversed = typed.solvents()
                    .flatMap(two -> rules.against(RunColumn.ELUENT.id(), sorbent, two.first(), two.second()))
                    .filter(refusal -> refusal.reason().code().equals("pair-reversed"))
                    .isPresent();
            return reversed ? typed.turned() : typed;
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
