package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.words.Message;

/** What the grades on the plates of a reaction warn of, whatever its state is. */
final class ReactionWarnings {
    private final ReactionSight sight;

    ReactionWarnings(ReactionSight sight) {
        this.sight = sight;
    }

    /** Starting materials that became stronger from a plate to the next, which no reaction does. */
    List<Message> strongerStarts() {
        List<Message> stronger = new ArrayList<>();
        for (ReactionSpecies species : sight.question().of(SpeciesPart.START)) {
            List<ReactionPlate> plates = sight.with(species.name());
            for (int i = 1; i < plates.size(); i++) {
                int before = plates.get(i - 1).grade(species.name()).orElseThrow();
                int now = plates.get(i).grade(species.name()).orElseThrow();
                if (now > before) {
                    stronger.add(Message.of(
                            "done.stronger",
                            "spot",
                            species.name(),
                            "minutes",
                            ReactionReasons.minutes(plates.get(i)),
                            "before",
                            before,
                            "grade",
                            now));
                }
            }
        }
        return stronger;
    }

    /** A product that stood higher than on the latest plate, where that is not the verdict itself. */
    Optional<Message> fallingProduct(ReactionState state) {
        Optional<String> product = sight.productName();
        if (state == ReactionState.GONE_WRONG || product.isEmpty()) {
            return Optional.empty();
        }
        int most = sight.most(product.get());
        int now = sight.latest(product.get()).orElse(most);
        if (now >= most) {
            return Optional.empty();
        }
        boolean line = sight.last().baseline().orElse(ReactionMark.UNSEEN) > sight.firstBaseline();
        return Optional.of(Message.of(
                line ? "done.product-falls-line" : "done.product-falls",
                "product",
                product.get(),
                "most",
                most,
                "grade",
                now));
    }
}
