package midplate.identity;

import java.util.List;
import java.util.Optional;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.plate.Setting;

/**
 * The eluent that the plates at hand ran in, for what the model is asked about.
 *
 * @param sorbent the layer
 * @param weak the weaker solvent
 * @param strong the stronger solvent
 * @param percentStrong share of the stronger solvent [% v/v, measured before mixing], in [0, 100]
 * @param additive what else is in it, as written
 * @param setting how much plates scatter here
 * @param shelf the solvents at hand; empty for any
 */
public record PlateEluent(
        Sorbent sorbent,
        Solvent weak,
        Solvent strong,
        double percentStrong,
        Optional<String> additive,
        Setting setting,
        List<Solvent> shelf) {
    /** Keeps its own copy. */
    public PlateEluent {
        shelf = List.copyOf(shelf);
    }
}
