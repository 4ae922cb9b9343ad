package midplate.wire;

import java.util.HashSet;
import java.util.List;
import midplate.identity.Compound;

/** Reads which compounds are to be seen. */
final class SeeingReader {
    static final List<String> FIELDS = List.of("compounds");

    private final ComparedCompoundReader compounds;
    private final FaultList faults;

    SeeingReader(Compounds compounds, FaultList faults) {
        this.compounds = new ComparedCompoundReader(compounds, faults);
        this.faults = faults;
    }

    /**
     * The compounds; none where none is known.
     *
     * @throws BadInput with all faults
     */
    List<Compound> read(Json value) {
        JsonFields fields = JsonFields.of("", value, faults, FIELDS)
                .orElseThrow(() -> new BadInput(BadInput.Kind.FIELDS, faults.faults()));
        List<Compound> read = compounds.list(fields, "compounds", QuestionReader.MOST_SPOTS, new HashSet<>());
        faults.throwIfAny();
        return read;
    }
}
