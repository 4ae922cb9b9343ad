package midplate.column;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import midplate.column.FractionAnswer.Balance;
import midplate.column.FractionAnswer.Kind;
import midplate.column.FractionAnswer.Pool;
import midplate.words.Message;
import midplate.words.Refusal;

/** Says which tubes of a run to pour together, and what the weighed flasks come to. */
public final class FractionPooling {
    /** More than this of what was put on cannot be; less is an error of weighing [1]. */
    private static final double OVER = 1.02;
    /** Below this, something is missing [1]. */
    private static final double COMPLETE = 0.9;

    private final FractionQuestion question;
    private final List<TubeRun> runs;
    private final List<Message> warnings = new ArrayList<>();
    private final List<Message> notes = new ArrayList<>();

    private FractionPooling(FractionQuestion question) {
        this.question = question;
        this.runs = TubeRun.all(question.tubes());
    }

    /**
     * The pools, the balance and where each compound left.
     *
     * @throws Refusal when the tubes or flasks cannot be as told; the first of {@link FractionFaults#in}
     */
    public static FractionAnswer pool(FractionQuestion question) {
        List<Refusal> faults = FractionFaults.in(question);
        if (!faults.isEmpty()) {
            throw faults.get(0);
        }
        return new FractionPooling(question).answer();
    }

    private FractionAnswer answer() {
        List<Pool> pools = runs.stream().map(this::pool).toList();
        Optional<Balance> balance = balance();
        SeenBands bands = new SeenBands(question);
        target();
        flasks();
        notes.addAll(bands.notes());
        return new FractionAnswer(pools, balance, bands.all(), warnings, notes);
    }

    private Pool pool(TubeRun run) {
        return new Pool(
                run.kind(),
                question.spots().stream().filter(run.spots()::contains).toList(),
                run.from() + 1,
                run.to() + 1,
                run.length() * question.fractionMl(),
                mass(run),
                new PoolReasons(question, runs).of(run));
    }

    /** What the flasks that hold tubes of one run alone weigh [mg]. */
    private OptionalDouble mass(TubeRun run) {
        List<Flask> inside =
                question.flasks().stream().filter(flask -> holds(run, flask)).toList();
        return inside.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(inside.stream().mapToDouble(Flask::netMg).sum());
    }

    private static boolean holds(TubeRun run, Flask flask) {
        return flask.fromTube() - 1 >= run.from() && flask.toTube() - 1 <= run.to();
    }

    private boolean isTarget(TubeRun run) {
        return run.kind() == Kind.PURE && run.spots().contains(question.target());
    }

    /** Whether the target was found alone anywhere. */
    private void target() {
        if (runs.stream().noneMatch(this::isTarget)) {
            boolean seen = runs.stream().anyMatch(run -> run.spots().contains(question.target()));
            warnings.add(
                    seen
                            ? Message.of("column.target-never-pure", "target", question.target())
                            : Message.of("column.target-not-seen", "target", question.target()));
        }
    }

    /** Flasks that mix pools, and tubes poured twice. */
    private void flasks() {
        Set<Integer> poured = new HashSet<>();
        for (Flask flask : question.flasks()) {
            boolean inside = runs.stream().anyMatch(run -> holds(run, flask));
            if (!inside) {
                warnings.add(Message.of(
                        "column.flask-crosses", "from", flask.fromTube(), "to", flask.toTube(), "mg", flask.netMg()));
            }
            boolean twice = false;
            for (int tube = flask.fromTube(); tube <= flask.toTube(); tube++) {
                twice |= !poured.add(tube);
            }
            if (twice) {
                warnings.add(Message.of("column.tube-twice", "from", flask.fromTube(), "to", flask.toTube()));
            }
        }
        if (!question.flasks().isEmpty()) {
            runs.stream().filter(this::isTarget).forEach(run -> left(run, poured));
        }
    }

    /** Tubes of the target that are in no flask. */
    private void left(TubeRun run, Set<Integer> poured) {
        int missing = 0;
        for (int at = run.from(); at <= run.to(); at++) {
            missing += poured.contains(at + 1) ? 0 : 1;
        }
        if (missing > 0) {
            notes.add(Message.of(
                    "column.tubes-not-weighed", "count", missing, "from", run.from() + 1, "to", run.to() + 1));
        }
    }

    private Optional<Balance> balance() {
        if (question.flasks().isEmpty()) {
            return Optional.empty();
        }
        double found = question.flasks().stream().mapToDouble(Flask::netMg).sum();
        double pure = runs.stream()
                .filter(this::isTarget)
                .mapToDouble(run -> mass(run).orElse(0))
                .sum();
        double share = found / question.massMg();
        return Optional.of(new Balance(found, share, pure, said(found, share, pure)));
    }

    private Message said(double found, double share, double pure) {
        Object[] values = {
            "foundMg",
            found,
            "percent",
            100 * share,
            "massMg",
            question.massMg(),
            "pureMg",
            pure,
            "target",
            question.target(),
            "purePercent",
            100 * pure / question.massMg()
        };
        if (share > OVER) {
            return Message.of("column.balance-over", values);
        }
        return share >= COMPLETE
                ? Message.of("column.balance-complete", values)
                : Message.of("column.balance-short", values);
    }
}
