package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import midplate.notebook.AdviceOutcomes;
import midplate.notebook.ScoredAdvice;
import midplate.notebook.ScoredAdvice.SpotOutcome;
import midplate.notebook.Study;
import midplate.notebook.StudySummary;
import midplate.notebook.TrackRecord;
import midplate.notebook.TrackRecord.Rate;
import midplate.plate.Limit;
import midplate.plate.Reading;
import midplate.words.Message;
import midplate.words.Texts;

/** Writes what was advised beside what happened: how often this laboratory's advice came true, and each advice of a study. */
final class OutcomesWriter {
    private static final int DECIMALS = 4;
    private static final int PER_CENT = 100;

    private final Texts texts;

    OutcomesWriter(Texts texts) {
        this.texts = texts;
    }

    /** The answer. */
    String write(List<StudySummary> studies, Optional<Study> study) {
        ObjectNode body = JsonWriting.object();
        body.set("laboratory", laboratory(TrackRecord.ofStudies(studies)));
        study.ifPresent(one -> {
            ArrayNode list = body.putArray("study");
            AdviceOutcomes.of(one).forEach(scored -> list.add(advice(scored)));
        });
        return JsonWriting.text(body);
    }

    private ObjectNode laboratory(TrackRecord record) {
        ObjectNode node = JsonWriting.object()
                .put("scored", record.all().map(Rate::of).orElse(0))
                .put("cameTrue", record.all().map(Rate::cameTrue).orElse(0));
        record.all().ifPresent(rate -> rate(rate, node));
        if (!record.groups().isEmpty()) {
            ArrayNode groups = node.putArray("groups");
            record.groups()
                    .forEach(group -> rate(
                            group,
                            groups.addObject().put("cameTrue", group.cameTrue()).put("of", group.of())));
        }
        node.set(
                "text",
                JsonWriting.message(
                        record.all().map(OutcomesWriter::said).orElse(Message.of("outcome.advice-none")), texts));
        return node;
    }

    private static void rate(Rate rate, ObjectNode node) {
        node.set("said", JsonWriting.number(rate.said(), DECIMALS));
        node.set("low", JsonWriting.number(rate.low(), DECIMALS));
        node.set("high", JsonWriting.number(rate.high(), DECIMALS));
    }

    /** Under ten a rate is no number yet: how many of how many says it all. */
    private static Message said(Rate rate) {
        double expected = rate.said() * rate.of();
        if (rate.of() < TrackRecord.LEAST_FOR_GROUPS) {
            return Message.of(
                    "outcome.advice-foretold", "cameTrue", rate.cameTrue(), "scored", rate.of(), "expected", expected);
        }
        return Message.of(
                "outcome.advice-rate",
                "cameTrue",
                rate.cameTrue(),
                "scored",
                rate.of(),
                "expected",
                expected,
                "low",
                (int) Math.round(rate.low() * PER_CENT),
                "high",
                (int) Math.round(rate.high() * PER_CENT));
    }

    private ObjectNode advice(ScoredAdvice scored) {
        ObjectNode node = JsonWriting.object().put("advice", scored.number());
        scored.plate().ifPresent(plate -> node.put("plate", plate));
        node.put("outcome", scored.outcome().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        node.set("text", JsonWriting.message(scored.why(), texts));
        ArrayNode spots = node.putArray("spots");
        for (SpotOutcome spot : scored.spots()) {
            ObjectNode one = spots.addObject().put("spot", spot.foretold().spot());
            one.set("rf", JsonWriting.number(spot.foretold().rf(), DECIMALS));
            one.set("low", JsonWriting.number(spot.foretold().low(), DECIMALS));
            one.set("high", JsonWriting.number(spot.foretold().high(), DECIMALS));
            spot.read().ifPresent(read -> read(read, one, "read"));
        }
        if (!scored.unlabelled().isEmpty()) {
            ArrayNode unlabelled = node.putArray("unlabelled");
            scored.unlabelled().forEach(read -> read(read, unlabelled.addObject(), "read"));
        }
        return node;
    }

    /** A reading; a bound says at which line. */
    private static void read(Reading reading, ObjectNode node, String name) {
        node.set(name, JsonWriting.number(reading.rf(), DECIMALS));
        if (reading.limit() != Limit.NONE) {
            node.put("limit", reading.limit() == Limit.AT_START ? "at-start" : "at-front");
        }
    }
}
