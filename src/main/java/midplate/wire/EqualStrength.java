package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import midplate.catalogue.LocalizationClass;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.StrengthInputs;
import midplate.catalogue.StrengthSeries;
import midplate.chemistry.EluentComponent;
import midplate.chemistry.EluentStrength;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.Digits;
import midplate.words.Message;
import midplate.words.Refusal;
import midplate.words.Texts;

/** Answers questions about equal strength from published tables alone; every answer is marked as theory. */
final class EqualStrength {
    private static final int DECIMALS = 4;

    private final SolventCatalogue catalogue;
    private final Texts texts;
    private final Speech speech;
    private final FaultList faults;
    private final StrengthQuestion question;
    private final Set<Message> notes = new LinkedHashSet<>();
    private final List<Message> lines = new ArrayList<>();

    EqualStrength(SolventCatalogue catalogue, Speech speech, FaultList faults, StrengthQuestion question) {
        this.catalogue = catalogue;
        this.texts = speech.texts();
        this.speech = speech;
        this.faults = faults;
        this.question = question;
    }

    /**
     * The answer, one entry for each table that knows the solvents.
     *
     * @throws BadInput when no table does, or the other pair is equally strong at no ratio
     */
    StrengthAnswer answer() {
        ObjectNode body = JsonWriting.object();
        body.put("basis", "theory");
        body.put("sorbent", question.sorbent().id());
        body.set("weak", JsonWriting.solvent(question.pair().weak(), texts));
        body.set("strong", JsonWriting.solvent(question.pair().strong(), texts));
        body.set("percentStrong", JsonWriting.exact(question.percentStrong()));
        ArrayNode entries = body.putArray("series");
        for (StrengthSeries series : question.series()) {
            mixture(series).ifPresent(entries::add);
        }
        if (entries.isEmpty()) {
            faults.throwIfAny();
            unknownStrength();
        }
        notes.add(Message.of("note.theory-only"));
        notes.add(Message.of("note.activity", "activity", question.activity()));
        if (question.to().isPresent()) {
            notes.add(classes(question.to().get()));
        }
        ArrayNode said = body.putArray("notes");
        notes.forEach(note -> said.add(JsonWriting.message(note, texts)));
        return new StrengthAnswer(lines, List.copyOf(notes), JsonWriting.text(body));
    }

    private Optional<ObjectNode> mixture(StrengthSeries series) {
        Optional<StrengthInputs> weak = known(question.pair().weak(), series);
        Optional<StrengthInputs> strong = known(question.pair().strong(), series);
        if (weak.isEmpty() || strong.isEmpty()) {
            return Optional.empty();
        }
        double fraction = question.percentStrong() / 100;
        try {
            EluentComponent a = weak.get().component();
            EluentComponent b = strong.get().component();
            double strength = EluentStrength.binary(a, b, fraction, question.activity());
            ObjectNode entry = JsonWriting.object().put("series", series.condition(question.sorbent()));
            line("note.strength-is", series, "strength", strength);
            entry.put("basis", "theory");
            entry.set("strength", JsonWriting.number(strength, DECIMALS));
            if (question.sorbent() == Sorbent.SILICA) {
                entry.set(
                        "coverage",
                        JsonWriting.number(EluentStrength.coverage(a, b, fraction, question.activity()), DECIMALS));
            }
            ArrayNode inputs = entry.putArray("inputs");
            used(weak.get()).forEach(inputs::add);
            used(strong.get()).forEach(inputs::add);
            return question.to().isPresent() ? other(entry, question.to().get(), series, strength) : Optional.of(entry);
        } catch (Refusal refusal) {
            faults.add(refusal.field(), refusal);
            return Optional.empty();
        }
    }

    private Optional<ObjectNode> other(ObjectNode entry, PairReader.Pair to, StrengthSeries series, double strength) {
        Optional<StrengthInputs> weak = known(to.weak(), series);
        Optional<StrengthInputs> strong = known(to.strong(), series);
        if (weak.isEmpty() || strong.isEmpty()) {
            return Optional.empty();
        }
        try {
            double percent = EluentStrength.percentForStrength(
                    weak.get().component(), strong.get().component(), strength, question.activity());
            line(
                    "note.equally-strong",
                    series,
                    "percent",
                    Digits.aboutPercent(percent),
                    "weak",
                    to.weak().said(),
                    "strong",
                    to.strong().said());
            ObjectNode node = entry.putObject("to");
            node.set("weak", JsonWriting.solvent(to.weak(), texts));
            node.set("strong", JsonWriting.solvent(to.strong(), texts));
            node.set("percentStrong", JsonWriting.number(percent, 2));
            ArrayNode inputs = (ArrayNode) entry.get("inputs");
            used(weak.get()).forEach(inputs::add);
            used(strong.get()).forEach(inputs::add);
            return Optional.of(entry);
        } catch (Refusal refusal) {
            faults.add("to", refusal);
            return Optional.empty();
        }
    }

    private void line(String key, StrengthSeries series, Object... more) {
        List<Object> args = new ArrayList<>(List.of("series", series.said(question.sorbent())));
        args.addAll(List.of(more));
        lines.add(Message.of(key, args.toArray()));
    }

    /** The solvent itself, or what stands in for it, which is said. */
    private Optional<StrengthInputs> known(Solvent solvent, StrengthSeries series) {
        Optional<StrengthInputs> known = StrengthInputs.of(catalogue, solvent, question.sorbent(), series);
        known.filter(found -> !found.solvent().equals(solvent))
                .ifPresent(found -> notes.add(Message.of(
                        "note.calculated-as",
                        "solvent",
                        solvent.said(),
                        "standIn",
                        found.solvent().said())));
        return known;
    }

    private ArrayNode used(StrengthInputs known) {
        ArrayNode list = JsonWriting.array();
        known.values().forEach(value -> list.add(PublishedWriter.value(known.solvent(), value, speech)));
        return list;
    }

    private Message classes(PairReader.Pair to) {
        Message one = question.pair().strong().said();
        Message other = to.strong().said();
        LocalizationClass mine = catalogue.localization(question.pair().strong());
        LocalizationClass theirs = catalogue.localization(to.strong());
        if (mine == LocalizationClass.UNKNOWN || theirs == LocalizationClass.UNKNOWN) {
            return Message.of("note.unknown-class", "one", one, "other", other);
        }
        return mine == theirs
                ? Message.of("note.same-class", "one", one, "other", other)
                : Message.of("note.other-class", "one", one, "other", other);
    }

    private void unknownStrength() {
        faults.add(
                "strong",
                Message.of("fault.strength-unknown"),
                question.pair().strong().name(),
                Message.of("allowed.known-strength"),
                Message.of("todo.no-table"));
        faults.throwIfAny();
    }
}
