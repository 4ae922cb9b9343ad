package midplate.wire;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import midplate.plate.Setting;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Nearest;
import midplate.words.Texts;

/** Answers lines of a batch: each says what kind of request it is, or it is one for advice. */
final class BatchLines {
    /** The field that says what a line is; a request that comes alone is known by where it comes in. */
    static final String KIND = "kind";

    private static final String ADVICE = "advice";
    private static final String COLUMN = "column";
    private static final List<String> KINDS = List.of(ADVICE, COLUMN);

    private final Exchange exchange;
    private final Texts texts;

    BatchLines(Exchange exchange) {
        this.exchange = exchange;
        this.texts = exchange.texts();
    }

    /** Answers one line; one that cannot be taken is answered with its faults. Never throws. */
    String answer(byte[] json, Consumer<Throwable> slips) {
        FaultList faults = new FaultList(texts);
        Json request = new Json.Null();
        try {
            request = JsonText.read(JsonText.decoded(json, faults), faults);
            return answer(request, faults);
        } catch (BadInput bad) {
            return ErrorBody.line(QuestionReader.id(request), bad.faults());
        } catch (RuntimeException | StackOverflowError slip) {
            slips.accept(slip);
            return ErrorBody.line(QuestionReader.id(request), List.of(ownFault(slip)));
        }
    }

    private String answer(Json request, FaultList faults) {
        Map<String, Json> rest = new LinkedHashMap<>();
        if (request instanceof Json.Fields fields) {
            rest.putAll(fields.members());
        }
        Json kind = rest.remove(KIND);
        if (kind == null) {
            return exchange.answered(request, Setting.AUTOMATED, faults).json();
        }
        String word = kind instanceof Json.Text text ? text.value() : "";
        if (word.equals(ADVICE)) {
            return exchange.answered(new Json.Fields(rest), Setting.AUTOMATED, faults)
                    .json();
        }
        if (word.equals(COLUMN)) {
            return exchange.columns()
                    .plan(new Json.Fields(rest), Setting.AUTOMATED, faults)
                    .json();
        }
        faults.add(
                KIND,
                Message.of("fault.unknown-choice", "name", KIND),
                kind.shown(),
                Allowed.words(KINDS),
                Nearest.to(word, KINDS)
                        .map(near -> Message.of("todo.did-you-mean", "name", near))
                        .orElse(Message.of("todo.take-one-of-these")));
        throw new BadInput(BadInput.Kind.FIELDS, faults.faults());
    }

    /** The answer in place of a line that was too long to be read. */
    String tooLong() {
        FaultList faults = new FaultList(texts);
        faults.add(
                "request",
                Message.of("fault.too-large", "most", Exchange.MOST_BYTES),
                Message.of("came.more-bytes", "most", Exchange.MOST_BYTES),
                Message.of("allowed.bytes", "interval", Allowed.closed(0, Exchange.MOST_BYTES)),
                Message.of("todo.one-request-a-line"));
        return ErrorBody.line(new Json.Null(), faults.faults());
    }

    private Fault ownFault(Throwable slip) {
        Message message = Message.of("fault.own-fault");
        return new Fault(
                "request",
                message.code(),
                slip.toString(),
                texts.render(Message.of("allowed.answer")),
                texts.render(Message.of("todo.report-line")),
                texts.render(message));
    }
}
