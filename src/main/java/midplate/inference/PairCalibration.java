package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.GroupEffects;
import midplate.catalogue.MeasuredPair;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PairLink;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Sorbent;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/** Fits every pair with open measurements, and the links between them. */
public final class PairCalibration {
    /** A series with one reading has nothing to say of a curve. */
    private static final int FEWEST_READINGS = 2;

    private static final double EARLY_BELOW = 10;

    private static final int FEWEST_SHARES = 3;
    private static final int FEWEST_SERIES = 5;
    private static final int FEWEST_COMMON = 5;
    /** Outside the middle 96 of 100 compounds a line between two pairs is not used. */
    private static final double OUTER_PERCENT = 2;
    /** No line is known better than this, however well a few compounds agree [ln units]. */
    private static final double LEAST_DEVIATION = 0.05;

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
        List<MeasuredPair> pairs = new ArrayList<>();
        List<GroupEffects> structures = new ArrayList<>();
        Map<String, Map<Series, Double>> traits = new LinkedHashMap<>();
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
                    table.percents(), rows.toArray(double[][]::new), form, kinds(name, table.percents()));
            MeasuredPair pair = pair(name, fit, series.size());
            pairs.add(pair);
            Map<Series, Double> c = new HashMap<>();
            for (int i = 0; i < series.size(); i++) {
                c.put(series.get(i), fit.compounds().get(i).c());
            }
            traits.put(pair.id(), c);
            groups.flatMap(each -> each.fit(pair.id(), series, fit.compounds())).ifPresent(structures::add);
        }
        return new MeasuredPairs(pairs, links(traits), structures);
    }

    private MeasuredPair pair(PairName name, PairFit fit, int series) {
        double[] trusted = trusted(name);
        return new MeasuredPair(
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
                new MeasuredPair.Provenance(SOURCES, measurements.sha256(), leftOut(), command));
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
     * Without ethyl acetate nothing covers the surface of the silica; below 10 % of it the surface is covered only in part, and the
     * eluent may demix on the way. Ether was not measured there; with methanol, and at further ratios, nothing was gained by it.
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

    /** Each pair from each other one: a straight line through the compounds measured in both, if there are enough. */
    private static List<PairLink> links(Map<String, Map<Series, Double>> traits) {
        List<PairLink> links = new ArrayList<>();
        traits.forEach((from, fromC) -> traits.forEach((to, toC) -> {
            if (!from.equals(to)) {
                link(from, fromC, to, toC).ifPresent(links::add);
            }
        }));
        return links;
    }

    private static Optional<PairLink> link(String from, Map<Series, Double> fromC, String to, Map<Series, Double> toC) {
        SimpleRegression line = new SimpleRegression();
        List<Double> common = new ArrayList<>();
        for (Map.Entry<Series, Double> entry : new TreeMap<>(fromC).entrySet()) {
            Double c = toC.get(entry.getKey());
            if (c != null) {
                line.addData(entry.getValue(), c);
                common.add(entry.getValue());
            }
        }
        if (line.getN() < FEWEST_COMMON) {
            return Optional.empty();
        }
        return Optional.of(new PairLink(
                from,
                to,
                line.getIntercept(),
                line.getSlope(),
                Math.max(LEAST_DEVIATION, Math.sqrt(line.getMeanSquareError())),
                common.size(),
                StatUtils.percentile(array(common), OUTER_PERCENT),
                StatUtils.percentile(array(common), 100 - OUTER_PERCENT)));
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static List<Double> list(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }
}
