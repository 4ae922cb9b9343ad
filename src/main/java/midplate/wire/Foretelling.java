package midplate.wire;

import java.util.Optional;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.inference.StructureForecast;

/** Foretells what compounds do before any plate. */
@FunctionalInterface
interface Foretelling {
    /** Foretells nothing. */
    Foretelling NONE = (sorbent, weak, strong, counts) -> Optional.empty();

    /**
     * What groups foretell in a pair; empty where nothing was fitted.
     *
     * @throws midplate.words.Refusal when the pair was not measured
     */
    Optional<StructureForecast> of(Sorbent sorbent, Solvent weak, Solvent strong, GroupCounts counts);
}
