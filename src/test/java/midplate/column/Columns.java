package midplate.column;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import midplate.catalogue.ColumnLaw;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.Knowledge;
import midplate.inference.PlateModels;
import midplate.inference.PlateRun;
import midplate.plate.Reading;
import midplate.plate.Setting;

/** Columns asked about with the law and curves packed with the program; all readings are invented. */
final class Columns {
    static final String ACETATE = "silica-hexane-ethyl-acetate";
    static final String METHANOL = "silica-dichloromethane-methanol";
    static final Cartridge FOUR = new Cartridge(4);
    static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    static final ColumnLaw LAW = ColumnLaw.builtIn(CATALOGUE);
    static final PlateModels MODELS = PlateModels.of(MeasuredPairs.builtIn(CATALOGUE), FunctionalGroups.builtIn());

    private Columns() {}

    /** What one plate of spots A, B, … says. */
    static Knowledge plate(String pair, Setting setting, double percent, double... rfs) {
        Map<String, Reading> readings = new LinkedHashMap<>();
        for (int i = 0; i < rfs.length; i++) {
            readings.put(names(rfs.length).get(i), Reading.of(rfs[i]));
        }
        return MODELS.learn(pair, setting, names(rfs.length), List.of(new PlateRun(pair, percent, readings)));
    }

    static List<String> names(int spots) {
        return IntStream.range(0, spots).mapToObj(i -> "" + (char) ('A' + i)).toList();
    }

    /** A forecast for spots whose Rf at 20 % was read in an automated laboratory. */
    static ColumnForecast forecast(double... rfs) {
        return forecast(List.of(), rfs);
    }

    static ColumnForecast forecast(List<ObservedBand> earlier, double... rfs) {
        return ColumnForecast.of(
                LAW,
                plate(ACETATE, Setting.AUTOMATED, 20, rfs),
                names(rfs.length),
                ColumnForecast.Conditions.MEASURED,
                earlier);
    }

    /** One number of the bands, sorted over the cases. */
    static double[] sorted(Bands bands, ToDoubleFunction<Integer> number) {
        return IntStream.range(0, bands.cases())
                .mapToDouble(number::applyAsDouble)
                .sorted()
                .toArray();
    }

    static double[] middles(Bands bands, int spot) {
        return sorted(bands, k -> bands.middleMl(spot, k));
    }

    static double share(double[] sorted, double share) {
        return sorted[(int) (share * sorted.length)];
    }

    static double median(double[] sorted) {
        return share(sorted, 0.5);
    }

    /** Width of the 90 % band in ln units. */
    static double spread(double[] sorted) {
        return Math.log(share(sorted, 0.95) / share(sorted, 0.05));
    }

    static Program steps(double... percentsAndVolumes) {
        List<Program.Step> steps = new ArrayList<>();
        for (int i = 0; i < percentsAndVolumes.length; i += 2) {
            steps.add(new Program.Step(percentsAndVolumes[i], percentsAndVolumes[i + 1]));
        }
        return new Program(steps);
    }

    static double[] all(Bands bands, int spot) {
        return Arrays.stream(new double[][] {
                    sorted(bands, k -> bands.startMl(spot, k)),
                    sorted(bands, k -> bands.middleMl(spot, k)),
                    sorted(bands, k -> bands.endMl(spot, k))
                })
                .flatMapToDouble(Arrays::stream)
                .toArray();
    }
}
