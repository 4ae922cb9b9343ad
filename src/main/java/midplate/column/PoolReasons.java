package midplate.column;

import java.util.ArrayList;
import java.util.List;
import midplate.column.FractionAnswer.Kind;
import midplate.words.Allowed;
import midplate.words.Message;

/** Says why tubes belong together. */
final class PoolReasons {
    private final FractionQuestion question;
    private final List<TubeRun> runs;

    PoolReasons(FractionQuestion question, List<TubeRun> runs) {
        this.question = question;
        this.runs = runs;
    }

    Message of(TubeRun run) {
        Message why = why(run);
        List<Message> slips = slips(run);
        for (Message slip : slips) {
            why = Message.of("column.pool-and", "first", why, "then", slip);
        }
        return why;
    }

    private Message why(TubeRun run) {
        return switch (run.kind()) {
            case PURE -> {
                String spot = run.spots().iterator().next();
                yield spot.equals(question.target())
                        ? Message.of("column.pool-target", "spot", spot)
                        : Message.of("column.pool-pure", "spot", spot);
            }
            case EMPTY -> empty(run);
            case UNKNOWN -> unknown(run);
            case MIXED -> mixed(run);
        };
    }

    /** One tube that shows nothing inside a band is likely a slip, whatever else its neighbours hold. */
    private Message empty(TubeRun run) {
        List<String> both = question.spots().stream()
                .filter(spot -> stands(run.from() - 1, spot) && stands(run.to() + 1, spot))
                .toList();
        return run.length() > 1 || both.isEmpty()
                ? Message.of("column.pool-empty")
                : Message.of(
                        "column.pool-empty-inside",
                        "tube",
                        run.from() + 1,
                        "spots",
                        Allowed.list(both.stream().map(Allowed::words).toList()));
    }

    private boolean stands(int at, String spot) {
        return at >= 0
                && at < question.tubes().size()
                && question.tubes().get(at).spots().contains(spot);
    }

    /** What stands on both sides decides what to do with tubes that nobody looked at. */
    private Message unknown(TubeRun run) {
        boolean besideTarget = runs.stream()
                .filter(other -> other.to() == run.from() - 1 || other.from() == run.to() + 1)
                .anyMatch(other -> other.spots().contains(question.target()));
        return besideTarget
                ? Message.of("column.pool-unknown-beside", "target", question.target())
                : Message.of("column.pool-unknown");
    }

    private Message mixed(TubeRun run) {
        Message spots = Allowed.list(question.spots().stream()
                .filter(run.spots()::contains)
                .map(Allowed::words)
                .toList());
        List<String> faint = run.spots().contains(question.target()) ? faintBeside(run) : List.of();
        if (faint.isEmpty()) {
            return Message.of("column.pool-mixed", "spots", spots);
        }
        return Message.of(
                "column.pool-faint",
                "target",
                question.target(),
                "faint",
                Allowed.list(faint.stream().map(Allowed::words).toList()));
    }

    /** The other compounds, where each of them is faint in every tube and the target plain; else none. */
    private List<String> faintBeside(TubeRun run) {
        for (int at = run.from(); at <= run.to(); at++) {
            Tube tube = question.tubes().get(at);
            for (String spot : tube.spots()) {
                boolean target = spot.equals(question.target());
                if (target ? tube.strength(spot) < TubeMark.PLAIN : tube.strength(spot) > TubeMark.FAINT) {
                    return List.of();
                }
            }
        }
        return question.spots().stream()
                .filter(spot -> run.spots().contains(spot) && !spot.equals(question.target()))
                .toList();
    }

    /** Tubes that are in it by what their neighbours hold. */
    private List<Message> slips(TubeRun run) {
        List<Message> slips = new ArrayList<>();
        for (int at : run.joined()) {
            if (!question.tubes().get(at).isLookedAt()) {
                slips.add(Message.of("column.pool-not-looked-at", "tube", at + 1));
            } else if (run.kind() != Kind.EMPTY) {
                slips.add(Message.of("column.pool-gap", "tube", at + 1));
            }
        }
        return slips;
    }
}
