package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import midplate.advice.Advice;
import midplate.advice.Ratio;
import midplate.advice.Window;
import midplate.chemistry.RetentionFactor;
import midplate.words.Message;

/**
 * A first plate that was too weak or too strong: what to pour next. Right is every share at which the true Rf of each spot lies in the
 * window and apart from the others, for the possible sample that was drawn.
 */
final class RatioQuestion {
    private static final int SPOTS = 3;
    private static final List<Ratio> FIRST = List.of(
            new Ratio(49, 1),
            new Ratio(19, 1),
            new Ratio(9, 1),
            new Ratio(4, 1),
            new Ratio(2, 1),
            new Ratio(1, 1),
            new Ratio(1, 2));
    /** At least two spots lie below or above it [1]. */
    private static final double NEAR_LINE = 0.12;

    private static final double NEAR_FRONT = 0.88;
    /** The greatest share that works is at least so many times the least: a sheet cannot ask for luck. */
    private static final double ROOMY = 1.5;

    private static final int LEAST_PERCENT = 3;
    private static final int MOST_PERCENT = 80;
    /** At the middle of what is right spots lie so far apart in Rf [1] … */
    private static final double APART = 0.08;
    /** … and everywhere in it so far that two spots are not taken for one. */
    private static final double SEEN_APART = 0.05;

    /** Beyond these an Rf says nothing of how far ln k is [1]. */
    private static final double LEAST_RF = 0.005;

    /** Shares at which the compounds run as expected [% v/v]: those of the plates, and of what is accepted. */
    private static final List<Double> USED = List.of(2.0, 5.0, 10.0, 15.0, 20.0, 30.0, 40.0, 50.0, 60.0);

    private RatioQuestion() {}

    /** What went wrong with the first plate. */
    enum Case {
        /** Spots near the start line. */
        TOO_WEAK,
        /** Spots near the front. */
        TOO_STRONG
    }

    /** Three compounds of one possible sample, and the first plate. */
    private record Drawn(int sample, List<LessonCompound> compounds, Ratio first, Case wrong, DrawnPlate plate) {}

    /** Whole shares at which each spot lies in the window and apart [% v/v]. */
    record Shares(int low, int high) {
        boolean hold(double percent) {
            return percent >= low && percent <= high;
        }
    }

    static Optional<WorksheetQuestion> of(SeededDraws draws, WorksheetBench bench, Case wrong) {
        List<LessonCompound> compounds = draws.some(bench.possible().compounds(), SPOTS);
        Ratio first = draws.some(FIRST, 1).get(0);
        if (!isExpectedWrong(bench, compounds, first, wrong)) {
            return Optional.empty();
        }
        int sample = bench.possible().central(draws, compounds, USED);
        Optional<Shares> shares = shares(bench, sample, compounds)
                .filter(found -> found.low() >= LEAST_PERCENT && found.high() <= MOST_PERCENT)
                .filter(found ->
                        found.high() >= ROOMY * found.low() && isApart(bench, sample, compounds, middle(found), APART));
        if (shares.isEmpty() || !isWrong(bench, sample, compounds, first, shares.get(), wrong)) {
            return Optional.empty();
        }
        DrawnPlate plate = DrawnPlate.bare(draws, List.of("A", "B", "C"));
        for (int i = 0; i < SPOTS; i++) {
            double rf = bench.possible().rf(sample, compounds.get(i), first.percentStrong());
            plate = plate.with(i, WorksheetBench.letter(i), plate.halfWay(rf));
        }
        Drawn drawn = new Drawn(sample, compounds, first, wrong, plate);
        Advice advice = bench.advice(compounds, first.percentStrong(), plate);
        return shares.get().hold(advice.ratio().percentStrong())
                ? question(bench, drawn, shares.get(), advice)
                : Optional.empty();
    }

    /** Empty where no whole share works, or where some work and those between do not. */
    static Optional<Shares> shares(WorksheetBench bench, int sample, List<LessonCompound> compounds) {
        int[] working = IntStream.rangeClosed(0, 100)
                .filter(percent -> compounds.stream()
                        .allMatch(each -> Window.USUAL.holds(bench.possible().rf(sample, each, percent))))
                .filter(percent -> isApart(bench, sample, compounds, percent, SEEN_APART))
                .toArray();
        return working.length == 0 || working[working.length - 1] - working[0] >= working.length
                ? Optional.empty()
                : Optional.of(new Shares(working[0], working[working.length - 1]));
    }

    /** Whether neighbours lie at least so far apart in Rf. */
    private static boolean isApart(
            WorksheetBench bench, int sample, List<LessonCompound> compounds, double percent, double apart) {
        double[] rf = compounds.stream()
                .mapToDouble(each -> bench.possible().rf(sample, each, percent))
                .sorted()
                .toArray();
        return IntStream.range(1, rf.length).allMatch(i -> rf[i] - rf[i - 1] >= apart);
    }

    private static double middle(Shares shares) {
        return Math.sqrt((double) shares.low() * shares.high());
    }

