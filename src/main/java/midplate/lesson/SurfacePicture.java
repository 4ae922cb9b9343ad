package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import midplate.advice.Forecast;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.LocalizationClass;
import midplate.chemistry.GroupCounts;
import midplate.inference.StructureForecast;

/**
 * Solvent and compounds competing for the surface, at some ratios: how much of it the strong solvent covers by the published law, and which
 * share of its time each compound is on it by the model, {@code k/(1 + k) = 1 − Rf}.
 *
 * @param sample what runs in what
 * @param law the published law for its two solvents
 * @param localization how the strong solvent sits on silica
 * @param now the share asked about [% v/v]
 * @param further another share to compare with [% v/v]: twice as much, or half of it
 * @param shares what the surface is like at each share asked for, rising
 * @param solutes each compound, in the order of the sample
 * @see "Snyder1968"
 */
public record SurfacePicture(
        LessonSample sample,
        SurfaceLaw law,
        LocalizationClass localization,
        double now,
        double further,
        List<Share> shares,
        List<Solute> solutes) {
    private static final double PERCENT = 100;
    /** Where nothing of the strong solvent is there to be doubled [% v/v]. */
    private static final double LEAST_FURTHER = 10;

    /** Keeps its own copies. */
    public SurfacePicture {
        shares = List.copyOf(shares);
        solutes = List.copyOf(solutes);
    }

    /**
     * The surface at one share.
     *
     * @param percentStrong share of the strong solvent [% v/v]
     * @param coverage θ [1]
     * @param strength ε [1]
     */
    public record Share(double percentStrong, double coverage, double strength) {}

    /**
     * A compound.
     *
     * @param name its name
     * @param sums what published energies say of it
     * @param heldBy id of the group that the fitted model takes to hold it back most; empty where none does, or none was fitted
     * @param rf Rf at each share [1], as the shares stand
     */
    public record Solute(String name, SoluteSums sums, Optional<String> heldBy, List<Double> rf) {
        /** Keeps its own copy. */
        public Solute {
            rf = List.copyOf(rf);
        }

        /** The share of its time that it is on the surface [1], {@code k/(1 + k)}, at one of the shares by its place. */
        public double adsorbed(int place) {
            return 1 - rf.get(place);
        }
    }

    /**
     * The picture of a sample.
     *
     * @param percentStrong the share asked about [% v/v], 0 to 100
     * @param percents further shares [% v/v]
     * @param foretold what a structure foretells in the pair
     * @throws midplate.words.Refusal where the two solvents are no eluent, or no strengths were published
     */
    public static SurfacePicture of(
            LessonModel model,
            LessonSample sample,
            double percentStrong,
            List<Double> percents,
            Function<GroupCounts, Optional<StructureForecast>> foretold) {
        double further = further(percentStrong);
        SortedSet<Double> all = new TreeSet<>(percents);
        all.add(percentStrong);
        all.add(further);
        List<Forecast> plates = model.consult(sample).at(List.copyOf(all));
        SurfaceLaw law = SurfaceLaw.of(model.catalogue(), sample);
        List<Share> shares = all.stream()
                .map(percent -> new Share(percent, law.coverage(percent), law.strength(percent)))
                .toList();
        List<Solute> solutes = new ArrayList<>();
        for (int i = 0; i < sample.compounds().size(); i++) {
            int spot = i;
            LessonCompound compound = sample.compounds().get(i);
            solutes.add(new Solute(
                    compound.name(),
                    SoluteSums.of(FunctionalGroups.builtIn(), compound.counts()),
                    foretold.apply(compound.counts())
                            .flatMap(StructureForecast::heldBy)
                            .map(StructureForecast.Part::id),
                    plates.stream().map(plate -> plate.spots().get(spot).rf()).toList()));
        }
        return new SurfacePicture(
                sample,
                law,
                model.catalogue().localization(law.strong().solvent()),
                percentStrong,
                further,
                shares,
                solutes);
    }

    /** Twice as much, at least {@value #LEAST_FURTHER} %; half where that is more than all. */
    private static double further(double percent) {
        return 2 * percent <= PERCENT ? Math.max(2 * percent, LEAST_FURTHER) : percent / 2;
    }

    /** The place of a share among the shares. */
    public int placeOf(double percentStrong) {
        for (int place = 0; place < shares.size(); place++) {
            if (shares.get(place).percentStrong() == percentStrong) {
                return place;
            }
        }
        throw new IllegalArgumentException(percentStrong + " % was not asked for");
    }
}
