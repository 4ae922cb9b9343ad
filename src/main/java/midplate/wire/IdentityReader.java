package midplate.wire;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.GroupCounts;
import midplate.identity.Candidate;
import midplate.identity.ComparedPlate;
import midplate.identity.Compound;
import midplate.identity.IdentityFaults;
import midplate.identity.IdentityQuestion;
import midplate.identity.PlateEluent;
import midplate.plate.Setting;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads whether a sample is one of the references that ran beside it. */
final class IdentityReader {
    static final List<String> FIELDS = List.of("plates", "references", "candidates", "unknown", "eluent");
    static final List<String> CANDIDATE = ComparedCompoundReader.fieldsWith("hrf");

    static final int MOST_COMPOUNDS = 50;

    private static final String REFERENCES = "references";
    /** What a sample without a name is called, as in the room below. */
    private static final String NAMELESS = "?";
    /** Where the room below misses a lane: it cannot know of lanes that could not be read. */
    private static final Pattern MISSES_A_LANE = Pattern.compile("plates|references\\[[0-9]+]");

    private final ComparedCompoundReader compounds;
    private final EluentReader eluents;
    private final Compounds known;
    /** Which reference has a structural formula, by its canonical SMILES. */
    private final Map<String, String> formulas = new HashMap<>();

    private final ColumnParts parts;
    private final FaultList faults;

    IdentityReader(SolventCatalogue catalogue, Compounds compounds, FaultList faults) {
        this.compounds = new ComparedCompoundReader(compounds, faults);
        this.known = compounds;
        this.eluents = new EluentReader(catalogue, Setting.BENCH, faults);
        this.parts = new ColumnParts(faults);
        this.faults = faults;
    }

    /**
     * The request.
     *
     * @throws BadInput with all faults
     */
    IdentityQuestion read(Json value) {
        JsonFields fields = JsonFields.of("", value, faults, FIELDS)
                .orElseThrow(() -> new BadInput(BadInput.Kind.FIELDS, faults.faults()));
        List<Compound> references = references(fields);
        boolean named = faults.isEmpty();
        List<ComparedPlate> plates = new LaneReader(parts, faults).plates(fields);
        List<Candidate> candidates = candidates(fields);
        Optional<JsonFields> unknown =
                fields.any("unknown").flatMap(each -> JsonFields.of(fields.path("unknown"), each, faults, CANDIDATE));
        Optional<Compound> sample = unknown.map(this::unknown);
        OptionalDouble hrf = unknown.map(each -> each.number("hrf")).orElse(OptionalDouble.empty());
        Optional<PlateEluent> eluent = eluents.read(fields);
        IdentityQuestion question = new IdentityQuestion(plates, references, candidates, sample, hrf, eluent);
        boolean sound = faults.isEmpty();
        parts.tell(IdentityFaults.in(question).stream()
                .filter(each -> named || !each.field().endsWith(".reference"))
                .filter(each -> sound || !MISSES_A_LANE.matcher(each.field()).matches())
                .toList());
        faults.throwIfAny();
        return question;
    }

    private List<Compound> references(JsonFields fields) {
        if (!fields.has(REFERENCES)) {
            fields.missing(
                    REFERENCES,
                    Message.of("allowed.entries", "interval", Allowed.closed(1, MOST_COMPOUNDS)),
                    Message.of("todo.name-reference", "example", "[{\"name\": \"caffeine\"}]"));
        }
        List<Compound> references = references(fields, new HashSet<>());
        if (!faults.isEmpty()) {
            parts.passOver(REFERENCES);
        }
        return references;
    }

    private List<Compound> references(JsonFields fields, Set<String> names) {
        return compounds.each(fields, REFERENCES, MOST_COMPOUNDS, ComparedCompoundReader.FIELDS, each -> {
            int before = faults.count();
            Optional<Compound> compound = compounds.compound(each, names);
            if (faults.count() == before) {
                compound.ifPresent(
                        read -> formula(each).ifPresent(smiles -> formulas.putIfAbsent(smiles, read.name())));
            }
            return compound;
        });
    }

    /** The canonical SMILES of a compound that was read without a fault, where its formula came. */
    private Optional<String> formula(JsonFields fields) {
        return fields.any("smiles")
                .filter(Json.Text.class::isInstance)
                .map(came -> known.molecule(fields.path("smiles"), ((Json.Text) came).value())
                        .smiles());
    }

    private List<Candidate> candidates(JsonFields fields) {
        Set<String> names = new HashSet<>();
        return compounds.each(fields, "candidates", MOST_COMPOUNDS, CANDIDATE, each -> {
            int before = faults.count();
            Optional<Compound> compound = compounds.compound(each, names);
            OptionalDouble hrf = each.number("hrf");
            if (faults.count() > before) {
                parts.passOver(each.place());
            }
            Optional<String> sameAs =
                    faults.count() > before ? Optional.empty() : formula(each).map(formulas::get);
            return Optional.of(
                    compound.map(read -> new Candidate(read.name(), read.rf(), hrf, read.structure(), sameAs))
                            .orElse(new Candidate(
                                    NAMELESS,
                                    OptionalDouble.empty(),
                                    OptionalDouble.empty(),
                                    Optional.empty(),
                                    Optional.empty())));
        });
    }

    /** What is known of the sample; it need not have a name. */
    private Compound unknown(JsonFields fields) {
        Optional<String> name = fields.text("name", QuestionReader.LONGEST_NAME);
        OptionalDouble rf = RfReader.read(fields, "rf", faults);
        Optional<GroupCounts> structure = compounds.structure(fields);
        return new Compound(name.orElse(NAMELESS), rf, structure);
    }
}
