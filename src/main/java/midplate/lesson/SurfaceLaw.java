package midplate.lesson;

import java.util.Optional;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.StrengthInputs;
import midplate.catalogue.StrengthSeries;
import midplate.catalogue.TheoryStrength;
import midplate.chemistry.EluentStrength;
import midplate.chemistry.Sorbent;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * Snyder's law for one pair of solvents: how strong a mixture is, and how much of the surface the strong solvent covers.
 *
 * @param series the table of strengths
 * @param activity α' [1], above 0 to 1
 * @param weak what is published of the weak solvent
 * @param strong what is published of the strong one
 * @see EluentStrength
 * @see "Snyder1968"
 */
public record SurfaceLaw(StrengthSeries series, double activity, StrengthInputs weak, StrengthInputs strong) {
    private static final double PERCENT = 100;

    private static final class Packed {
        static final TheoryStrength THEORY = MeasuredPairs.builtIn(SolventCatalogue.builtIn())
                .theory()
                .orElseThrow(() -> new IllegalStateException("no theory is packed with the program"));
    }

    /**
     * With the series and the α' that pairs without measurements are made from: those fitted to the average compound of the measured pairs.
     *
     * @throws Refusal where a strength or an area of a solvent was not published
     */
    public static SurfaceLaw of(SolventCatalogue catalogue, LessonSample sample) {
        StrengthSeries series = Packed.THEORY.series();
        Sorbent sorbent = sample.sorbent();
        Optional<StrengthInputs> weak = StrengthInputs.of(catalogue, sample.weak(), sorbent, series);
        Optional<StrengthInputs> strong = StrengthInputs.of(catalogue, sample.strong(), sorbent, series);
        if (weak.isEmpty() || strong.isEmpty()) {
            throw new Refusal(
                    "strong",
                    Message.of("fault.strength-unknown"),
                    sample.strong().name(),
                    Message.of("allowed.known-strength"),
                    Message.of("todo.no-table"));
        }
        return new SurfaceLaw(series, Packed.THEORY.activity(), weak.get(), strong.get());
    }

    /** θ [1], the share of the surface under the strong solvent; it goes to 0 and 1 at the ends. */
    public double coverage(double percentStrong) {
        return EluentStrength.coverage(weak.component(), strong.component(), percentStrong / PERCENT, activity);
    }

    /** ε [1] of a mixture. */
    public double strength(double percentStrong) {
        return EluentStrength.binary(weak.component(), strong.component(), percentStrong / PERCENT, activity);
    }
}
