package midplate.identity;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A reaction as plates showed it. Of several starting materials, and of several products, the first named is the one that counts.
 *
 * @param species the spots that are followed, all of different names
 * @param plates the plates in the order of time
 * @param eluent what the plates ran in, if the model is to be asked
 * @param expectedMinutes how long such a reaction takes [min], if anybody knows
 */
public record ReactionQuestion(
        List<ReactionSpecies> species,
        List<ReactionPlate> plates,
        Optional<PlateEluent> eluent,
        OptionalDouble expectedMinutes) {
    /** Keeps its own copies. */
    public ReactionQuestion {
        species = List.copyOf(species);
        plates = List.copyOf(plates);
    }

    /** The spots that are such a part, in the order named. */
    public List<ReactionSpecies> of(SpeciesPart part) {
        return species.stream().filter(each -> each.part() == part).toList();
    }

    /** The spot of a part that counts. */
    public Optional<ReactionSpecies> first(SpeciesPart part) {
        return of(part).stream().findFirst();
    }

    /** The latest plate [min]; 0 where there is none. */
    double lastMinutes() {
        return plates.isEmpty() ? 0 : plates.get(plates.size() - 1).minutes();
    }
}
