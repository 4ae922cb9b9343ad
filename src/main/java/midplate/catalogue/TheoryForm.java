package midplate.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import midplate.chemistry.EluentComponent;
import midplate.chemistry.EluentStrength;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;

/**
 * Shapes the model of a pair without measurements from the curve of a measured one.
 *
 * @param theory how published strengths become a curve
 * @param check how well that does for such a pair
 * @param base the measured pair
 * @param curve its curve by published strength
 * @param sources keys of the publications used
 */
record TheoryForm(TheoryStrength theory, TheoryCheck check, PlatePair base, BorrowedCurve curve, List<String> sources) {
    /** Shares at which the curve is worked out [% v/v]: close together where it is steep. */
    private static final List<Double> SHARES =
            List.of(0., 1., 2., 3., 5., 7., 10., 15., 20., 25., 30., 40., 50., 60., 70., 80., 90., 100.);

    /**
     * The model.
     *
     * @param weak the weak solvent
     * @param strong the strong solvent
     * @param one what the law needs of the weak one
     * @param other and of the strong one
     * @param trustedFrom from which share on the law may be trusted [% v/v]
     * @param trustedTo up to which [% v/v]
     */
    PlatePair pair(
            Solvent weak,
            Solvent strong,
            EluentComponent one,
            EluentComponent other,
            double trustedFrom,
            double trustedTo) {
        List<BorrowedCurve.Place> places = SHARES.stream()
                .map(share -> curve.at(EluentStrength.binary(one, other, share / 100, theory.activity())))
                .toList();
        return new PlatePair(
                check.kind().basis(),
                Sorbent.SILICA,
                weak,
                strong,
                trustedFrom,
                trustedTo,
                SHARES,
                values(places, BorrowedCurve.Place::strength),
                values(places, place -> Math.hypot(place.error(), check.bias())),
                values(places, BorrowedCurve.Place::hold),
                values(places, BorrowedCurve.Place::early),
                values(places, BorrowedCurve.Place::noiseScale),
                base.noiseLeftAtLines(),
                base.atLines(),
                base.stretchStart(),
                base.stretchFront(),
                new PlatePair.Traits(
                        base.prior().bells().stream().map(this::widened).toList()),
                base.compounds(),
                base.readings(),
                base.residual(),
                provenance());
    }

    private static List<Double> values(List<BorrowedCurve.Place> places, ToDoubleFunction<BorrowedCurve.Place> value) {
        return places.stream().map(value::applyAsDouble).toList();
    }

    /** More on the diagonal leaves a covariance a covariance; an s in which compounds do not differ stays out of it. */
    private PlatePair.Bell widened(PlatePair.Bell bell) {
        double more = bell.varianceS() > 0 ? check.deviationS() * check.deviationS() : 0;
        return new PlatePair.Bell(
                bell.weight(),
                bell.c(),
                bell.s(),
                bell.t(),
                bell.varianceC() + check.deviationC() * check.deviationC(),
                bell.covarianceCS(),
                bell.covarianceCT(),
                bell.varianceS() + more,
                bell.covarianceST(),
                bell.varianceT());
    }

    private PlatePair.Provenance provenance() {
        String how = String.format(
                Locale.ROOT,
                "made from published strengths (%s, activity %.2f, slope %.1f) on the curve of %s",
                theory.series().condition(Sorbent.SILICA),
                theory.activity(),
                theory.slope(),
                base.id());
        PlatePair.Provenance of = base.provenance();
        return new PlatePair.Provenance(sources, of.inputSha256(), of.leftOut(), how + "; " + of.command());
    }
}
