package midplate.inference;

import java.util.List;

/**
 * Sums over all readings at one share, from which its G, σ₀ and, where it has one, L or a are moved: one step of Fisher's scoring for the expected
 * logarithm of the likelihood.
 *
 * <p>With z = (read − Rf)/σ and Student's weight {@code u = (ν + 1)/(ν + z²)}, a far reading counting little, the score of a
 * number is {@code u·z/σ + (u·z² − 1)/(2v)·dv/dRf} in Rf (v the share of the variance there) and {@code u·z² − 1} in ln σ₀;
 * the information {@code (ν + 1)/(ν + 3)/σ²} and {@code 2ν/(ν + 3)}. A reading at a line scores by the logarithm of the chance to
 * read there, with σ changing alike; its information is the square of the score.
 */
final class ShareSums {
    private static final double LONGEST_STEP = 0.5;
    private static final double NU = Noise.DEGREES;

    private final ShareKind kind;
    private double gradientG;
    private double gradientSecond;
    private double gradientScale;
    private double informationG;
    private double informationBoth;
    private double informationSecond;
    private double informationScale;

    private ShareSums(ShareKind kind) {
        this.kind = kind;
    }

    /** Sums over series and the nodes that matter to them. */
    static ShareSums of(int share, ShareKind kind, List<Weights> weights, double[][] rf, FitTables tables) {
        ShareSums sums = new ShareSums(kind);
        for (int i = 0; i < rf.length; i++) {
            double read = rf[i][share];
            if (!Double.isNaN(read)) {
                Weights series = weights.get(i);
                for (int k = 0; k < series.size(); k++) {
                    sums.add(read, share, series.node(k), series.weight(k), tables);
                }
            }
        }
        return sums;
    }

    private void add(double read, int share, int node, double weight, FitTables tables) {
        double sigma = tables.sigma(share)[node];
        double at = tables.beyond(share)[node];
        double atLines = tables.atLines();
        double inRf;
        double inScale;
        double informationRf;
        double informationSigma;
        if (atLines > 0 && (read <= atLines || read >= 1 - atLines)) {
            double side = read <= atLines ? 1 : -1;
            double z = side * ((read <= atLines ? atLines : 1 - atLines) - at) / sigma;
            double ratio = Noise.density(z, 1) / Noise.below(z);
            inScale = -z * ratio;
            inRf = -side * ratio / sigma + inScale / 2 * tables.changeOfShape(share, node);
            informationRf = inRf * inRf;
            informationSigma = inScale * inScale;
        } else {
            double z = (read - at) / sigma;
            double u = (NU + 1) / (NU + z * z);
            inScale = u * z * z - 1;
            inRf = u * z / sigma + inScale / 2 * tables.changeOfShape(share, node);
            informationRf = (NU + 1) / (NU + 3) / (sigma * sigma);
            informationSigma = 2 * NU / (NU + 3);
        }
        double slope = tables.slope(share)[node];
        double s = tables.grid().s(node);
        double second = kind.trait(tables.grid(), node);
        double information = weight * informationRf * slope * slope;
        gradientG += weight * inRf * slope * s;
        gradientSecond += weight * inRf * slope * second;
        gradientScale += weight * inScale;
        informationG += information * s * s;
        informationBoth += information * s * second;
        informationSecond += information * second * second;
        informationScale += weight * informationSigma;
    }

    /** What the eluent does after the step, from what it did. */
    Climb moved(Climb climb) {
        if (!(informationG > 0)) {
            return climb;
        }
        if (kind == ShareKind.PLAIN) {
            return kind.moved(climb, held(gradientG / informationG), 0);
        }
        double pull = gradientSecond + kind.pull(climb);
        double information = informationSecond + kind.information();
        double determinant = informationG * information - informationBoth * informationBoth;
        return kind.moved(
                climb,
                held((information * gradientG - informationBoth * pull) / determinant),
                held((informationG * pull - informationBoth * gradientG) / determinant));
    }

    /** How far ln σ₀ moves at this share [1]. */
    double scaleStep() {
        return informationScale > 0 ? held(gradientScale / informationScale) : 0;
    }

    private static double held(double step) {
        return StrictMath.max(-LONGEST_STEP, StrictMath.min(LONGEST_STEP, step));
    }
}
