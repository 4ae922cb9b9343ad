package midplate.identity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import midplate.advice.Adviser;
import midplate.advice.ApartNames;
import midplate.advice.Consultation;
import midplate.advice.Curves;
import midplate.advice.Glassware;
import midplate.advice.NextPlate;
import midplate.advice.OtherEluent;
import midplate.advice.OtherRank;
import midplate.advice.OthersWish;
import midplate.advice.PourableRatios;
import midplate.advice.Question;
import midplate.advice.Ratio;
import midplate.advice.Replacements;
import midplate.advice.Shelf;
import midplate.advice.Window;
import midplate.advice.Wishes;
import midplate.catalogue.PairBasis;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.plate.Eluent;
import midplate.plate.Reading;
import midplate.plate.Run;
import midplate.words.Refusal;

/**
 * Eluents that part two compounds, from the model of the plates: what was read of both in the eluent at hand and what they are made
 * of say how they may lie at other ratios of the same two solvents and in other pairs. Immutable; safe to share between threads.
 *
 * <p>The chance is that both read inside 0.2 to 0.8 and lie at least 0.1 apart. Nothing is known of layers other than silica.
 */
public final class ModelledParting implements PartingEluents {
    /** A ratio so near to the one at hand is no other one: 15 % more or less of the strong solvent (own choice). */
    private static final double ANOTHER = Math.log(1.15);
    /** Below this chance a ratio is not worth a plate [1] (own choice). */
    private static final double LEAST_CHANCE = 0.02;

    private final Adviser adviser;
    private final PartingWords words;

    private ModelledParting(Adviser adviser, SolventCatalogue catalogue) {
        this.adviser = adviser;
        this.words = new PartingWords(catalogue);
    }

    /** From an adviser. */
    public static ModelledParting of(Adviser adviser, SolventCatalogue catalogue) {
        return new ModelledParting(adviser, catalogue);
    }

    @Override
    public List<NextEluent> apart(PlateEluent here, Compound one, Compound other, int most) {
        if (here.sorbent() != Sorbent.SILICA) {
            return List.of();
        }
        try {
            Consultation consultation = adviser.consult(question(here, one, other));
            Replacements others = consultation.others(
                    new OthersWish(OptionalDouble.of(here.percentStrong()), Optional.of(OtherRank.APART)));
            Set<Solvent> alone = new HashSet<>();
            return PartingWords.sourcedOnce(Stream.concat(
                            ratios(here, consultation.curves(), others.of().basis()).stream(),
                            others.others().stream().map(found -> pair(here, found)))
                    .filter(next -> next.chanceApart() >= LEAST_CHANCE)
                    .sorted(Comparator.comparingDouble(NextEluent::chanceApart).reversed())
                    .filter(next -> next.solvents().size() > 1
                            || alone.add(next.solvents().get(0)))
                    .limit(most)
                    .toList());
        } catch (Refusal noModel) {
            // two solvents of which not even theory exists: there is nothing to advise from
            return List.of();
        }
    }

    private static Question question(PlateEluent here, Compound one, Compound other) {
        List<String> names = List.of("1 " + one.name(), "2 " + other.name());
        Map<String, Reading> readings = new LinkedHashMap<>();
        Map<String, GroupCounts> structures = new LinkedHashMap<>();
        List<Compound> both = List.of(one, other);
        for (int i = 0; i < both.size(); i++) {
            String name = names.get(i);
            both.get(i).rf().ifPresent(rf -> readings.put(name, Reading.asTyped(rf, here.setting())));
            both.get(i).structure().ifPresent(counts -> structures.put(name, counts));
        }
        Eluent eluent = new Eluent(here.sorbent(), here.weak(), here.strong(), here.percentStrong(), here.additive());
        List<Run> runs = readings.isEmpty() ? List.of() : List.of(new Run(eluent, readings));
        Wishes wishes = new Wishes(
                new Shelf(here.shelf()), List.of(new ApartNames(names.get(0), names.get(1))), NextPlate.USUAL);
        return new Question(
                here.sorbent(),
                here.weak(),
                here.strong(),
                here.additive(),
                names,
                runs,
                Window.USUAL,
                here.setting(),
                Glassware.usual(here.setting()),
                wishes,
                structures);
    }

    /** Of the pair at hand the likeliest ratio that is weaker, and the likeliest that is stronger. */
    private List<NextEluent> ratios(PlateEluent here, Curves curves, PairBasis basis) {
        List<NextEluent> all = new ArrayList<>();
        for (int side : new int[] {-1, 1}) {
            PourableRatios.between(0, 100).stream()
                    .filter(ratio -> side * step(here, ratio) >= ANOTHER)
                    .max(Comparator.comparingDouble(ratio -> at(curves, curves.goal(), ratio)))
                    .ifPresent(ratio -> all.add(words.said(
                            here,
                            here.weak(),
                            here.strong(),
                            ratio,
                            basis,
                            at(curves, curves.goal(), ratio),
                            at(curves, curves.smallestGap(), ratio))));
        }
        return all;
    }

    private static double step(PlateEluent here, Ratio ratio) {
        return Math.log((ratio.percentStrong() + 1) / (here.percentStrong() + 1));
    }

    /** What a curve says at a ratio: on the straight line between its neighbours. */
    private static double at(Curves curves, List<Double> values, Ratio ratio) {
        double percent = ratio.percentStrong();
        List<Double> shares = curves.percentStrong();
        int right = 1;
        while (right + 1 < shares.size() && shares.get(right) < percent) {
            right++;
        }
        double low = shares.get(right - 1);
        double part = (percent - low) / (shares.get(right) - low);
        return values.get(right - 1) + part * (values.get(right) - values.get(right - 1));
    }

    private NextEluent pair(PlateEluent here, OtherEluent found) {
        double gap = found.closest().orElseThrow().gap();
        return words.said(here, found.weak(), found.strong(), found.pour().ratio(), found.basis(), found.goal(), gap);
    }
}
