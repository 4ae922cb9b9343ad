package midplate.inference;

import midplate.catalogue.PairLink;

/** A link with the arithmetic ready: from a cloud in one pair to a prior in the other. */
final class LinkedPair {
    private final PairLink link;
    private final TraitPrior there;
    private final double[][] kernel;

    LinkedPair(PairLink link, TraitPrior there) {
        this.link = link;
        this.there = there;
        TraitGrid grid = there.grid();
        this.kernel = new double[grid.cCount()][grid.cCount()];
        for (int from = 0; from < kernel.length; from++) {
            double centre = link.intercept() + link.slope() * grid.cAt(from);
            for (int to = 0; to < kernel.length; to++) {
                double z = (grid.cAt(to) - centre) / link.deviation();
                kernel[from][to] = Math.exp(-0.5 * z * z);
            }
        }
    }

    String from() {
        return link.from();
    }

    /** Whether the line may be used at a c [ln units]. */
    boolean reaches(double c) {
        return link.reaches(c);
    }

    /** Whether it says something about a pair. */
    boolean leadsTo(String to) {
        return link.to().equals(to);
    }

    boolean joins(String from, String to) {
        return link.from().equals(from) && link.to().equals(to);
    }

    /** Each point of the cloud stands for a normal curve around the line; the other traits are what they are at that c. */
    TraitPrior prior(TraitCloud cloud) {
        TraitGrid grid = there.grid();
        double[] from = new double[grid.cCount()];
        for (int point = 0; point < cloud.size(); point++) {
            int iC = (int) Math.round((cloud.c(point) - grid.cAt(0)) / grid.cStep());
            from[Math.max(0, Math.min(from.length - 1, iC))] += cloud.weight(point);
        }
        double[] density = new double[grid.cCount()];
        for (int iC = 0; iC < from.length; iC++) {
            if (from[iC] > 0) {
                for (int to = 0; to < density.length; to++) {
                    density[to] += from[iC] * kernel[iC][to];
                }
            }
        }
        return there.withSpreadOfC(density);
    }
}
