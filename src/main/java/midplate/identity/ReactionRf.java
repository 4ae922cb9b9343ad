package midplate.identity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.words.Message;

/** Where the spots of a reaction stand, and whether one moved against the others. */
final class ReactionRf {
    /** Spots of one compound differ by no more than this from plate to plate, less what moves all alike [1]; common practice. */
    static final double PLATES_DIFFER = 0.05;
    /** A lone spot may move this far with its plate [1]; own choice. */
    static final double LONE = 0.1;
    /** Spots nearer than this cannot be told apart in a lane [1]: 1.5 mm on a run of 50 mm; own choice. */
    static final double ONE_SPOT = 0.03;
    /** Nearer than this they overlap when the lane is heavy [1]; own choice. */
    static final double CLOSE = 0.1;

    private final ReactionQuestion question;

    ReactionRf(ReactionQuestion question) {
        this.question = question;
    }

    /** Where a spot stands: the middle of what was read on the plates, or else as it was told. */
    OptionalDouble rf(ReactionSpecies species) {
        double[] read = question.plates().stream()
                .flatMap(plate -> plate.mark(species.name()).stream())
                .flatMapToDouble(mark -> mark.rf().stream())
                .toArray();
        return read.length == 0 ? species.compound().rf() : OptionalDouble.of(middle(read));
    }

    /** The same spot with where it stands. */
    Compound placed(ReactionSpecies species) {
        return new Compound(species.name(), rf(species), species.compound().structure());
    }

    /** How far the two that count stand apart; empty where not both are named, or one was nowhere read. */
    Optional<ReactionAnswer.Apart> apart() {
        Optional<ReactionSpecies> start = question.first(SpeciesPart.START);
        Optional<ReactionSpecies> product = question.first(SpeciesPart.PRODUCT);
        if (start.isEmpty() || product.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble one = rf(start.get());
        OptionalDouble other = rf(product.get());
        if (one.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        double gap = Math.abs(one.getAsDouble() - other.getAsDouble());
        String said = gap < ONE_SPOT ? "done.apart-none" : gap < CLOSE ? "done.apart-close" : "done.apart";
        return Optional.of(new ReactionAnswer.Apart(
                OptionalDouble.of(gap),
                Message.of(
                        said,
                        "start",
                        start.get().name(),
                        "product",
                        product.get().name(),
                        "gap",
                        gap)));
    }

    /** Whether starting material and product stand at one place. */
    boolean isOneSpot() {
        return apart().flatMap(apart -> apart.gapRf().stream().boxed().findFirst())
                .filter(gap -> gap < ONE_SPOT)
                .isPresent();
    }

    /** The spots that stand somewhere else on a plate than on the others, plate by plate. */
    List<Message> jumps() {
        List<Message> jumps = new ArrayList<>();
        for (ReactionPlate plate : question.plates()) {
            List<ReactionSpecies> read = question.species().stream()
                    .filter(species -> off(plate, species).isPresent())
                    .toList();
            for (ReactionSpecies species : read) {
                double[] others = read.stream()
                        .filter(other -> !other.equals(species))
                        .mapToDouble(other -> off(plate, other).orElseThrow())
                        .toArray();
                double moved = others.length == 0 ? 0 : middle(others);
                if (others.length == 1
                        && Math.abs(moved) > Math.abs(off(plate, species).orElseThrow())) {
                    continue; // of two, the one that left its place is told
                }
                double jump = off(plate, species).orElseThrow() - moved;
                if (Math.abs(jump) > (others.length == 0 ? LONE : PLATES_DIFFER)) {
                    jumps.add(Message.of(
                            others.length == 0 ? "done.rf-jump-alone" : "done.rf-jump",
                            "spot",
                            species.name(),
                            "minutes",
                            ReactionReasons.minutes(plate),
                            "rf",
                            plate.mark(species.name()).orElseThrow().rf().orElseThrow(),
                            "usual",
                            rf(species).orElseThrow()));
                }
            }
        }
        return jumps;
    }

    private OptionalDouble off(ReactionPlate plate, ReactionSpecies species) {
        OptionalDouble here = plate.mark(species.name()).map(ReactionMark::rf).orElse(OptionalDouble.empty());
        return here.isEmpty()
                ? here
                : OptionalDouble.of(here.getAsDouble() - rf(species).orElseThrow());
    }

    private static double middle(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
