package midplate.benchmark;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import midplate.advice.Adviser;
import midplate.advice.Question;
import midplate.catalogue.ColumnLaw;
import midplate.catalogue.SolventCatalogue;
import midplate.column.BandLaw;
import midplate.column.Bands;
import midplate.column.Cartridge;
import midplate.column.ColumnForecast;
import midplate.column.ObservedBand;
import midplate.column.Program;
import midplate.inference.ColumnMeasurement;
import midplate.inference.PairName;
import midplate.plate.Setting;

/** Forecasts of columns by one law, asked for as a user asks. */
final class ColumnAnswers {
    /** How far start and end of a column of the automated laboratory may be off [ml]; the fraction collector of a bench is coarser. */
    private static final double ERROR_ML = 0.5;

    private static final double TAIL = 0.05;

    private final Adviser adviser;
    private final ColumnLaw law;
    private final PlateQuestions questions;

    ColumnAnswers(Adviser adviser, ColumnLaw law, SolventCatalogue catalogue) {
        this.adviser = adviser;
        this.law = law;
        this.questions = new PlateQuestions(catalogue);
    }

    /**
     * A band foretold.
     *
     * @param middleMl as likely too small as too large [ml]
     * @param width likewise, of ln(end/start) [1]
     * @param low below these with probability 0.05: start, middle, end [ml]
     * @param high above these with probability 0.05 [ml]
     */
    record Foretold(double middleMl, double width, double[] low, double[] high) {
        /** Whether a start, middle or end lies between its bounds. */
        boolean holds(int which, double ml) {
            return ml >= low[which] && ml <= high[which];
        }
    }

    /** What these plates, and an earlier column where there was one, say of a compound. */
    BandLaw told(Map<Double, Double> plates, Optional<ColumnMeasurement> earlier) {
        List<TrialReading> trials = plates.entrySet().stream()
                .map(plate -> new TrialReading(PairName.HEXANE_ETHYL_ACETATE, plate.getKey(), plate.getValue()))
                .toList();
        Question question = questions.of(PairName.HEXANE_ETHYL_ACETATE, List.of(trials), List.of(), Setting.AUTOMATED);
        List<ObservedBand> seen = earlier.stream()
                .map(run -> new ObservedBand(
                        question.spots().get(0),
                        new Cartridge(run.grams()),
                        Program.isocratic(run.percentStrong()),
                        run.startMl(),
                        run.endMl(),
                        ERROR_ML))
                .toList();
        return ColumnForecast.of(law, question, adviser.consult(question).knowledge(), seen);
    }

    /** A law that was told, with what it said of the columns already asked about. */
    static final class Remembered {
        private final BandLaw law;
        private final Map<List<Double>, Foretold> known = new HashMap<>();

        Remembered(BandLaw law) {
            this.law = law;
        }

        Foretold of(ColumnMeasurement run) {
            return known.computeIfAbsent(
                    List.of(run.grams(), run.percentStrong(), run.loadMl()), key -> foretold(law, run));
        }

        double idealMl(ColumnMeasurement run) {
            return law.idealMl(0, new Cartridge(run.grams()), Program.isocratic(run.percentStrong()));
        }

        double rf(double percent) {
            return law.rf(0, percent).value();
        }
    }

    private static Foretold foretold(BandLaw law, ColumnMeasurement run) {
        Bands bands = law.bands(new Cartridge(run.grams()), Program.isocratic(run.percentStrong()), run.loadMl());
        double[][] sorted = {
            sorted(bands, k -> bands.startMl(0, k)),
            sorted(bands, k -> bands.middleMl(0, k)),
            sorted(bands, k -> bands.endMl(0, k))
        };
        double[] low = new double[sorted.length];
        double[] high = new double[sorted.length];
        for (int i = 0; i < sorted.length; i++) {
            low[i] = sorted[i][(int) Math.floor(TAIL * bands.cases())];
            high[i] = sorted[i][bands.cases() - 1 - (int) Math.floor(TAIL * bands.cases())];
        }
        double[] widths = sorted(bands, k -> Math.log(bands.endMl(0, k) / bands.startMl(0, k)));
        return new Foretold(median(sorted[1]), median(widths), low, high);
    }

    private static double median(double[] sorted) {
        return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }

    private static double[] sorted(Bands bands, IntToDoubleFunction number) {
        double[] values = IntStream.range(0, bands.cases()).mapToDouble(number).toArray();
        Arrays.sort(values);
        return values;
    }
}
