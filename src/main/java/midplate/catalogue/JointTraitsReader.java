package midplate.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/** Reads how traits in several pairs go together, from the index and the file of differences. */
final class JointTraitsReader {
    private static final double FAR = 50;
    private static final double LEAST_VARIANCE = 1e-9;
    /** Beyond it the width would change tenfold within one unit of c [1/ln unit]. */
    private static final double STEEPEST = 2.5;

    private JointTraitsReader() {}

    /**
     * Reads them; empty where the index holds none.
     *
     * @param pairs the pairs that there are
     */
    static Optional<JointTraits> read(DataFolder folder, String prefix, CurveJson index, List<String> pairs) {
        if (!index.has("joint")) {
            return Optional.empty();
        }
        CurveJson joint = index.object("joint");
        List<JointTraits.Axis> axes = new ArrayList<>();
        for (CurveJson axis : joint.objects("axes")) {
            axes.add(new JointTraits.Axis(axis.oneOf("pair", pairs), trait(axis)));
        }
        List<Double> means = joint.numbers("means", -FAR, FAR);
        if (means.size() != axes.size()) {
            throw joint.fault("means", means.size() + " numbers", axes.size() + " numbers, one for each axis");
        }
        List<Double> covariance = triangle(joint, "covariance", axes.size());
        List<JointTraits.Reach> reaches = new ArrayList<>();
        for (CurveJson reach : index.objects("reaches")) {
            reaches.add(new JointTraits.Reach(
                    reach.oneOf("from", pairs),
                    reach.oneOf("to", pairs),
                    reach.count("compounds"),
                    reach.number("lowest", -FAR, FAR),
                    reach.number("highest", -FAR, FAR)));
        }
        List<GroupDifference> differences =
                index.has("differences") ? differences(folder, prefix, index, pairs) : List.of();
        CurveJson width = joint.object("width");
        return Optional.of(new JointTraits(
                axes,
                means,
                covariance,
                reaches,
                new JointTraits.Width(
                        width.number("factor", LEAST_VARIANCE, FAR), width.number("slope", -STEEPEST, STEEPEST)),
                differences));
    }

    private static List<GroupDifference> differences(
            DataFolder folder, String prefix, CurveJson index, List<String> pairs) {
        String file = index.text("differences");
        if (!file.equals(GroupDifference.FILE)) {
            throw index.fault("differences", file, GroupDifference.FILE);
        }
        CurveJson json = CurveJson.read(folder, prefix + file);
        List<String> known = GroupEffectsReader.parts();
        List<GroupDifference> all = new ArrayList<>();
        for (CurveJson each : json.objects("differences")) {
            List<GroupDifference.Part> parts = new ArrayList<>();
            for (CurveJson part : each.objects("parts")) {
                parts.add(new GroupDifference.Part(
                        part.oneOf("part", known), part.number("c", -FAR, FAR), part.whole("compounds", 0)));
            }
            all.add(new GroupDifference(
                    each.oneOf("from", pairs),
                    each.oneOf("to", pairs),
                    parts,
                    triangle(each, "covariance", parts.size()),
                    each.number("unseen", 0, FAR),
                    each.number("residual", LEAST_VARIANCE, FAR),
                    each.count("compounds")));
        }
        return all;
    }

    private static JointTraits.Trait trait(CurveJson axis) {
        List<String> known = Arrays.stream(JointTraits.Trait.values())
                .map(trait -> trait.name().toLowerCase(Locale.ROOT))
                .toList();
        return JointTraits.Trait.values()[known.indexOf(axis.oneOf("trait", known))];
    }

    /** The lower triangle of a covariance, which no direction makes less than 0. */
    private static List<Double> triangle(CurveJson json, String field, int size) {
        List<Double> numbers = json.numbers(field, -FAR * FAR, FAR * FAR);
        int wanted = size * (size + 1) / 2;
        if (numbers.size() != wanted) {
            throw json.fault(field, numbers.size() + " numbers", wanted + " numbers, for " + size + " of them");
        }
        double[][] square = new double[size][size];
        for (int i = 0, at = 0; i < size; i++) {
            for (int j = 0; j <= i; j++, at++) {
                square[i][j] = numbers.get(at);
                square[j][i] = numbers.get(at);
            }
        }
        double[] values = new EigenDecomposition(new Array2DRowRealMatrix(square, false)).getRealEigenvalues();
        double greatest = Arrays.stream(values).max().orElse(0);
        if (Arrays.stream(values).anyMatch(value -> !(value > -1e-5 * greatest))) {
            throw json.fault(field, "no covariance", "a covariance: no eigenvalue below 0");
        }
        return numbers;
    }
}
