package midplate.inference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import midplate.catalogue.GroupDifference;
import midplate.catalogue.JointTraits;
import midplate.catalogue.TheoryPair;
import org.jspecify.annotations.Nullable;

/**
 * What readings in some pairs say of a compound in another one. The pair that says most is taken point by point, each leading to a
 * normal curve in the pair asked about; what the others say comes in as a normal curve ({@link TraitSite}).
 */
final class AcrossPairs {
    private final @Nullable JointTraits traits;
    private final @Nullable JointNormal joint;
    private final Map<Way, GroupShift> shifts = new LinkedHashMap<>();

    private record Way(String from, String to) {}

    /**
     * What is known of a compound in a pair.
     *
     * @param pair which, with the pair it borrows its curve from where it was not measured
     * @param before what was thought of it before it was read there
     * @param after what is since
     */
    record Read(Place pair, TraitPrior before, TraitCloud after) {}

    /**
     * A pair.
     *
     * @param id its id
     * @param theory how it was made, where it was not measured
     */
    record Place(String id, Optional<TheoryPair> theory) {
        /** How far all compounds may be off together [ln units]. */
        double sharedC() {
            return theory.map(TheoryPair::sharedC).orElse(0.0);
        }

        /** The same where each compound is off by itself only. */
        Place withoutShared() {
            return new Place(id, theory.map(TheoryPair::withoutShared));
        }

        /** The measured pair that its curve comes from. */
        String base() {
            return theory.map(TheoryPair::base).orElse(id);
        }
    }

    /** Pairs of which each stands alone where the traits are empty. */
    AcrossPairs(Optional<JointTraits> traits, MoleculeParts parts) {
        this.traits = traits.orElse(null);
        this.joint = traits.map(JointNormal::of).orElse(null);
        for (GroupDifference difference : traits.map(JointTraits::differences).orElse(List.of())) {
            shifts.put(new Way(difference.from(), difference.to()), new GroupShift(parts, difference));
        }
    }

    /** Whether readings in one pair say something about another. */
    boolean isLinked(Place from, Place to) {
        return joint != null
                && traits != null
                && !from.id().equals(to.id())
                && joint.knows(from.base())
                && joint.knows(to.base())
                && (from.base().equals(to.base())
                        || traits.reach(from.base(), to.base()).isPresent());
    }

    /** Whether a compound of that c in one pair lies among those measured in both; of pairs of one base, any does. */
    boolean reaches(Place from, Place to, double c) {
        return isLinked(from, to)
                && traits != null
                && (from.base().equals(to.base())
                        || traits.reach(from.base(), to.base())
                                .filter(reach -> reach.holds(c))
                                .isPresent());
    }

    /**
     * What is thought of a compound in a pair after it was read in others.
     *
     * @param to the pair asked about
     * @param there what compounds are like in it
     * @param reads what is known of it in other pairs, all linked to that one, at least one
     * @param row its parts; null where its structure is not known
     */
    TraitPrior prior(Place to, TraitPrior there, List<Read> reads, double @Nullable [] row) {
        if (joint == null) {
            throw new IllegalStateException("No joint traits; ask isLinked first.");
        }
        JointNormal normal = over(
                Stream.concat(Stream.of(to), reads.stream().map(Read::pair)).toList());
        Read most = reads.get(0);
        if (reads.size() > 1) {
            most = narrowest(normal, to, reads, row);
            JointNormal before = normal;
            for (Read read : reads) {
                if (read != most) {
                    int count = normal.traits(read.pair().id());
                    normal = normal.given(
                            read.pair().id(),
                            TraitSite.between(
                                    Moments.of(read.before().cloud(), count), Moments.of(read.after(), count)));
                }
            }
            String id = most.pair().id();
            TraitCloud cloud = most.after().times(TraitSite.between(before.of(id), normal.of(id)));
            most = new Read(most.pair(), most.before(), cloud);
        }
        return link(normal, most.pair(), to, row).prior(most.after(), there);
    }

    private JointNormal over(List<Place> places) {
        JointNormal all = joint;
        for (Place place : places) {
            if (place.theory().isPresent() && all != null && !all.knows(place.id())) {
                TheoryPair theory = place.theory().get();
                all = all.with(place.id(), theory.base(), theory.deviationC(), theory.deviationS());
            }
        }
        if (all == null) {
            throw new IllegalStateException("No joint traits.");
        }
        return all;
    }

    private Read narrowest(JointNormal normal, Place to, List<Read> reads, double @Nullable [] row) {
        List<Double> variances = new ArrayList<>();
        int least = 0;
        for (int i = 0; i < reads.size(); i++) {
            Place from = reads.get(i).pair();
            Moments after = Moments.of(reads.get(i).after(), normal.traits(from.id()));
            variances.add(link(normal, from, to, row).varianceC(after));
            least = variances.get(i) < variances.get(least) ? i : least;
        }
        return reads.get(least);
    }

    /** With the structure, what it says of the difference; a theory's own errors stay on top. */
    private LinkedPair link(JointNormal normal, Place from, Place to, double @Nullable [] row) {
        LinkedPair link = normal.link(from.id(), to.id());
        GroupShift shift = shifts.get(new Way(from.base(), to.base()));
        if (row == null || shift == null) {
            return link.with(widths(from, to));
        }
        double theory = variance(from) + variance(to);
        return link.moved(shift.shift(row), shift.variance(row) + theory);
    }

    /** As fitted between measured pairs; what a theory leaves open was found for it as a whole. */
    private LinkedPair.Widths widths(Place from, Place to) {
        if (joint == null
                || traits == null
                || from.theory().isPresent()
                || to.theory().isPresent()) {
            return LinkedPair.Widths.ALIKE;
        }
        double mean = joint.of(to.id()).mean()[0];
        return traits.reach(to.id(), from.id())
                .map(reach -> new LinkedPair.Widths(traits.width(), mean, reach.lowest(), reach.highest()))
                .orElse(LinkedPair.Widths.ALIKE);
    }

    private static double variance(Place place) {
        return place.theory()
                .map(theory -> theory.deviationC() * theory.deviationC())
                .orElse(0.0);
    }
}
