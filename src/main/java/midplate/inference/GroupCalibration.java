package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.GroupDifference;
import midplate.catalogue.GroupEffects;

/** Fits what structures say about the traits of compounds in a pair. */
final class GroupCalibration {
    /** Fewer compounds would say little more than the published energies. */
    private static final int FEWEST_COMPOUNDS = 30;

    private static final double NOTHING = 1e-6;

    private final MoleculeParts parts;
    private final GroupCounter counter;

    private final GroupForm form;

    GroupCalibration(FunctionalGroups groups, GroupCounter counter, GroupForm form) {
        this.form = form;
        this.parts = new MoleculeParts(groups);
        this.counter = counter;
    }

    /**
     * Fits a pair; empty with too few compounds.
     *
     * @param pair its id
     * @param series the compounds
     * @param traits of each of them
     */
    Optional<GroupEffects> fit(String pair, List<Series> series, List<PairFit.Estimate> traits) {
        if (series.size() < FEWEST_COMPOUNDS) {
            return Optional.empty();
        }
        double[][] rows = series.stream()
                .map(each -> parts.row(counter.of(each.smiles())))
                .toArray(double[][]::new);
        double[] c = traits.stream().mapToDouble(PairFit.Estimate::c).toArray();
        double[] s = traits.stream().mapToDouble(PairFit.Estimate::s).toArray();
        GroupFit.Fitted fitC = GroupFit.fit(
                parts,
                form == GroupForm.ENERGIES ? GroupFit.Energies.COUNT : GroupFit.Energies.ALIKE,
                rows,
                c,
                traits.stream().mapToDouble(PairFit.Estimate::varianceC).toArray());
        GroupFit.Fitted fitS = GroupFit.fit(
                parts,
                form == GroupForm.ENERGIES ? GroupFit.Energies.SAY_NOTHING : GroupFit.Energies.ALIKE,
                rows,
                s,
                traits.stream().mapToDouble(PairFit.Estimate::varianceS).toArray());
        List<GroupEffects.Typical> typical = typical(rows);
        return Optional.of(new GroupEffects(
                pair,
                effects(rows, fitC, fitS),
                fitC.scale(),
                triangle(fitC.covariance()),
                triangle(fitS.covariance()),
                fitC.residual(),
                fitS.residual(),
                typical,
                withinClass(rows, c, fitC, typical),
                withinClass(rows, s, fitS, typical),
                series.size()));
    }

    /**
     * Fits what parts of a molecule do in one pair beyond another; empty with too few compounds.
     *
     * @param from id of the pair that is read
     * @param to id of the pair that is asked about
     * @param series the compounds measured in both
     * @param away how far c of each lies from what its traits in the other pair say [ln units]
     * @param variance how well each is known [ln units²]
     */
    Optional<GroupDifference> difference(
            String from, String to, List<Series> series, double[] away, double[] variance) {
        if (series.size() < FEWEST_COMPOUNDS) {
            return Optional.empty();
        }
        double[][] rows = series.stream()
                .map(each -> parts.row(counter.of(each.smiles())))
                .toArray(double[][]::new);
        GroupFit.Fitted fitted = GroupFit.fit(parts, GroupFit.Energies.ALIKE, rows, away, variance);
        List<GroupDifference.Part> seen = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        double unseen = 0;
        for (int k = 0; k < parts.count(); k++) {
            int place = k;
            int having =
                    (int) Arrays.stream(rows).filter(row -> row[place] != 0).count();
            if (having > 0) {
                seen.add(new GroupDifference.Part(parts.names().get(k), fitted.effects()[k], having));
                places.add(k);
            } else {
                unseen = fitted.covariance()[k][k];
            }
        }
        double[][] covariance = new double[places.size()][places.size()];
        for (int i = 0; i < covariance.length; i++) {
            for (int j = 0; j < covariance.length; j++) {
                covariance[i][j] = fitted.covariance()[places.get(i)][places.get(j)];
            }
        }
        return Optional.of(
                new GroupDifference(from, to, seen, triangle(covariance), unseen, fitted.residual(), series.size()));
    }

    private List<GroupEffects.Effect> effects(double[][] rows, GroupFit.Fitted fitC, GroupFit.Fitted fitS) {
        List<GroupEffects.Effect> effects = new ArrayList<>();
        for (int k = 0; k < parts.count(); k++) {
            int place = k;
            int having = (int) Arrays.stream(rows).filter(row -> row[place] > 0).count();
            double most =
                    Arrays.stream(rows).mapToDouble(row -> row[place]).max().orElse(0);
            effects.add(
                    new GroupEffects.Effect(parts.names().get(k), fitC.effects()[k], fitS.effects()[k], having, most));
        }
        return effects;
    }

    private List<GroupEffects.Typical> typical(double[][] rows) {
        List<GroupEffects.Typical> typical = new ArrayList<>();
        for (int k = 0; k < parts.count(); k++) {
            if (parts.isSize(k)) {
                int place = k;
                double mean = Arrays.stream(rows)
                        .mapToDouble(row -> row[place])
                        .average()
                        .orElse(0);
                double variance = Arrays.stream(rows)
                        .mapToDouble(row -> (row[place] - mean) * (row[place] - mean))
                        .average()
                        .orElse(0);
                typical.add(new GroupEffects.Typical(parts.names().get(k), mean, variance));
            }
        }
        return typical;
    }

    /** Mean square distance from what the strongest group alone says, less the residual and the spread of their sizes: what else compounds of a class carry. */
    private double withinClass(
            double[][] rows, double[] trait, GroupFit.Fitted fit, List<GroupEffects.Typical> typical) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < rows.length; i++) {
            int strongest = strongest(rows[i]);
            if (strongest > 0) {
                double told = fit.effects()[0] + fit.effects()[strongest];
                for (GroupEffects.Typical each : typical) {
                    told += each.mean() * fit.effects()[parts.names().indexOf(each.part())];
                }
                sum += (trait[i] - told) * (trait[i] - told);
                count++;
            }
        }
        double size = 0;
        for (GroupEffects.Typical each : typical) {
            double effect = fit.effects()[parts.names().indexOf(each.part())];
            size += effect * effect * each.variance();
        }
        double beyond = count == 0 ? 0 : sum / count - fit.residual() - size;
        return beyond > NOTHING ? beyond : 0;
    }

    private int strongest(double[] row) {
        int strongest = 0;
        for (int k = 0; k < row.length; k++) {
            if (parts.isGroup(k)
                    && row[k] > 0
                    && parts.group(k).isPolar()
                    && (strongest == 0
                            || parts.group(k).energy() > parts.group(strongest).energy())) {
                strongest = k;
            }
        }
        return strongest;
    }

    private static List<Double> triangle(double[][] matrix) {
        List<Double> triangle = new ArrayList<>();
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j <= i; j++) {
                triangle.add(matrix[i][j]);
            }
        }
        return triangle;
    }
}
