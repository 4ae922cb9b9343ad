package midplate.terminal;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import midplate.column.Cartridge;
import midplate.column.ColumnPlan;
import midplate.column.ColumnPlan.SpotBand;
import midplate.column.ColumnPlan.StepPour;
import midplate.column.GlassColumn;
import midplate.column.Loading;
import midplate.column.Program;
import midplate.column.Range90;
import midplate.wire.ColumnAnswer;
import midplate.wire.Exchange;
import midplate.words.Message;

/** The plan of a column in words: bed, load, eluents, when each spot leaves, what to keep, why, what to mind. */
final class SpokenColumn {
    private static final double PERCENT = 100;

    private final Exchange exchange;
    private final ColumnAnswer answer;
    private final ColumnPlan plan;

    SpokenColumn(Exchange exchange, ColumnAnswer answer) {
        this.exchange = exchange;
        this.answer = answer;
        this.plan = answer.plan();
    }

    void print(PrintWriter out) {
        Paragraph.of(say(bed()) + " " + say(plan.bed().basis().said())).print(out);
        plan.load().portion().ifPresent(portion -> Paragraph.of(say(portion)).print(out));
        Paragraph.of(say(load())).print(out);
        for (int i = 0; i < plan.pours().size(); i++) {
            Paragraph.of(say(step(plan.program().steps().get(i), plan.pours().get(i))))
                    .print(out);
        }
        if (plan.stopMl().isPresent()) {
            Paragraph.of(say(Message.of("column.stop", "ml", plan.stopMl().getAsDouble())))
                    .print(out);
        }
        Paragraph.of(say(plan.chanceInWords())).print(out);
        Paragraph.of(say(cut())).print(out);
        Paragraph.of(say(run())).print(out);
        Paragraph.section(
                out,
                say(Message.of("terminal.column-bands")),
                plan.bands().stream().map(this::band));
        Paragraph.section(
                out, say(Message.of("terminal.why")), plan.reasons().stream().map(this::say));
        Paragraph.section(
                out,
                say(Message.of("terminal.notes")),
                Stream.concat(plan.warnings().stream(), answer.notes().stream().map(note -> note.message()))
                        .map(this::say));
        Paragraph.section(
                out,
                say(Message.of("terminal.cautions")),
                plan.cautions().stream().map(this::say));
    }

    private Message bed() {
        if (plan.bed() instanceof GlassColumn glass) {
            return Message.of(
                    "terminal.column-glass",
                    "diameter",
                    glass.diameterMm(),
                    "height",
                    glass.bedMm(),
                    "grams",
                    glass.silicaGrams());
        }
        return Message.of("terminal.column-cartridge", "grams", ((Cartridge) plan.bed()).silicaGrams());
    }

    private Message load() {
        ColumnPlan.Load load = plan.load();
        return load.loading() == Loading.DRY
                ? Message.of(
                        "terminal.column-load-dry",
                        "mass",
                        load.massMg(),
                        "silica",
                        load.loadSilicaGrams(),
                        "most",
                        load.mostMg())
                : Message.of(
                        "terminal.column-load-wet",
                        "mass",
                        load.massMg(),
                        "volume",
                        load.loadMl(),
                        "most",
                        load.mostMg());
    }

    private Message step(Program.Step step, StepPour pour) {
        if (pour.weakMl() == 0 || pour.strongMl() == 0) {
            Message alone = pour.strongMl() == 0
                    ? answer.question().sample().weak().said()
                    : answer.question().sample().strong().said();
            return Message.of(
                    "terminal.column-step-alone", "volume", pour.volumeMl(), "solvent", alone, "ready", pour.mixMl());
        }
        Map<String, Object> args = new LinkedHashMap<>();
        args.put("volume", pour.volumeMl());
        args.put("ratio", pour.ratio().toString());
        args.put("weak", answer.question().sample().weak().said());
        args.put("strong", answer.question().sample().strong().said());
        args.put("percent", step.percentStrong());
        args.put("mix", pour.mixMl());
        args.put("weakMl", pour.weakMl());
        args.put("strongMl", pour.strongMl());
        return new Message("terminal.column-step", args);
    }

    private Message cut() {
        String target = answer.question().target();
        return plan.cut()
                .map(cut -> Message.of(
                        "terminal.column-keep",
                        "from",
                        cut.fromFraction(),
                        "to",
                        cut.toFraction(),
                        "fromMl",
                        (cut.fromFraction() - 1) * plan.fractionMl(),
                        "toMl",
                        cut.toFraction() * plan.fractionMl(),
                        "yield",
                        PERCENT * cut.yield(),
                        "target",
                        target,
                        "purity",
                        PERCENT * cut.purity()))
                .orElse(Message.of("terminal.column-keep-none", "target", target));
    }

    private Message run() {
        return Message.of(
                "terminal.column-run",
                "fractions",
                plan.fractions(),
                "fraction",
                plan.fractionMl(),
                "solvent",
                plan.solventMl(),
                "minutes",
                plan.minutes(),
                "flow",
                plan.flowMlMin());
    }

    private String band(SpotBand band) {
        Map<String, Object> args = new LinkedHashMap<>();
        args.put("spot", band.spot());
        put(args, "start", band.startMl());
        put(args, "middle", band.middleMl());
        put(args, "end", band.endMl());
        args.put("ideal", band.idealMl());
        return say(new Message("terminal.column-band", args));
    }

    private static void put(Map<String, Object> args, String name, Range90 range) {
        args.put(name, range.value());
        args.put(name + "Low", range.low());
        args.put(name + "High", range.high());
    }

    private String say(Message message) {
        return exchange.texts().render(message);
    }
}
