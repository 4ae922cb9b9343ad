package midplate.terminal;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import midplate.advice.OtherEluent;
import midplate.advice.Question;
import midplate.advice.Replacements;
import midplate.wire.Exchange;
import midplate.wire.OthersAnswer;
import midplate.words.Digits;
import midplate.words.Message;

/** Other eluents of equal strength, in words: a line for each, then what to know of it. */
final class SpokenOthers {
    private final Exchange exchange;
    private final Question question;
    private final Replacements found;

    SpokenOthers(Exchange exchange, OthersAnswer answer) {
        this.exchange = exchange;
        this.question = answer.question();
        this.found = answer.replacements();
    }

    void print(PrintWriter out) {
        out.println();
        Paragraph.of(say(Message.of(
                        "terminal.others",
                        "percent",
                        Digits.percent(found.of().percentStrong()),
                        "weak",
                        question.weak().said(),
                        "strong",
                        question.strong().said(),
                        "rf",
                        found.of().rf())))
                .print(out);
        for (OtherEluent other : found.others()) {
            out.println();
            Paragraph.of(say(line(other))).print(out);
            other.reasons().forEach(reason -> Paragraph.item(say(reason)).print(out));
        }
        out.println();
        found.notes().forEach(note -> Paragraph.item(say(note)).print(out));
    }

    private Message line(OtherEluent other) {
        OtherEluent.Pour pour = other.pour();
        double chance = 100 * other.chance();
        String basis = say(
                switch (other.basis()) {
                    case MEASURED -> Message.of("terminal.basis-measured");
                    case THEORY -> Message.of("terminal.basis-theory");
                    case GUESS -> Message.of("terminal.basis-guess");
                });
        Map<String, Object> args = new LinkedHashMap<>();
        args.put("ratio", pour.ratio().toString());
        args.put("weak", other.weak().said());
        args.put("strong", other.strong().said());
        args.put("basis", basis);
        args.put("times", chance);
        if (other.equal().isEmpty()) {
            return new Message("terminal.other-nearest", args);
        }
        OtherEluent.Equal equal = other.equal().get();
        args.put("weakMl", pour.weakMl());
        args.put("strongMl", pour.strongMl());
        args.put("percent", Digits.percent(equal.percentStrong()));
        args.put("low", Digits.percent(equal.low()));
        args.put("high", Digits.percent(equal.high()));
        return new Message("terminal.other-equal", args);
    }

    private String say(Message message) {
        return exchange.texts().render(message);
    }
}
