package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import midplate.catalogue.ColumnLaw;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PlatePair;

/**
 * Fits the law of columns to runs of compounds whose plates are known, too: the same structure, at any ratio, since the model of the
 * pair says what a plate shows there.
 */
public final class ColumnCalibration {
    private static final List<String> SOURCES =
            List.of("Wu2024", "NatureCommunications2025", "Xu2022", "XuProtocol2022");
    private static final String PAIR = "silica-hexane-ethyl-acetate";
    private static final int FEWEST_COMPOUNDS = 10;
    private static final int FEWEST_SIZES = 2;
    /** Where columns are run [Rf]: outside, what is held is too little or too much to compare. */
    private static final double LOW_RF = 0.1;

    private static final double HIGH_RF = 0.6;

    private final OpenMeasurements plates;
    private final ColumnMeasurements columns;
    private final String command;

    private ColumnCalibration(OpenMeasurements plates, ColumnMeasurements columns, String command) {
        this.plates = plates;
        this.columns = columns;
        this.command = command;
    }

    /**
     * Fits it, with the terms that the measurements call for.
     *
     * @param plates what the pairs were fitted to
     * @param columns the runs to fit
     * @param fitted the pairs
     * @param command how this was asked for, to stand in the file
     */
    public static ColumnLaw fit(
            OpenMeasurements plates, ColumnMeasurements columns, MeasuredPairs fitted, String command) {
        return fit(plates, columns, fitted, command, EnumSet.allOf(ColumnTerm.class));
    }

    /** The same with some terms only. */
    public static ColumnLaw fit(
            OpenMeasurements plates,
            ColumnMeasurements columns,
            MeasuredPairs fitted,
            String command,
            Set<ColumnTerm> allowed) {
        PlatePair pair = fitted.pairs().stream()
                .filter(each -> each.id().equals(PAIR))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No curve of " + PAIR + "; fit it first."));
        return new ColumnCalibration(plates, columns, command).run(pair, allowed);
    }

    private ColumnLaw run(PlatePair pair, Set<ColumnTerm> allowed) {
        List<ColumnCompound> compounds = ColumnCompound.joined(plates, columns, pair);
        double[] sizes = cells(compounds).stream()
                .mapToDouble(ColumnCompound.Cell::grams)
                .distinct()
                .sorted()
                .toArray();
        enough(compounds.size(), sizes.length);
        ColumnLikelihood fit = ColumnFit.chosen(compounds, allowed).law();
        double[] places = cells(compounds).stream()
                .mapToDouble(ColumnCompound.Cell::place)
                .toArray();
        double meanPlace = Arrays.stream(places).sum() / places.length;
        double squares = 0;
        for (double place : places) {
            squares += (place - meanPlace) * (place - meanPlace);
        }
        return new ColumnLaw(
                PAIR,
                Arrays.stream(sizes).boxed().toList(),
                StrictMath.expm1(Arrays.stream(places).min().orElseThrow()),
                StrictMath.expm1(Arrays.stream(places).max().orElseThrow()),
                fit.outsideMl(),
                fit.voidMlPerGram(),
                fit.holdMlPerGram(),
                fit.steepness(),
                fit.drift(),
                meanPlace,
                StrictMath.sqrt(squares / places.length),
                fit.spotSpread(),
                fit.scatter(),
                fit.freedom(),
                sizeSpread(fit, compounds),
                idealSpread(fit, compounds),
                ColumnWidthFit.of(columns, fit, allowed),
                new ColumnLaw.Fit(
                        compounds.size(),
                        cells(compounds).stream()
                                .mapToInt(cell -> cell.logMiddles().length)
                                .sum(),
                        ColumnWidthFit.used(columns).size()),
                new ColumnLaw.Provenance(SOURCES, columns.sha256(), plates.sha256(), leftOut(), command));
    }

    private static List<ColumnCompound.Cell> cells(List<ColumnCompound> compounds) {
        return compounds.stream().flatMap(each -> each.cells().stream()).toList();
    }

    /** Root mean square over the sizes of how far their compounds lie beside the law [ln units]. */
    private static double sizeSpread(ColumnLikelihood fit, List<ColumnCompound> compounds) {
        Map<Double, List<Double>> bySize = new TreeMap<>();
        for (ColumnCompound compound : compounds) {
            double[] residuals = fit.residuals(compound);
            Map<Double, List<Double>> own = new TreeMap<>();
            for (int i = 0; i < residuals.length; i++) {
                own.computeIfAbsent(compound.cells().get(i).grams(), key -> new ArrayList<>())
                        .add(residuals[i]);
            }
            own.forEach((size, each) ->
                    bySize.computeIfAbsent(size, key -> new ArrayList<>()).add(median(each)));
        }
        double squares = 0;
        for (List<Double> each : bySize.values()) {
            double mean = each.stream().mapToDouble(Double::doubleValue).sum() / each.size();
            squares += mean * mean;
        }
        return StrictMath.sqrt(squares / bySize.size());
    }

    /** Root mean square over compounds of ln of what is held beyond V₀ over what the ideal law {@code φ·m·k} says [ln units]. */
    private static double idealSpread(ColumnLikelihood fit, List<ColumnCompound> compounds) {
        double squares = 0;
        int count = 0;
        for (ColumnCompound compound : compounds) {
            List<Double> own = new ArrayList<>();
            for (ColumnCompound.Cell cell : compound.cells()) {
                double rf = Arrays.stream(cell.rf()).sum() / cell.rf().length;
                double first = fit.voidMl(cell.grams());
                double ideal = fit.voidMlPerGram() * cell.grams() * (1 - rf) / rf;
                for (double read : cell.logMiddles()) {
                    double held = StrictMath.exp(read) - first;
                    if (rf >= LOW_RF && rf <= HIGH_RF && held > 0) {
                        own.add(StrictMath.log(held / ideal));
                    }
                }
            }
            if (!own.isEmpty()) {
                double median = median(own);
                squares += median * median;
                count++;
            }
        }
        return StrictMath.sqrt(squares / StrictMath.max(1, count));
    }

    private static double median(List<Double> values) {
        double[] sorted =
                values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    private void enough(int compounds, int sizes) {
        if (compounds < FEWEST_COMPOUNDS || sizes < FEWEST_SIZES) {
            throw new BadMeasurements(
                    ColumnReader.FILE,
                    "-",
                    "smiles",
                    compounds + " structures that stand in " + MeasurementReader.FILE + ", too, on " + sizes + " sizes",
                    "at least " + FEWEST_COMPOUNDS + " structures on " + FEWEST_SIZES + " sizes",
                    "Add measurements of columns, or take the file out of the folder.");
        }
    }

    private String leftOut() {
        List<String> structures =
                plates.contradictions().stream().map(Contradiction::smiles).toList();
        return String.format(
                Locale.ROOT,
                "Of %d rows those whose end is not after the start or whose start is not above 0; for the widths those with an end less than %.0f %% after the start; structures whose plates contradict each other: %s",
                columns.rowsRead(),
                100 * StrictMath.expm1(ColumnWidthFit.LEAST_WIDTH),
                String.join(", ", structures));
    }
}