    /** Whether two spots are expected outside the window on that side: no sample needs to be drawn where they are not. */
    private static boolean isExpectedWrong(
            WorksheetBench bench, List<LessonCompound> compounds, Ratio first, Case wrong) {
        return compounds.stream()
                        .mapToDouble(each -> bench.possible().middle(each, first.percentStrong()))
                        .filter(rf -> wrong == Case.TOO_WEAK ? rf < Window.USUAL.low() : rf > Window.USUAL.high())
                        .count()
                >= 2;
    }

    private static boolean isWrong(
            WorksheetBench bench, int sample, List<LessonCompound> compounds, Ratio first, Shares shares, Case wrong) {
        double percent = first.percentStrong();
        long near = compounds.stream()
                .mapToDouble(each -> bench.possible().rf(sample, each, percent))
                .filter(rf -> rf > LEAST_RF && rf < 1 - LEAST_RF)
                .filter(rf -> wrong == Case.TOO_WEAK ? rf < NEAR_LINE : rf > NEAR_FRONT)
                .count();
        return near >= 2 && (wrong == Case.TOO_WEAK ? percent < shares.low() : percent > shares.high());
    }

    /** By how much Rf/(1 − Rf) grows each time the share is doubled, on average of the spots between the first plate and a right one [1]. */
    private static double perDoubling(WorksheetBench bench, Drawn drawn, Shares shares) {
        double from = drawn.first().percentStrong();
        double to = middle(shares);
        double step = drawn.compounds().stream()
                .mapToDouble(each -> logit(bench.possible().rf(drawn.sample(), each, to))
                        - logit(bench.possible().rf(drawn.sample(), each, from)))
                .average()
                .orElseThrow();
        return Math.exp(step * Math.log(2) / Math.log(to / from));
    }

    private static double logit(double rf) {
        return RetentionFactor.logit(Math.max(LEAST_RF, Math.min(1 - LEAST_RF, rf)));
    }

    private static Optional<WorksheetQuestion> question(
            WorksheetBench bench, Drawn drawn, Shares shares, Advice advice) {
        List<Message> asked = List.of(
                Message.of(
                        "lesson.worksheet-plate-of",
                        "eluent",
                        bench.eluent(drawn.first()),
                        "compounds",
                        WorksheetBench.lettered(drawn.compounds())),
                Message.of("lesson.worksheet-ratio-ask"),
                Message.of(
                        "lesson.worksheet-ratio-rule",
                        "strong",
                        bench.strong().said(),
                        "factor",
                        perDoubling(bench, drawn, shares)));
        List<Message> says = new ArrayList<>();
        says.add(Message.of(
                drawn.wrong() == Case.TOO_WEAK
                        ? "lesson.worksheet-ratio-too-weak"
                        : "lesson.worksheet-ratio-too-strong",
                "strong",
                bench.strong().said()));
        says.add(Message.of(
                "lesson.worksheet-ratio-range",
                "strong",
                bench.strong().said(),
                "low",
                shares.low(),
                "high",
                shares.high(),
                "lowMl",
                shares.low() / 10.0,
                "highMl",
                shares.high() / 10.0));
        says.add(Message.of(
                "lesson.worksheet-ratio-advice",
                "ratio",
                advice.ratio().weak() + " : " + advice.ratio().strong(),
                "weak",
                bench.weak().said(),
                "strong",
                bench.strong().said(),
                "weakMl",
                advice.pour().weakMl(),
                "strongMl",
                advice.pour().strongMl(),
                "chance",
                100 * advice.forecast().chance()));
        return Optional.of(new WorksheetQuestion(
                WorksheetKind.RATIO,
                asked,
                Optional.of(drawn.plate()),
                Optional.of(toFill(bench)),
                2,
                new WorksheetQuestion.Key(
                        says,
                        Optional.of(there(bench, drawn, shares)),
                        List.of(new WorksheetQuestion.Figure(
                                "percentStrong", middle(shares), shares.low(), shares.high())))));
    }

    private static WorksheetTable toFill(WorksheetBench bench) {
        List<Message> columns = List.of(
                Message.of("lesson.worksheet-column-ratio"),
                Message.of("lesson.worksheet-column-ml", "solvent", bench.weak().said()),
                Message.of(
                        "lesson.worksheet-column-ml", "solvent", bench.strong().said()));
        return new WorksheetTable(columns, List.of(WorksheetTable.toFill(columns.size())));
    }

    /** Where the spots lie at both ends of what is right. */
    private static WorksheetTable there(WorksheetBench bench, Drawn drawn, Shares shares) {
        List<List<Optional<Message>>> rows = new ArrayList<>();
        for (LessonCompound each : drawn.compounds()) {
            rows.add(WorksheetTable.full(
                    WorksheetBench.named(each),
                    RulerTables.rf(bench.possible()
                            .rf(drawn.sample(), each, drawn.first().percentStrong())),
                    RulerTables.rf(bench.possible().rf(drawn.sample(), each, shares.low())),
                    RulerTables.rf(bench.possible().rf(drawn.sample(), each, shares.high()))));
        }
        return new WorksheetTable(
                List.of(
                        Message.of("lesson.worksheet-column-compound"),
                        Message.of("lesson.worksheet-column-rf-first"),
                        Message.of("lesson.worksheet-column-rf-at", "percent", shares.low()),
                        Message.of("lesson.worksheet-column-rf-at", "percent", shares.high())),
                rows);
    }
}
