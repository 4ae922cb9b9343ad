package midplate.wire;

import java.util.HashMap;
import java.util.Map;
import midplate.catalogue.FunctionalGroups;
import midplate.chemistry.GroupCounts;
import midplate.inference.BadMeasurements;
import midplate.inference.GroupCounter;
import midplate.inference.OpenMeasurements;
import midplate.structure.Structures;
import midplate.words.Language;
import midplate.words.Refusal;
import midplate.words.Texts;

/**
 * The functional groups of all structures that were measured, found once. Immutable and safe to share between threads. It stands in
 * this room because none below may know both the measurements and the structures.
 */
public final class MeasuredStructures implements GroupCounter {
    private final Map<String, GroupCounts> counts;

    private MeasuredStructures(Map<String, GroupCounts> counts) {
        this.counts = Map.copyOf(counts);
    }

    /**
     * Reads them all.
     *
     * @throws BadMeasurements when one cannot be read
     */
    public static MeasuredStructures of(OpenMeasurements measurements, FunctionalGroups groups) {
        Structures structures = Structures.of(groups);
        Map<String, GroupCounts> counts = new HashMap<>();
        for (String smiles : measurements.structures()) {
            try {
                counts.put(smiles, structures.counts(smiles));
            } catch (Refusal refusal) {
                throw BadMeasurements.structure(
                        smiles, Texts.of(Language.ENGLISH).render(refusal.reason()));
            }
        }
        return new MeasuredStructures(counts);
    }

    @Override
    public GroupCounts of(String smiles) {
        GroupCounts known = counts.get(smiles);
        if (known == null) {
            throw new IllegalArgumentException("structure " + smiles + "; allowed are those measured.");
        }
        return known;
    }
}
