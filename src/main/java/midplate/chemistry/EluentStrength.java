package midplate.chemistry;

import java.util.Objects;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * Snyder's law for the strength of a two-solvent eluent on a polar sorbent, and what follows from it for one spot.
 *
 * <p>{@code ε_AB = ε_A + log10(N_B·10^(α'·n_b·(ε_B − ε_A)) + 1 − N_B) / (α'·n_b)}
 *
 * <p>A is the weak solvent, B the strong one; ε [1] eluent strength, N_B [1] mole fraction of B in 0 to 1, α' [1]
 * activity of the sorbent above 0 to 1 (silica about 0.57 to 0.83, alumina about 0.55 to 1.0), n_b [8.5 Å²] molecular
 * area of B.
 *
 * <p>The law takes B as the solvent on the surface that competes with the solute and gives it one strength. Where B
 * localizes (binds to single strong sites), it errs most below about 5 % of B. It is no measurement: measured curves of a
 * pair go before it. Every number outside its range is refused.
 *
 * @see "Snyder1968"
 * @see "SnyderGlajch1981"
 */
public final class EluentStrength {
    private static final double LN10 = Math.log(10);
    private static final Range FRACTION = Range.closed(0, 1);
    private static final Range ACTIVITY = Range.leftOpen(0, 1);
    private static final Range AREA = Range.leftOpen(0, 100);
    private static final Range STRENGTH = Range.closed(0, 2);

    private EluentStrength() {}

    /**
     * N_B [1], the mole fraction of the strong solvent: {@code N_B = (φ/V_B) / (φ/V_B + (1 − φ)/V_A)}.
     *
     * @param volumeFraction φ [1], volume of the strong solvent over the sum of both before mixing, 0 to 1
     * @param weak A, for its molar volume V_A [cm³/mol]
     * @param strong B, for its molar volume V_B [cm³/mol]
     * @see "Snyder1968"
     */
    public static double moleFraction(double volumeFraction, EluentComponent weak, EluentComponent strong) {
        FRACTION.require("volumeFraction", volumeFraction);
        double strongMoles = volumeFraction / strong.molarVolume();
        double weakMoles = (1 - volumeFraction) / weak.molarVolume();
        return strongMoles / (strongMoles + weakMoles);
    }

    /**
     * φ [1], the volume fraction of the strong solvent: the inverse of
     * {@link #moleFraction(double, EluentComponent, EluentComponent)}.
     *
     * @param moleFraction N_B [1], 0 to 1
     * @param weak A, for its molar volume V_A [cm³/mol]
     * @param strong B, for its molar volume V_B [cm³/mol]
     */
    public static double volumeFraction(double moleFraction, EluentComponent weak, EluentComponent strong) {
        FRACTION.require("moleFraction", moleFraction);
        double strongVolume = moleFraction * strong.molarVolume();
        double weakVolume = (1 - moleFraction) * weak.molarVolume();
        return strongVolume / (strongVolume + weakVolume);
    }

    /**
     * ε_AB [1], the strength of the mixture: {@code ε_A + log10(N_B·10^(α'·n_b·(ε_B − ε_A)) + 1 − N_B) / (α'·n_b)}.
     *
     * <p>It is ε_A at φ = 0 and ε_B at φ = 1, rises with φ in between, and is ε_A throughout when both solvents are
     * equally strong. A weak solvent stronger than the strong one is refused.
     *
     * @param weak A
     * @param strong B, not weaker than A
     * @param volumeFraction φ [1], volume of B over the sum of both before mixing, 0 to 1
     * @param activity α' [1], above 0 to 1
     * @see "Snyder1968"
     */
    public static double binary(EluentComponent weak, EluentComponent strong, double volumeFraction, double activity) {
        double scale = scale(strong, activity);
        double step = step(weak, strong);
        double moleFraction = moleFraction(volumeFraction, weak, strong);
        return weak.strength() + Math.log1p(moleFraction * Math.expm1(scale * step)) / scale;
    }

    /**
     * θ_B [1], the share of the surface that the strong solvent covers:
     * {@code θ_B = N_B·10^(α'·n_b·(ε_B − ε_AB))}, which is {@code N_B·K / (N_B·K + 1 − N_B)} with
     * {@code K = 10^(α'·n_b·(ε_B − ε_A))}.
     *
     * <p>For a solvent that localizes, the first layer fills sooner than this says.
     *
     * @param weak A
     * @param strong B, not weaker than A
     * @param volumeFraction φ [1], 0 to 1
     * @param activity α' [1], above 0 to 1
     * @see "Snyder1968"
     * @see "Scott"
     */
    public static double coverage(
            EluentComponent weak, EluentComponent strong, double volumeFraction, double activity) {
        double preference = Math.exp(scale(strong, activity) * step(weak, strong));
        double moleFraction = moleFraction(volumeFraction, weak, strong);
        return 1 / (1 + (1 - moleFraction) / (moleFraction * preference));
    }

    /**
     * The percentage [% v/v, 0 to 100] of the strong solvent that gives a strength: the inverse of
     * {@link #binary(EluentComponent, EluentComponent, double, double)}, in closed form, rising with the strength:
     * {@code N_B = (10^(α'·n_b·(ε − ε_A)) − 1) / (10^(α'·n_b·(ε_B − ε_A)) − 1)}.
     *
     * <p>A strength outside ε_A to ε_B is refused: this pair cannot reach it. So are two equally strong solvents, of which
     * every mixture is alike.
     *
     * @param weak A
     * @param strong B, stronger than A
     * @param strength ε [1], from ε_A to ε_B
     * @param activity α' [1], above 0 to 1
     * @see "Snyder1968"
     */
    public static double percentForStrength(
            EluentComponent weak, EluentComponent strong, double strength, double activity) {
        double scale = scale(strong, activity);
        double step = step(weak, strong);
        Range reach = Range.closed(weak.strength(), strong.strength());
        if (!(step > 0) || !(strength >= weak.strength()) || !(strength <= strong.strength())) {
            String came = Objects.toString(strength);
            Message reason = Message.of(
                    "chemistry.strength-not-reached", "came", Allowed.figure(came), "allowed", reach.allowed());
            throw new Refusal(
                    "strength", reason, came, reach.allowed(), Message.of("todo.take-other-pair-or-strength"));
        }
        double moleFraction = Math.expm1(scale * (strength - weak.strength())) / Math.expm1(scale * step);
        return 100 * volumeFraction(Math.min(1, moleFraction), weak, strong);
    }

    /**
     * ln(k₁/k₂) [1], by how much one solute is held less in eluent 2 than in eluent 1, as a natural logarithm; printed
     * as {@code log10(k₁/k₂) = α'·A_s·(ε₂ − ε₁)}.
     *
     * @param activity α' [1], above 0 to 1
     * @param soluteArea A_s [8.5 Å²], area of the solute, above 0 to 100
     * @param strengthOne ε₁ [1], 0 to 2
     * @param strengthTwo ε₂ [1], 0 to 2
     * @see "Snyder1968"
     */
    public static double logCapacityRatio(double activity, double soluteArea, double strengthOne, double strengthTwo) {
        ACTIVITY.require("activity", activity);
        AREA.require("soluteArea", soluteArea);
        STRENGTH.require("strengthOne", strengthOne);
        STRENGTH.require("strengthTwo", strengthTwo);
        return LN10 * activity * soluteArea * (strengthTwo - strengthOne);
    }

    /**
     * The slope [1] that ln k against ln N_B tends to once the strong solvent covers the surface, {@code −A_s/n_b}: the
     * straight line of Soczewiński.
     *
     * @param soluteArea A_s [8.5 Å²], above 0 to 100
     * @param strong B, for its molecular area n_b [8.5 Å²]
     * @see "Soczewinski1969"
     * @see "Snyder1968"
     */
    public static double limitingSlope(double soluteArea, EluentComponent strong) {
        return -AREA.require("soluteArea", soluteArea) / strong.molecularArea();
    }

    private static double scale(EluentComponent strong, double activity) {
        return LN10 * ACTIVITY.require("activity", activity) * strong.molecularArea();
    }

    private static double step(EluentComponent weak, EluentComponent strong) {
        double step = strong.strength() - weak.strength();
        if (!(step >= 0)) {
            String came = Objects.toString(strong.strength());
            Message allowed = Range.closed(weak.strength(), 2).allowed();
            Message reason =
                    Message.of("chemistry.weak-is-stronger", "weak", weak.strength(), "strong", strong.strength());
            throw new Refusal("strong", reason, came, allowed, Message.of("todo.swap-solvents"));
        }
        return step;
    }
}
