package midplate.terminal;

import java.io.PrintWriter;
import midplate.advice.Advice;
import midplate.advice.Alternative;
import midplate.advice.Pour;
import midplate.advice.Question;
import midplate.advice.SpotForecast;
import midplate.wire.Answered;
import midplate.wire.ChanceWords;
import midplate.wire.Exchange;
import midplate.words.Message;
import midplate.words.Texts;

/** An advice in words, as one chemist says it to another: what to pour, how sure, what will be seen, why, what to mind. */
final class SpokenAdvice {
    private final Exchange exchange;
    private final Provenance provenance;
    private final Texts texts;
    private final Question question;
    private final Advice advice;
    private final Answered answered;
    private final ChanceWords words;

    SpokenAdvice(Exchange exchange, Provenance provenance, Answered answered) {
        this.exchange = exchange;
        this.provenance = provenance;
        this.texts = exchange.texts();
        this.question = answered.question();
        this.advice = answered.advice();
        this.answered = answered;
        this.words = new ChanceWords(texts);
    }

    void print(PrintWriter out) {
        Paragraph.of(say(ratio())).print(out);
        if (!isPure()) {
            Paragraph.of(say(pour())).print(out);
        }
        Paragraph.of(say(words.of(question, advice.goal().chance()))).print(out);
        out.println();
        for (SpotForecast spot : advice.forecast().spots()) {
            Paragraph.item(say(Message.of(
                            "terminal.spot",
                            "spot",
                            spot.spot(),
                            "rf",
                            spot.rf(),
                            "low",
                            spot.low(),
                            "high",
                            spot.high())))
                    .print(out);
        }
        Paragraph.section(
                out, say(Message.of("terminal.why")), advice.why().stream().map(texts::render));
        Paragraph.section(
                out,
                say(Message.of("terminal.notes")),
                answered.notes().stream().map(note -> say(note.message())));
        Paragraph.section(
                out,
                say(Message.of("terminal.alternatives")),
                advice.alternatives().stream().map(this::alternative));
        Paragraph.section(out, say(Message.of("terminal.cautions")), new SpokenCautions(exchange, question).lines());
        Paragraph.section(out, say(Message.of("terminal.from")), provenance.of(question).stream());
    }

    private Message ratio() {
        int weak = advice.ratio().weak();
        int strong = advice.ratio().strong();
        if (isPure()) {
            String pure =
                    strong == 0 ? question.weak().name() : question.strong().name();
            return Message.of("terminal.pure", "solvent", pure, "amount", amount());
        }
        return Message.of(
                "terminal.ratio",
                "weakParts",
                weak,
                "strongParts",
                strong,
                "weak",
                question.weak().name(),
                "strong",
                question.strong().name(),
                "percent",
                advice.ratio().percentStrong());
    }

    private boolean isPure() {
        return advice.ratio().strong() == 0 || advice.ratio().weak() == 0;
    }

    private double amount() {
        return advice.pour().weakMl() + advice.pour().strongMl();
    }

    private Message pour() {
        Pour pour = advice.pour();
        return Message.of(
                "terminal.pour",
                "amount",
                amount(),
                "weakMl",
                pour.weakMl(),
                "strongMl",
                pour.strongMl(),
                "weak",
                question.weak().name(),
                "strong",
                question.strong().name());
    }

    private String alternative(Alternative alternative) {
        return say(Message.of(
                "terminal.alternative",
                "what",
                texts.render(alternative.what()),
                "count",
                words.plates(alternative.chance())));
    }

    private String say(Message message) {
        return texts.render(message);
    }
}
