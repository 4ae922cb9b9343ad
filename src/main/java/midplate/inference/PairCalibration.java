package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.GroupEffects;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PairBasis;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Sorbent;

/** Fits every pair with open measurements, and how compounds compare between them. */
public final class PairCalibration {
    /** A series with one reading has nothing to say of a curve. */
    private static final int FEWEST_READINGS = 2;

    private static final double EARLY_BELOW = 10;

    private static final int FEWEST_SHARES = 3;
    private static final int FEWEST_SERIES = 5;

    private static final List<String> SOURCES = List.of("Xu2022", "XuProtocol2022");
    private final OpenMeasurements measurements;
    private final SolventCatalogue catalogue;
    private final String command;
    private final Form form;
    private final Optional<GroupCalibration> groups;

    private PairCalibration(
            OpenMeasurements measurements,
            SolventCatalogue catalogue,
            String command,
            Form form,
            Optional<GroupCalibration> groups) {
        this.form = form;
        this.groups = groups;
        this.measurements = measurements;
        this.catalogue = catalogue;
        this.command = command;
    }

    /** Fits everything but what structures say. */
    public static MeasuredPairs fit(
            OpenMeasurements measurements, SolventCatalogue catalogue, String command, Form form) {
        return new PairCalibration(measurements, catalogue, command, form, Optional.empty()).run();
    }

    /**
     * Fits everything.
     *
     * @param measurements the readings to fit
     * @param catalogue for the solvents
     * @param command how this was asked for, to stand in the files
     * @param form how much compounds may differ
     * @param groups the functional groups
     * @param counter finds them in a structure
     * @param effects what is thought of their effects to begin with
     */
    public static MeasuredPairs fit(
            OpenMeasurements measurements,
            SolventCatalogue catalogue,
            String command,
            Form form,
            FunctionalGroups groups,
            GroupCounter counter,
            GroupForm effects) {
        Optional<GroupCalibration> calibration = Optional.of(new GroupCalibration(groups, counter, effects));
        return new PairCalibration(measurements, catalogue, command, form, calibration).run();
    }

    private MeasuredPairs run() {
        List<PlatePair> pairs = new ArrayList<>();
        List<GroupEffects> structures = new ArrayList<>();
        Map<String, Compared> compared = new LinkedHashMap<>();
        List<TheoryFit.Told> told = new ArrayList<>();
        for (PairName name : PairName.values()) {
            ReadingTable table = measurements.table(name);
            List<Series> series = new ArrayList<>();
            List<double[]> rows = new ArrayList<>();
            for (int i = 0; i < table.series().size(); i++) {
                double[] row = table.row(i);
                if (Arrays.stream(row).filter(rf -> !Double.isNaN(rf)).count() >= FEWEST_READINGS) {
                    series.add(table.series().get(i));
                    rows.add(row);
                }
            }
            enough(name, table.percents().length, series.size());
            PairFit fit = Calibration.fit(
                    table.percents(),
                    rows.toArray(double[][]::new),
                    form,
                    kinds(name, table.percents()),
                    isWeakOfAnother(name) ? 0 : Calibration.NONE);
            PlatePair pair = pair(name, fit, series.size());
            pairs.add(pair);
            compared.put(pair.id(), Compared.of(series, fit));
            told.add(TheoryFit.Told.of(pair, series, fit.compounds()));
            groups.flatMap(each -> each.fit(pair.id(), series, fit.compounds())).ifPresent(structures::add);
        }
        return new MeasuredPairs(
                pairs,
                Optional.of(AcrossCalibration.fit(compared, groups)),
                structures,
                TheoryFit.fit(catalogue, told));
    }

    /** Whether the weak solvent by itself is measured as that of a pair named before, with the same plates. */
    private static boolean isWeakOfAnother(PairName name) {
        return Arrays.stream(PairName.values())
                .anyMatch(other ->
                        other.ordinal() < name.ordinal() && other.weak().equals(name.weak()));
    }

    private PlatePair pair(PairName name, PairFit fit, int series) {
        double[] trusted = trusted(name);
        return new PlatePair(
                PairBasis.MEASURED,
                Sorbent.SILICA,
                catalogue.solvent(name.weak()),
                catalogue.solvent(name.strong()),
                trusted[0],
                trusted[1],
                list(fit.percents()),
                list(Arrays.stream(fit.climbs()).mapToDouble(Climb::strength).toArray()),
                list(fit.strengthError()),
                list(Arrays.stream(fit.climbs()).mapToDouble(Climb::hold).toArray()),
                list(Arrays.stream(fit.climbs()).mapToDouble(Climb::early).toArray()),
                list(fit.scales()),
                fit.shape().leftAtLines(),
                fit.atLines(),
                fit.shape().stretch().start(),
                fit.shape().stretch().front(),
                fit.traits(),
                series,
                fit.readings(),
                fit.residual(),
                new PlatePair.Provenance(SOURCES, measurements.sha256(), leftOut(), command));
    }

    /** Between these shares [% v/v] the curve may be trusted: where it was measured and the readings are not saturated. */
    private static double[] trusted(PairName name) {
        return switch (name) {
            case HEXANE_ETHYL_ACETATE -> new double[] {0, 100};
            case HEXANE_DIETHYL_ETHER -> new double[] {33.33, 50};
            case DICHLOROMETHANE_METHANOL -> new double[] {0, 9.09};
        };
    }

    /**
     * Without ethyl acetate nothing covers the surface of the silica; below 10 % of it the surface is covered only in part, and what
     * was run on different days differs. Ether was not measured there; with methanol, and at further ratios, nothing was gained by it.
     */
    private static ShareKind[] kinds(PairName name, double[] percents) {
        ShareKind[] kinds = new ShareKind[percents.length];
        Arrays.fill(kinds, ShareKind.PLAIN);
        for (int j = 0; name == PairName.HEXANE_ETHYL_ACETATE && j < percents.length; j++) {
            if (percents[j] < EARLY_BELOW) {
                kinds[j] = percents[j] > 0 ? ShareKind.EARLY : ShareKind.BARE;
            }
        }
        return kinds;
    }

    private static void enough(PairName name, int shares, int series) {
        if (shares < FEWEST_SHARES || series < FEWEST_SERIES) {
            throw new BadMeasurements(
                    MeasurementReader.FILE,
                    "-",
                    name.id(),
                    series + " series with two or more readings, at " + shares + " ratios",
                    "at least " + FEWEST_SERIES + " series at " + FEWEST_SHARES + " ratios for each pair",
                    "Add measurements of this pair.");
        }
    }

    private String leftOut() {
        List<String> structures = measurements.contradictions().stream()
                .map(each -> String.format(Locale.ROOT, "%s (%.2f)", each.smiles(), each.meanSpread()))
                .toList();
        return "Structures whose series differ by more than 0.15 in Rf on average: " + String.join(", ", structures);
    }

    private static List<Double> list(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }
}
