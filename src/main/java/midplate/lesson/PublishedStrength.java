package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PublishedValue;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.StandIn;
import midplate.catalogue.StrengthSeries;
import midplate.catalogue.TheoryStrength;
import midplate.chemistry.EluentComponent;
import midplate.chemistry.EluentStrength;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.Message;

/**
 * How strong the mixtures of two solvents are by published tables alone: Snyder's law on one sorbent, in one series, with the activity
 * that was fitted to the measured pairs of the program.
 *
 * @param sorbent the layer
 * @param weak what the law needs of the weak solvent
 * @param strong and of the strong one, stronger than the weak one
 * @see "Snyder1968"
 */
public record PublishedStrength(Sorbent sorbent, EluentComponent weak, EluentComponent strong) {
    private static final String AREA = "molecular_area";

    /** Fitted once for the packed curves: series, α′ [1] and κ [ln units per unit of ε]. */
    private static final class Packed {
        static final Optional<TheoryStrength> THEORY =
                MeasuredPairs.builtIn(SolventCatalogue.builtIn()).theory();
    }

    /** Series, activity and slope of the packed curves. */
    public static TheoryStrength theory() {
        return Packed.THEORY.orElseThrow(() -> new IllegalStateException("the packed curves have no theory"));
    }

    /** The series of strengths that is kept to. */
    public static StrengthSeries series() {
        return theory().series();
    }

    /** The printed table that the values for a layer come from, in words. */
    public static Message printed(Sorbent sorbent) {
        return Message.of("lesson.series-table-" + series().condition(sorbent).replace(' ', '-'));
    }

    /** Of two solvents; empty where a value of one is not published, or the strong one is not stronger there. */
    static Optional<PublishedStrength> of(SolventCatalogue catalogue, Sorbent sorbent, Solvent weak, Solvent strong) {
        Optional<EluentComponent> one = catalogue.component(known(catalogue, sorbent, weak), sorbent, series());
        Optional<EluentComponent> other = catalogue.component(known(catalogue, sorbent, strong), sorbent, series());
        return one.isPresent()
                        && other.isPresent()
                        && other.get().strength() > one.get().strength()
                ? Optional.of(new PublishedStrength(sorbent, one.get(), other.get()))
                : Optional.empty();
    }

    /** The solvent itself where its values are published, else the one that it may be calculated as. */
    public static Solvent known(SolventCatalogue catalogue, Sorbent sorbent, Solvent solvent) {
        return catalogue.component(solvent, sorbent, series()).isPresent()
                ? solvent
                : catalogue.standIn(solvent).map(StandIn::standsInFor).orElse(solvent);
    }

    /** ε [1] at a share of the strong solvent [% v/v, 0 to 100]. */
    double at(double percent) {
        return EluentStrength.binary(weak, strong, percent / 100, theory().activity());
    }

    /** The share [% v/v] with an ε [1]; empty where no mixture of the two has it. */
    Optional<Double> percentFor(double strength) {
        return strength >= weak.strength() && strength <= strong.strength()
                ? Optional.of(EluentStrength.percentForStrength(weak, strong, strength, theory().activity()))
                : Optional.empty();
    }

    /** The strengths that a pair reaches, ε [1] of its weakest and strongest mixture. */
    public record Reach(double low, double high) {}

    /** A published value that was calculated with, and the solvent it is of. */
    public record Used(Solvent solvent, PublishedValue value) {}

    /** Strength and area of these solvents, with their sources. */
    public static List<Used> used(SolventCatalogue catalogue, Sorbent sorbent, List<Solvent> solvents) {
        List<Used> used = new ArrayList<>();
        for (Solvent solvent : solvents) {
            Solvent known = known(catalogue, sorbent, solvent);
            catalogue.strengthValue(known, sorbent, series()).ifPresent(value -> used.add(new Used(known, value)));
            catalogue
                    .preferred(known, AREA, series().condition(sorbent))
                    .or(() -> catalogue.preferred(known, AREA, ""))
                    .ifPresent(value -> used.add(new Used(known, value)));
        }
        return used.stream().distinct().toList();
    }
}
