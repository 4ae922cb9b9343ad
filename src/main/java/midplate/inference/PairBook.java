package midplate.inference;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import midplate.catalogue.TheoryPair;
import org.jspecify.annotations.Nullable;

/** The models of all pairs, measured ones and, made when first asked for, those from published strengths. */
final class PairBook {
    private final Map<String, PairModel> measured;
    private final Map<String, StructureModel> structures;
    private final Function<String, Optional<TheoryPair>> theory;
    private final Map<String, AcrossPairs.Place> places = new ConcurrentHashMap<>();
    private final Map<String, PairModel> made = new ConcurrentHashMap<>();

    PairBook(
            Map<String, PairModel> measured,
            Map<String, StructureModel> structures,
            Function<String, Optional<TheoryPair>> theory) {
        this.measured = measured;
        this.structures = structures;
        this.theory = theory;
    }

    /** The model of an id; empty when the pair was not measured, nor made from published strengths. */
    Optional<PairModel> find(String pair) {
        PairModel model = measured.get(pair);
        return model != null
                ? Optional.of(model)
                : place(pair).theory().map(each -> made.computeIfAbsent(pair, id -> PairModel.of(each.pair())));
    }

    /** The same, refusing an id that has none. */
    PairModel model(String pair) {
        return find(pair)
                .orElseThrow(() -> new IllegalArgumentException("pair " + pair + "; allowed: " + measured.keySet()));
    }

    /** A pair with the one it borrows its curve from. */
    AcrossPairs.Place place(String pair) {
        return places.computeIfAbsent(
                pair, id -> new AcrossPairs.Place(id, measured.containsKey(id) ? Optional.empty() : theory.apply(id)));
    }

    /** What structures say in a pair, or in the one it borrows its curve from; null where that was not fitted. */
    @Nullable
    StructureModel structure(String pair) {
        return structures.get(place(pair).base());
    }
}
