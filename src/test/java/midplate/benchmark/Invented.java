package midplate.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import midplate.chemistry.RetentionFactor;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import midplate.inference.Series;
import midplate.inference.TableText;

/** Invented measurements that follow {@code ln(Rf/(1 − Rf)) = c + G(%)} to the last digit, G = 1.5·ln(% + 1). */
final class Invented {
    static final double[] ACETATE = {0, 1.96, 4.76, 16.67, 25, 50, 66.67, 100};
    private static final double[] METHANOL = {0, 1.96, 9.09};
    private static final double[] ETHER = {33.33, 50, 100};

    private Invented() {}

    static double strength(double percent) {
        return 1.5 * Math.log(percent + 1);
    }

    static double rf(double c, double percent) {
        return RetentionFactor.fromLogit(c + strength(percent));
    }

    /** Small molecules whose line notations have no four characters in common. */
    private static final List<String> MOLECULES = List.of(
            "CCCC",
            "OCCO",
            "NCCN",
            "FCCF",
            "SCCS",
            "ClCCl",
            "BrCBr",
            "ICCI",
            "C=CC=C",
            "C#CC#C",
            "c1ccccc1",
            "CC(C)C",
            "FC(F)F",
            "CS(C)=O",
            "C1CC1",
            "C1OC1",
            "C1NC1",
            "C1SC1",
            "CN=O",
            "CSSC",
            "CON=C",
            "OC(O)=O");

    /** Compounds with c from −6.5 to −1, with texts in place of SMILES. */
    static OpenMeasurements measurements(Path folder, int compounds) throws IOException {
        return measurements(folder, compounds, Invented::structure);
    }

    /** The same with structures that can be drawn, at most 22. */
    static OpenMeasurements molecules(Path folder, int compounds) throws IOException {
        return measurements(folder, compounds, MOLECULES::get);
    }

    private static OpenMeasurements measurements(Path folder, int compounds, IntFunction<String> structure)
            throws IOException {
        TableText text = new TableText();
        for (int i = 0; i < compounds; i++) {
            double c = -6.5 + 5.5 * i / (compounds - 1);
            add(text, i, structure.apply(i), PairName.HEXANE_ETHYL_ACETATE, ACETATE, c);
            add(text, i, structure.apply(i), PairName.HEXANE_DIETHYL_ETHER, ETHER, c);
            add(text, i, structure.apply(i), PairName.DICHLOROMETHANE_METHANOL, METHANOL, c);
        }
        return text.read(folder);
    }

    private static void add(
            TableText text, int compound, String structure, PairName pair, double[] percents, double c) {
        for (double percent : percents) {
            text.row(compound, structure, pair, percent, rf(c, percent));
        }
    }

    /** Texts in place of SMILES; those of the first 26 compounds have nothing in common, the 27th is like the first. */
    private static String structure(int compound) {
        return Character.toString('A' + compound % 26).repeat(4 + compound / 26);
    }

    static Series series(int compound) {
        return new Series(compound, structure(compound));
    }

    /** Knows the law of these measurements and reads the trait off the first trial; its plates are a fixed choice. */
    static class Knowing implements Contender {
        private int asked;

        @Override
        public String name() {
            return "knowing";
        }

        @Override
        public List<Guess> guesses(PairName pair, List<TrialReading> trials, double[] percents) {
            asked++;
            TrialReading trial = trials.get(0);
            double c = RetentionFactor.logit(trial.rf()) - strength(trial.percent());
            List<Guess> guesses = new ArrayList<>();
            for (double percent : percents) {
                double rf = rf(c, percent);
                guesses.add(new Guess(rf, rf - 1e-6, rf + 1e-6));
            }
            return guesses;
        }

        @Override
        public Choice choose(List<List<TrialReading>> spots) {
            asked++;
            return new Choice(spots.get(0).get(0).percent(), 0.5);
        }

        int asked() {
            return asked;
        }
    }

    /** Says the same whatever it is told. */
    static class Stubborn implements Contender {
        private final Guess guess;
        private final Choice choice;

        Stubborn(Guess guess, Choice choice) {
            this.guess = guess;
            this.choice = choice;
        }

        @Override
        public String name() {
            return "stubborn";
        }

        @Override
        public List<Guess> guesses(PairName pair, List<TrialReading> trials, double[] percents) {
            return Collections.nCopies(percents.length, guess);
        }

        @Override
        public Choice choose(List<List<TrialReading>> spots) {
            return choice;
        }
    }

    static ContenderFactory factory(String name, Supplier<Contender> maker) {
        return new ContenderFactory() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public Contender trainedOn(OpenMeasurements training) {
                return maker.get();
            }
        };
    }
}
