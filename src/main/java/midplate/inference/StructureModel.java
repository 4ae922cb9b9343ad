package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.GroupEffects;
import midplate.chemistry.GroupCounts;

/**
 * What the structure of a compound says about its traits in one pair, before any plate: c and s each normal, apart from each
 * other; t what it is for compounds of that c and s. Two compounds in a hundred are taken to lie anywhere, so that a reading
 * that contradicts the structure wins.
 */
final class StructureModel {
    /**
     * The share of compounds that lie anywhere: a wrong name, a salt, a group that no pattern knows; our own choice. With 0.01 to 0.05 the
     * figures of the benchmark hardly differ.
     */
    private static final double ANYWHERE = 0.02;
    /** Farther from its middle than so many standard deviations a trait is left to the two in a hundred. */
    private static final double REACH = 5;

    /** Of what lies evenly between 0 and 2 [1]: 1/3. */
    private static final double VARIANCE_OF_EVEN = 3;

    private final FunctionalGroups groups;
    private final MoleculeParts parts;
    private final GroupEffects effects;
    private final double[][] covarianceC;
    private final double[][] covarianceS;
    private final TraitGrid grid;
    private final double[] anywhere;
    private final TraitPrior population;

    StructureModel(FunctionalGroups groups, GroupEffects effects, TraitPrior population) {
        this.groups = groups;
        this.parts = new MoleculeParts(groups);
        if (!parts.names()
                .equals(effects.effects().stream()
                        .map(GroupEffects.Effect::part)
                        .toList())) {
            throw new IllegalArgumentException(effects.pair() + ": fitted for other groups than those of groups.csv; "
                    + "make the files again with the command calibrate");
        }
        this.effects = effects;
        this.covarianceC = square(effects.covarianceC());
        this.covarianceS = square(effects.covarianceS());
        this.grid = population.grid();
        this.anywhere = population.columnWeights();
        this.population = population;
    }

    private static double[][] square(List<Double> triangle) {
        int n = (int) Math.round((Math.sqrt(8.0 * triangle.size() + 1) - 1) / 2);
        double[][] square = new double[n][n];
        int at = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                square[i][j] = triangle.get(at);
                square[j][i] = triangle.get(at);
                at++;
            }
        }
        return square;
    }

    /** The pair it speaks of. */
    String pair() {
        return effects.pair();
    }

    /**
     * The traits that a structure foretells. A molecule larger than all those measured is an extension: each carbon beyond may add
     * nothing or twice as much.
     */
    StructureForecast forecast(GroupCounts counts) {
        double[] row = row(counts);
        double extraC = 0;
        double extraS = 0;
        if (isSizeUnsaid(counts)) {
            for (GroupEffects.Typical typical : effects.typical()) {
                GroupEffects.Effect effect = effects.effects().get(parts.names().indexOf(typical.part()));
                extraC += effect.c() * effect.c() * typical.variance();
                extraS += effect.s() * effect.s() * typical.variance();
            }
        }
        if (counts.detail() == GroupCounts.Detail.CLASS) {
            extraC += effects.classC();
            extraS += effects.classS();
        }
        double c = 0;
        double s = 0;
        List<StructureForecast.Part> told = new ArrayList<>();
        for (int k = 0; k < row.length; k++) {
            GroupEffects.Effect effect = effects.effects().get(k);
            c += row[k] * effect.c();
            s += row[k] * effect.s();
            double beyond = parts.isSize(k) ? Math.max(0, row[k] - effect.most()) : 0;
            extraC += beyond * beyond * effect.c() * effect.c() / VARIANCE_OF_EVEN;
            extraS += beyond * beyond * effect.s() * effect.s() / VARIANCE_OF_EVEN;
            if (row[k] != 0 && k > 0) {
                told.add(new StructureForecast.Part(
                        effect.part(), row[k], effect.c(), Math.sqrt(covarianceC[k][k]), effect.compounds()));
            }
        }
        return new StructureForecast(
                c,
                s,
                effects.residualC() + extraC + quadratic(row, covarianceC),
                effects.residualS() + extraS + quadratic(row, covarianceS),
                told,
                HeldBy.of(groups, counts, told));
    }

    /** How often each part stands in a compound; of its size what is usual where nothing was said of it. */
    double[] row(GroupCounts counts) {
        double[] row = parts.row(counts);
        if (isSizeUnsaid(counts)) {
            for (GroupEffects.Typical typical : effects.typical()) {
                row[parts.names().indexOf(typical.part())] = typical.mean();
            }
        }
        return row;
    }

    private boolean isSizeUnsaid(GroupCounts counts) {
        return counts.detail() != GroupCounts.Detail.WHOLE
                && effects.typical().stream().noneMatch(typical -> counts.of(typical.part()) > 0);
    }

    private static double quadratic(double[] row, double[][] covariance) {
        double sum = 0;
        for (int i = 0; i < row.length; i++) {
            if (row[i] != 0) {
                for (int j = 0; j < row.length; j++) {
                    sum += row[i] * covariance[i][j] * row[j];
                }
            }
        }
        return Math.max(0, sum);
    }

    /** What is thought of a compound before it was read. */
    TraitPrior prior(GroupCounts counts) {
        StructureForecast forecast = forecast(counts);
        double[] c = normal(grid.cCount(), grid::cAt, forecast.c(), forecast.varianceC());
        double[] s = normal(grid.sCount(), grid::sAt, forecast.s(), forecast.varianceS());
        double[] columns = new double[c.length * s.length];
        for (int iS = 0; iS < s.length; iS++) {
            for (int iC = 0; iC < c.length; iC++) {
                int column = iS * c.length + iC;
                columns[column] = (1 - ANYWHERE) * c[iC] * s[iS] + ANYWHERE * anywhere[column];
            }
        }
        return population.withColumns(columns);
    }

    private static double[] normal(int count, IntToDoubleFunction at, double mean, double variance) {
        double[] density = new double[count];
        double middle = Math.max(at.applyAsDouble(0), Math.min(at.applyAsDouble(count - 1), mean));
        double deviation = Math.sqrt(variance);
        for (int i = 0; i < count; i++) {
            double z = (at.applyAsDouble(i) - middle) / deviation;
            density[i] = Math.abs(z) > REACH ? 0 : Math.exp(-0.5 * z * z);
        }
        double sum = Arrays.stream(density).sum();
        if (!(sum > 0)) {
            density[nearest(count, at, middle)] = 1;
            return density;
        }
        return TraitPrior.normalized(density);
    }

    private static int nearest(int count, IntToDoubleFunction at, double middle) {
        int nearest = 0;
        for (int i = 1; i < count; i++) {
            if (Math.abs(at.applyAsDouble(i) - middle) < Math.abs(at.applyAsDouble(nearest) - middle)) {
                nearest = i;
            }
        }
        return nearest;
    }
}
