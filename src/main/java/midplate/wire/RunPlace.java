package midplate.wire;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import midplate.notebook.Entered;
import midplate.notebook.StudyPlate.Given;
import midplate.plate.SpotMeasurement;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * Where a spot lies: as its Rf, or as its height above the lower edge of the plate [mm].
 *
 * @param given which of the two
 * @param place the number
 */
record RunPlace(Given given, Entered place) {
    private static final Message MM = Allowed.mm(Allowed.closed("0", "1000"));
    private static final Message ERROR_MM =
            Allowed.mm(Allowed.leftOpen("0", Allowed.number(SpotMeasurement.LARGEST_ERROR_MM)));
    private static final Message UNIT = Allowed.closed(0, 1);
    private static final double LONGEST_MM = 1000;

    /** Decimals of an Rf out of two distances: more than any ruler gives. */
    private static final int DECIMALS = 4;

    /** Somebody who divides may round to two decimals, or read the ruler once more. */
    private static final BigDecimal ROUNDED = new BigDecimal("0.02");

    /** Reads the places and lengths in the rows of one table. */
    static final class Reader {
        private final TableColumns plan;
        private final TableNumbers numbers;
        private final Set<Message> notes = new LinkedHashSet<>();

        Reader(TableColumns plan, TableNumbers numbers) {
            this.plan = plan;
            this.numbers = numbers;
        }

        /** What was found worth telling. */
        Set<Message> notes() {
            return notes;
        }

        /** Whether a row tells where a spot lies. */
        boolean isTold(SheetRows.Row row) {
            return !(plan.cell(row, RunColumn.RF).isEmpty()
                    && plan.cell(row, RunColumn.CENTRE).isEmpty()
                    && plan.cell(row, RunColumn.DISTANCE).isEmpty());
        }

        /**
         * The place in a row that tells one.
         *
         * @param start the start line of the plate, as far as it is known
         * @param front how far the front of the plate ran from the start line, as far as that is known
         */
        RunPlace of(SheetRows.Row row, Entered start, Entered front) {
            String mm = plan.cell(row, RunColumn.CENTRE);
            String rf = plan.cell(row, RunColumn.RF);
            boolean byDistance =
                    mm.isEmpty() && !plan.cell(row, RunColumn.DISTANCE).isEmpty();
            if (byDistance
                    && (rf.isEmpty()
                            || start.value().isPresent()
                            || front.value().isPresent())) {
                return ofDistance(row, start, front);
            }
            boolean lines = plan.has(RunColumn.START) && plan.has(RunColumn.FRONT);
            if (!mm.isEmpty() && !rf.isEmpty()) {
                notes.add(Message.of(lines ? "import.both-places" : "import.both-places-no-lines"));
            }
            boolean byRf = mm.isEmpty() || (!rf.isEmpty() && !lines);
            return byRf
                    ? new RunPlace(Given.RF, rf(rf))
                    : new RunPlace(Given.CENTRE_MM, millimetres(RunColumn.CENTRE, mm));
        }

        /** With the start line the height, which keeps all that was measured; else the Rf, which hangs on no line. */
        private RunPlace ofDistance(SheetRows.Row row, Entered start, Entered front) {
            String cell = plan.cell(row, RunColumn.DISTANCE);
            Entered distance = millimetres(RunColumn.DISTANCE, cell);
            if (start.value().isPresent()) {
                notes.add(Message.of("import.distance-added"));
                return new RunPlace(Given.CENTRE_MM, sum(start, distance));
            }
            if (!(front.value().orElse(0) > 0)) {
                throw new Refusal(
                        RunColumn.FRONT_DISTANCE.id(),
                        Message.of("import.distance-without-front"),
                        ShownText.of(plan.cell(row, RunColumn.FRONT_DISTANCE)),
                        MM,
                        Message.of("todo.give-front-distance"));
            }
            BigDecimal rf = exact(distance).divide(exact(front), DECIMALS, RoundingMode.HALF_UP);
            if (rf.compareTo(BigDecimal.ONE) > 0) {
                throw new Refusal(
                        RunColumn.DISTANCE.id(),
                        Message.of(
                                "import.distance-beyond-front",
                                "distance",
                                Allowed.figure(distance.typed()),
                                "front",
                                Allowed.figure(front.typed())),
                        ShownText.of(cell),
                        MM,
                        Message.of("todo.divide-distances"));
            }
            Entered divided = number(rf);
            String written = plan.cell(row, RunColumn.RF);
            Entered place = written.isEmpty() ? divided : rf(written);
            if (exact(place).subtract(rf).abs().compareTo(ROUNDED) > 0) {
                throw new Refusal(
                        RunColumn.RF.id(),
                        Message.of("import.distances-otherwise", "rf", rf.doubleValue(), "came", ShownText.of(written)),
                        ShownText.of(written),
                        UNIT,
                        Message.of("todo.keep-one"));
            }
            notes.add(Message.of("import.distances"));
            return new RunPlace(Given.RF, place);
        }

        private Entered rf(String cell) {
            Entered rf = numbers.read(RunColumn.RF, cell, plan.factor(RunColumn.RF), UNIT);
            double value = rf.value().orElseThrow();
            if (!(value >= 0 && value <= 1)) {
                throw new Refusal(
                        RunColumn.RF.id(),
                        Message.of("plate.rf-out-of-range", "rf", value),
                        ShownText.of(cell),
                        UNIT,
                        value > 1 && value <= 100
                                ? Message.of("todo.hundredfold")
                                : Message.of("todo.divide-distances"));
            }
            return rf;
        }

        /** A length in a cell that is filled. */
        Entered millimetres(RunColumn column, String cell) {
            Entered mm = numbers.read(column, cell, plan.factor(column), MM);
            double value = mm.value().orElseThrow();
            if (column == RunColumn.ERROR && !(value > 0 && value <= SpotMeasurement.LARGEST_ERROR_MM)) {
                throw new Refusal(
                        column.id(),
                        Message.of("plate.height-error-out-of-range"),
                        ShownText.of(cell),
                        ERROR_MM,
                        Message.of("todo.give-height-error"));
            }
            boolean fits = column == RunColumn.SIZE ? value > 0 : value >= 0;
            if (!(fits && value <= LONGEST_MM)) {
                throw new Refusal(
                        column.id(),
                        Message.of("plate.length-out-of-range"),
                        ShownText.of(cell),
                        MM,
                        Message.of("todo.measure-from-edge"));
            }
            return mm;
        }

        /** A line or size of a plate that is none is kept as it was typed: the sheet marks it. */
        Optional<Entered> length(SheetRows.Row row, RunColumn column) {
            String cell = plan.cell(row, column);
            if (cell.isEmpty()) {
                return Optional.empty();
            }
            try {
                return Optional.of(numbers.read(column, cell, plan.factor(column), MM));
            } catch (Refusal refusal) {
                String typed = ShownText.of(cell);
                notes.add(Message.of("import.no-length", "column", plan.called(column), "came", typed));
                return Optional.of(Entered.text(typed));
            }
        }
    }

    /** The sum of two lengths that are numbers. */
    static Entered sum(Entered one, Entered other) {
        return number(exact(one).add(exact(other)));
    }

    private static BigDecimal exact(Entered number) {
        return new BigDecimal(number.typed());
    }

    private static Entered number(BigDecimal value) {
        BigDecimal plain = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        return Entered.number(plain.toPlainString(), value.doubleValue());
    }
}
