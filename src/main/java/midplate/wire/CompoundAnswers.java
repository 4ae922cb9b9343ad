package midplate.wire;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.advice.Question;
import midplate.catalogue.PlatePair;
import midplate.words.Message;
import midplate.words.Refusal;

/** What is answered about compounds, beside an advice and by themselves. */
final class CompoundAnswers {
    private final Foretelling foretelling;
    private final CompoundWriter writer;

    CompoundAnswers(Compounds compounds, Foretelling foretelling, Speech speech) {
        this.foretelling = foretelling;
        this.writer = new CompoundWriter(compounds, speech);
    }

    /** What the spots of a question are made of; what is to be told of that goes to the notes, unless it stands there already. */
    List<ObjectNode> beside(Asked asked, List<Note> notes) {
        List<ObjectNode> written = new ArrayList<>();
        Question question = asked.question();
        for (SpotStructure structure : asked.structures()) {
            Compounds.Described described = structure.described();
            written.add(writer.ofSpot(
                    structure,
                    foretelling.of(question.sorbent(), question.weak(), question.strong(), described.counts())));
            described.molecule().stream()
                    .flatMap(molecule -> molecule.notes().stream())
                    .map(note -> Message.of("note.of-spot", "spot", structure.spot(), "note", note))
                    .filter(note ->
                            notes.stream().noneMatch(told -> told.message().equals(note)))
                    .forEach(note -> notes.add(new Note(note, Optional.of(structure.about()))));
        }
        return written;
    }

    /** A compound by itself; a pair that was not measured is a fault. */
    String of(StructureQuestion question, FaultList faults) {
        Compounds.Described described = question.described();
        try {
            return writer.whole(
                    described,
                    foretelling.of(question.sorbent(), question.weak(), question.strong(), described.counts()));
        } catch (Refusal refusal) {
            faults.add(refusal.field(), refusal);
            throw new BadInput(BadInput.Kind.FIELDS, faults.faults());
        }
    }

    /** All groups and classes. */
    String groups(List<PlatePair> pairs) {
        return writer.all(pairs, foretelling);
    }
}
