package midplate.advice;

import java.util.Optional;
import midplate.catalogue.PlatePair;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;

/** Finds the model of a pair that was not measured. */
@FunctionalInterface
public interface PairFinder {
    /** The pair; empty where not even theory knows it. */
    Optional<PlatePair> find(Sorbent sorbent, Solvent weak, Solvent strong);
}
