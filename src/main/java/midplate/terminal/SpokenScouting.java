package midplate.terminal;

import java.io.PrintWriter;
import midplate.advice.ScoutingPlan;
import midplate.wire.Exchange;
import midplate.wire.ScoutingAnswer;
import midplate.words.Message;

/** Plates to run at once, in words. */
final class SpokenScouting {
    private final Exchange exchange;
    private final ScoutingAnswer answer;

    SpokenScouting(Exchange exchange, ScoutingAnswer answer) {
        this.exchange = exchange;
        this.answer = answer;
    }

    void print(PrintWriter out) {
        ScoutingPlan plan = answer.plan();
        for (ScoutingPlan.Jar jar : plan.jars()) {
            Paragraph.of(say(Message.of(
                            "terminal.scouting-jar",
                            "ratio",
                            jar.ratio().toString(),
                            "weakMl",
                            jar.pour().weakMl(),
                            "strongMl",
                            jar.pour().strongMl(),
                            "weak",
                            answer.question().weak().said(),
                            "strong",
                            answer.question().strong().said())))
                    .print(out);
        }
        out.println();
        plan.reasons().forEach(reason -> Paragraph.item(say(reason)).print(out));
        out.println();
        out.println(say(Message.of("terminal.cautions")));
        new SpokenCautions(exchange, answer.question())
                .lines()
                .forEach(line -> Paragraph.item(line).print(out));
    }

    private String say(Message message) {
        return exchange.texts().render(message);
    }
}
