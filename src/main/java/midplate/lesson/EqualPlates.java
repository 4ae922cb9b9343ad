package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.advice.Consultation;
import midplate.advice.Curves;
import midplate.catalogue.LocalizationClass;
import midplate.catalogue.PairBasis;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.PairModel;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * The same sample in another pair, each mixture beside the one of equal published strength.
 *
 * @param eluent the other pair
 * @param basis what its model rests on
 * @param strength its published strengths
 * @param percentStrong shares of the pair asked about [% v/v]
 * @param equal the equally strong share of the other pair at each [% v/v]; empty where it has none
 * @param curves what the other pair does at its own shares
 * @param partings how each two compounds part there
 * @param lowest the least share that the other pair's model holds [% v/v]
 * @param highest the largest [% v/v]
 */
public record EqualPlates(
        SeriesQuestion.Eluent eluent,
        PairBasis basis,
        PublishedStrength.Reach strength,
        List<Double> percentStrong,
        List<Optional<Double>> equal,
        Curves curves,
        List<Parting> partings,
        double lowest,
        double highest) {
    /** Every so many of the possible samples is counted with every so many of the other pair's. */
    private static final int EACH = 4;

    /** Keeps its own copies. */
    public EqualPlates {
        percentStrong = List.copyOf(percentStrong);
        equal = List.copyOf(equal);
        partings = List.copyOf(partings);
    }

    /**
     * How two compounds part in the other pair.
     *
     * @param one a compound, counted from 0
     * @param other another one
     * @param wider at each share the chance that they lie wider apart there than here [1], what is possible in one pair joined with all that is
     *     possible in the other; empty where the other pair is equally strong at no share
     */
    public record Parting(int one, int other, List<Optional<Double>> wider) {
        /** Keeps its own copy. */
        public Parting {
            wider = List.copyOf(wider);
        }
    }

    /**
     * Sets a pair beside another.
     *
     * @param here what is possible in the pair asked about
     * @param strength of that pair
     * @param percents its shares [% v/v]
     */
    static EqualPlates of(
            LessonModel model,
            LessonSample sample,
            SeriesQuestion.Eluent eluent,
            PlateClouds here,
            Optional<PublishedStrength> strength,
            List<Double> percents) {
        if (eluent.weak().equals(sample.weak()) && eluent.strong().equals(sample.strong())) {
            throw new Refusal(
                    "against.strong",
                    Message.of("lesson.series-same-pair"),
                    eluent.weak().id() + " with " + eluent.strong().id(),
                    Message.of("allowed.other-series-pair"),
                    Message.of("todo.take-other-series-pair"));
        }
        Consultation there = consult(model, sample, eluent);
        PairModel pair = there.knowledge().model();
        Optional<PublishedStrength> theirs =
                PublishedStrength.of(model.catalogue(), sample.sorbent(), eluent.weak(), eluent.strong());
        if (strength.isEmpty() || theirs.isEmpty()) {
            throw new Refusal(
                    strength.isEmpty() ? "strong" : "against.strong",
                    Message.of("fault.strength-unknown"),
                    strength.isEmpty()
                            ? sample.strong().name()
                            : eluent.strong().name(),
                    Message.of("allowed.known-strength"),
                    Message.of("todo.take-other-series-pair"));
        }
        List<Optional<Double>> equal = percents.stream()
                .map(percent -> equal(strength.get().at(percent), theirs.get(), pair))
                .toList();
        if (equal.stream().allMatch(Optional::isEmpty)) {
            throw apart(strength.get(), theirs.get(), pair, eluent);
        }
        PlateClouds possible = PlateClouds.of(there.knowledge());
        return new EqualPlates(
                eluent,
                there.advice().basis(),
                reach(theirs.get(), pair),
                percents,
                equal,
                PlateSeries.curves(there),
                partings(sample, here, possible, percents, equal),
                pair.lowestPercent(),
                pair.highestPercent());
    }

    /** By which values the two are equally strong, what the other pair rests on, and whether the order should stay. */
    public List<Message> sentences(SolventCatalogue catalogue, LessonSample sample) {
        Message one = sample.strong().said();
        Message other = eluent.strong().said();
        LocalizationClass mine =
                catalogue.localization(PublishedStrength.known(catalogue, sample.sorbent(), sample.strong()));
        LocalizationClass theirs =
                catalogue.localization(PublishedStrength.known(catalogue, sample.sorbent(), eluent.strong()));
        List<Message> said = new ArrayList<>();
        said.add(Message.of(
                "lesson.series-equal-by",
                "series",
                PublishedStrength.printed(sample.sorbent()),
                "activity",
                PublishedStrength.theory().activity(),
                "low",
                strength.low(),
                "high",
                strength.high(),
                "strong",
                other));
        said.add(Message.of(
                "lesson.series-other-" + basis.id(), "weak", eluent.weak().said(), "strong", other));
        if (mine == LocalizationClass.UNKNOWN || theirs == LocalizationClass.UNKNOWN) {
            said.add(Message.of("lesson.series-hold-unknown", "one", one, "other", other));
        } else if (!one.equals(other)) {
            String key = mine == theirs ? "lesson.series-hold-alike" : "lesson.series-hold-otherwise";
            said.add(Message.of(key, "one", one, "other", other));
        }
        return said;
    }

    private static Consultation consult(LessonModel model, LessonSample sample, SeriesQuestion.Eluent eluent) {
        try {
            return model.consult(new LessonSample(
                    sample.compounds(), sample.sorbent(), eluent.weak(), eluent.strong(), sample.setting()));
        } catch (Refusal refusal) {
            throw new Refusal(
                    "against." + refusal.field(), refusal.reason(), refusal.came(), refusal.allowed(), refusal.todo());
        }
    }

    private static Optional<Double> equal(double strength, PublishedStrength theirs, PairModel pair) {
        return theirs.percentFor(strength)
                .filter(percent -> percent >= pair.lowestPercent() && percent <= pair.highestPercent());
    }

    private static PublishedStrength.Reach reach(PublishedStrength strength, PairModel pair) {
        return new PublishedStrength.Reach(strength.at(pair.lowestPercent()), strength.at(pair.highestPercent()));
    }

    private static Refusal apart(
            PublishedStrength ours, PublishedStrength theirs, PairModel pair, SeriesQuestion.Eluent eluent) {
        PublishedStrength.Reach reach = reach(theirs, pair);
        return new Refusal(
                "against.strong",
                Message.of(
                        "lesson.series-strength-apart",
                        "weak",
                        eluent.weak().said(),
                        "strong",
                        eluent.strong().said(),
                        "low",
                        reach.low(),
                        "high",
                        reach.high()),
                eluent.weak().id() + " with " + eluent.strong().id(),
                Message.of(
                        "allowed.series-strength",
                        "interval",
                        Allowed.closed(
                                twoDecimals(ours.weak().strength()),
                                twoDecimals(ours.strong().strength()))),
                Message.of("todo.take-other-series-pair"));
    }

    private static double twoDecimals(double strength) {
        return Math.round(100 * strength) / 100.0;
    }

    private static List<Parting> partings(
            LessonSample sample,
            PlateClouds here,
            PlateClouds there,
            List<Double> percents,
            List<Optional<Double>> equal) {
        List<double[][]> mine = new ArrayList<>();
        List<Optional<double[][]>> theirs = new ArrayList<>();
        for (int i = 0; i < percents.size(); i++) {
            int spots = sample.compounds().size();
            mine.add(rf(here, spots, percents.get(i)));
            theirs.add(equal.get(i).map(percent -> rf(there, spots, percent)));
        }
        List<Parting> partings = new ArrayList<>();
        for (int one = 0; one < sample.compounds().size(); one++) {
            for (int other = one + 1; other < sample.compounds().size(); other++) {
                List<Optional<Double>> wider = new ArrayList<>();
                for (int i = 0; i < percents.size(); i++) {
                    double[] gaps = gaps(mine.get(i), one, other);
                    int first = one;
                    int second = other;
                    wider.add(theirs.get(i).map(rf -> wider(gaps, gaps(rf, first, second))));
                }
                partings.add(new Parting(one, other, wider));
            }
        }
        return partings;
    }

    /** Rf [1] by spot, then by the samples that are counted. */
    private static double[][] rf(PlateClouds clouds, int spots, double percent) {
        double[][] rf = new double[spots][clouds.samples() / EACH];
        for (int spot = 0; spot < spots; spot++) {
            for (int i = 0; i < rf[spot].length; i++) {
                rf[spot][i] = clouds.rf(i * EACH, spot, percent);
            }
        }
        return rf;
    }

    private static double[] gaps(double[][] rf, int one, int other) {
        double[] gaps = new double[rf[one].length];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = Math.abs(rf[one][i] - rf[other][i]);
        }
        return gaps;
    }

    private static double wider(double[] here, double[] there) {
        int count = 0;
        for (double mine : here) {
            for (double theirs : there) {
                count += theirs > mine ? 1 : 0;
            }
        }
        return (double) count / (here.length * there.length);
    }
}
