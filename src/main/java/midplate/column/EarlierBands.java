package midplate.column;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import midplate.catalogue.ColumnLaw;
import midplate.inference.Climb;
import midplate.inference.TraitDraws;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * What earlier columns of the same compounds say: where the middle of a band was, up to the scatter from run to run and the error of
 * reading start and end. Their order does not matter. Columns of a compound on one bed with one program have more in common than the
 * law knows, so that together they count as one, as they did when the law was fitted.
 */
final class EarlierBands implements TraitDraws.Evidence {
    private static final Comparator<ObservedBand> BY_CONTENT = Comparator.comparingDouble(ObservedBand::startMl)
            .thenComparingDouble(ObservedBand::endMl)
            .thenComparingDouble(ObservedBand::errorMl)
            .thenComparing(ObservedBand::toString);

    private final BedLaw law;
    private final List<List<Seen>> bySpot = new ArrayList<>();

    /** One band, with what of the law does not depend on the compound, and how many there are of such columns, itself among them. */
    private record Seen(
            ObservedBand band,
            Migration migration,
            double[] percents,
            Climb[] climbs,
            double spread,
            double logMiddle,
            double scale,
            long alike) {}

    EarlierBands(BedLaw law, List<String> spots, List<ObservedBand> earlier) {
        this.law = law;
        List<ObservedBand> sorted = earlier.stream().sorted(BY_CONTENT).toList();
        for (String spot : spots) {
            bySpot.add(sorted.stream()
                    .filter(band -> band.spot().equals(spot))
                    .map(band -> seen(band, sorted))
                    .toList());
        }
    }

    private Seen seen(ObservedBand band, List<ObservedBand> all) {
        Migration migration = Migration.of(band.program());
        double[] percents = migration.percents();
        Climb[] climbs = new Climb[percents.length];
        for (int i = 0; i < climbs.length; i++) {
            climbs[i] = law.pair().climb(percents[i]);
        }
        double middle = (band.startMl() + band.endMl()) / 2;
        // start and end each anywhere within the error: the variance of their mean is a sixth of its square
        double reading = band.errorMl() / middle / Math.sqrt(6);
        double scatter = law.law().runScatter();
        return new Seen(
                band,
                migration,
                percents,
                climbs,
                law.spread(band.bed()),
                Math.log(middle),
                Math.sqrt(scatter * scatter + reading * reading),
                all.stream()
                        .filter(each -> each.spot().equals(band.spot())
                                && each.bed().equals(band.bed())
                                && each.program().equals(band.program()))
                        .count());
    }

    @Override
    public TraitDraws.Known known(int spot) {
        return bySpot.get(spot).isEmpty() ? TraitDraws.Known.NOTHING : TraitDraws.Known.SOMETHING;
    }

    @Override
    public double logLikelihood(int spot, double c, double s, double t, double deviation) {
        double sum = 0;
        for (Seen seen : bySpot.get(spot)) {
            sum += logLikelihood(seen, c, s, t, deviation) / seen.alike();
        }
        return sum;
    }

    /**
     * What ln u of a run to come has beyond the law [ln units]: the compound's ω, after the widths seen, and the scatter of a run. The
     * loads of earlier columns are not known; each may be any that was measured. A band that may have begun with the first drop has
     * no ratio of end to start, so that its width says nothing.
     */
    NormalDistribution width(int spot) {
        ColumnLaw.Width width = law.law().width();
        double loads = width.perLogLoad() * Math.log(width.mostLoad() / width.leastLoad()) / Math.sqrt(12);
        double own = width.spotSpread() * width.spotSpread();
        double run = width.spread() * width.spread();
        double weight = 0;
        double sum = 0;
        for (Seen seen : bySpot.get(spot)) {
            ObservedBand band = seen.band();
            if (!(band.startMl() > band.errorMl())) {
                continue;
            }
            double u = Math.log(band.endMl() / band.startMl());
            double middle = Math.exp(seen.logMiddle());
            double reading = band.errorMl() * Math.sqrt(2.0 / 3) / middle / u;
            double load =
                    Math.sqrt(width.leastLoad() * width.mostLoad()) * band.bed().silicaGrams();
            double each = 1 / (run + loads * loads + reading * reading);
            weight += each;
            sum += each * (Math.log(u) - law.logWidth(band.bed(), middle, load));
        }
        double left = 1 / (1 / own + weight);
        return new NormalDistribution(null, left * sum, Math.sqrt(left + run));
    }

    /** Student's t, up to a constant. */
    private double logLikelihood(Seen seen, double c, double s, double t, double deviation) {
        Bed bed = seen.band().bed();
        double[] percents = seen.percents();
        double own = Math.exp(deviation * seen.spread());
        double[] held = new double[percents.length];
        for (int i = 0; i < held.length; i++) {
            held[i] = own * law.heldMl(bed, seen.climbs()[i].eta(c, s, t), percents[i]);
        }
        double middle = law.unretainedMl(bed) + seen.migration().run(held, 1);
        double z = (seen.logMiddle() - Math.log(middle)) / seen.scale();
        double freedom = law.law().runFreedom();
        return -0.5 * (freedom + 1) * Math.log1p(z * z / freedom);
    }
}
