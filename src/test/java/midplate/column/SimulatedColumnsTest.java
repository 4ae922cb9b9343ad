package midplate.column;

import static midplate.column.Columns.LAW;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import midplate.inference.Knowledge;
import midplate.inference.PlateRun;
import midplate.plate.Reading;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Compounds and columns come from formulas written here, with the numbers of the packed law. */
@DisplayName("The 90 % bands of simulated columns")
class SimulatedColumnsTest {
    private static final double[] PERCENTS = {16.67, 25, 50, 66.67};
    /** The packed strengths at these shares. */
    private static final double[] STRENGTHS = {-0.517203, 0, 1.28039, 2.04109};

    private static final double[] SCALES = {0.0177, 0.0214, 0.0248, 0.0259};
    private static final int COMPOUNDS = 250;

    private final Random random = new Random(11);
    private final int[][] held = new int[2][3];

    @Test
    void holdTheTruthAsOftenAsTheySay() {
        for (int i = 0; i < COMPOUNDS; i++) {
            compound(-2 + 2.5 * random.nextDouble(), 0.9 + 0.2 * random.nextDouble());
        }
        String[] names = {"start", "middle", "end"};
        for (int which = 0; which < 3; which++) {
            for (int told = 0; told < 2; told++) {
                double share = (double) held[told][which] / COMPOUNDS;
                // 0.9 give or take three standard errors
                assertTrue(
                        share > 0.84 && share < 0.96, names[which] + (told == 1 ? ", told a column: " : ": ") + share);
            }
        }
    }

    private void compound(double c, double s) {
        List<PlateRun> plates = new ArrayList<>();
        for (int j = 0; j < PERCENTS.length; j++) {
            double rf = 1.025 / (1 + Math.exp(-c - s * STRENGTHS[j])) - 0.0125 + SCALES[j] * random.nextGaussian();
            plates.add(new PlateRun(
                    Columns.ACETATE, PERCENTS[j], Map.of("A", Reading.of(Math.max(0.01, Math.min(0.99, rf))))));
        }
        Knowledge knowledge = Columns.MODELS.learn(Columns.ACETATE, Setting.AUTOMATED, List.of("A"), plates);
        double delta = LAW.spotSpread() * random.nextGaussian();
        double omega = LAW.width().spotSpread() * random.nextGaussian();
        double[] first = column(c, s, 2, delta, omega);
        double[] second = column(c, s, 0, delta, omega);
        ObservedBand seen =
                new ObservedBand("A", Columns.FOUR, Program.isocratic(PERCENTS[2]), first[0], first[2], 0.1);
        for (int told = 0; told < 2; told++) {
            ColumnForecast forecast = ColumnForecast.of(
                    LAW,
                    knowledge,
                    List.of("A"),
                    ColumnForecast.Conditions.MEASURED,
                    told == 0 ? List.of() : List.of(seen));
            Bands bands = forecast.bands(Columns.FOUR, Program.isocratic(PERCENTS[0]), 0.1);
            for (int which = 0; which < 3; which++) {
                int of = which;
                double[] sorted = Columns.sorted(
                        bands, k -> of == 0 ? bands.startMl(0, k) : of == 1 ? bands.middleMl(0, k) : bands.endMl(0, k));
                if (second[which] >= Columns.share(sorted, 0.05) && second[which] <= Columns.share(sorted, 0.95)) {
                    held[told][which]++;
                }
            }
        }
    }

    /** Start, middle and end on 4 g with 0.1 ml loaded. */
    private double[] column(double c, double s, int eluent, double delta, double omega) {
        double eta = c + s * STRENGTHS[eluent];
        double unretained = LAW.outsideMl() + 4 * LAW.voidMlPerGram();
        double hold = 4
                * LAW.holdMlPerGram()
                * Math.exp(-LAW.steepness() * eta - LAW.drift() * (Math.log(1 + PERCENTS[eluent]) - 2) + delta);
        double middle = unretained + hold;
        double z = Math.max(0, Math.min(LAW.width().mostPlace(), Math.log(middle / unretained)));
        double u = Math.exp(LAW.width().first()
                + LAW.width().perLogLoad() * Math.log(0.025)
                + LAW.width().perPlace() * z
                + LAW.width().perPlaceSquared() * z * z
                + omega
                + LAW.width().spread() * random.nextGaussian());
        double seen = middle * Math.exp(LAW.runScatter() * student(LAW.runFreedom()));
        return new double[] {2 * seen / (1 + Math.exp(u)), seen, 2 * seen * Math.exp(u) / (1 + Math.exp(u))};
    }

    /** Student's t by Bailey's polar method. */
    private double student(double freedom) {
        while (true) {
            double u = 2 * random.nextDouble() - 1;
            double v = 2 * random.nextDouble() - 1;
            double w = u * u + v * v;
            if (w > 0 && w < 1) {
                return u * Math.sqrt(freedom * (Math.pow(w, -2 / freedom) - 1) / w);
            }
        }
    }
}
