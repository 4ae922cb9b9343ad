package midplate.wire;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.Message;

/**
 * A question about one compound in a pair.
 *
 * @param sorbent the layer
 * @param pair the two solvents
 * @param described the compound
 */
record StructureQuestion(Sorbent sorbent, PairReader.Pair pair, Compounds.Described described) {
    static final List<String> FIELDS = List.of("smiles", "groups", "class", "sorbent", "weak", "strong");

    private static final String USUAL_WEAK = "hexane";
    private static final String USUAL_STRONG = "ethyl-acetate";

    /**
     * Reads it; silica with hexane and ethyl acetate where nothing else is named.
     *
     * @throws BadInput with all faults
     */
    static StructureQuestion read(Json value, SolventCatalogue catalogue, Compounds compounds, FaultList faults) {
        JsonFields fields = JsonFields.of("", value, faults, FIELDS)
                .orElseThrow(() -> new BadInput(BadInput.Kind.FIELDS, faults.faults()));
        Sorbent sorbent = fields.choice(
                        "sorbent",
                        Arrays.stream(Sorbent.values()).map(Sorbent::id).toList())
                .flatMap(Sorbent::byId)
                .orElse(Sorbent.SILICA);
        Optional<PairReader.Pair> pair = fields.has("weak") || fields.has("strong")
                ? new PairReader(catalogue, faults).read(fields, sorbent)
                : Optional.of(new PairReader.Pair(
                        catalogue.solventIn("weak", USUAL_WEAK), catalogue.solventIn("strong", USUAL_STRONG)));
        if (CompoundReader.FIELDS.stream().noneMatch(fields::has)) {
            faults.add(
                    "smiles",
                    Message.of("fault.no-structure"),
                    Message.of("came.nothing"),
                    Message.of("allowed.one-structure"),
                    Message.of("todo.give-structure"));
        }
        Optional<Compounds.Described> described = new CompoundReader(compounds, faults).read(fields);
        faults.throwIfAny();
        return new StructureQuestion(sorbent, pair.orElseThrow(), described.orElseThrow());
    }

    Solvent weak() {
        return pair.weak();
    }

    Solvent strong() {
        return pair.strong();
    }
}
