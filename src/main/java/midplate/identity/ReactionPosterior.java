package midplate.identity;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** What the grades on two or more plates leave of the courses that a reaction may take. */
final class ReactionPosterior {
    /** More than this of the starting material [1] is some, whether this eye sees it or not. */
    static final double NONE_LEFT = 0.06;

    /** A product that once stood this much above what there is now falls; somewhat more than half a grade. */
    private static final double FALLEN = 1.8;
    /** A product that does not show is missed when no more than this is left of the starting material. */
    private static final double MUCH_GONE = 0.4;

    private static final int DRAWS = 300;
    private static final double GOLDEN = 0.6180339887498949;

    private final List<StartHypothesis> hypotheses;
    private final double[] weights;
    private final Map<String, FormedFit> fits;
    private final Optional<FormedFit> product;
    private final ReactionMesh mesh;

    private ReactionPosterior(
            List<StartHypothesis> hypotheses,
            double[] weights,
            Map<String, FormedFit> fits,
            Optional<FormedFit> product,
            ReactionMesh mesh) {
        this.hypotheses = hypotheses;
        this.weights = weights;
        this.fits = fits;
        this.product = product;
        this.mesh = mesh;
    }

    /** Of a reaction with at least two plates, judged by this starting material. */
    static ReactionPosterior of(ReactionQuestion question, ReactionSpecies start) {
        List<ReactionPlate> plates = question.plates();
        double first = plates.stream()
                .mapToDouble(ReactionPlate::minutes)
                .filter(minutes -> minutes > 0)
                .min()
                .orElseThrow();
        List<StartHypothesis> hypotheses = StartHypothesis.after(
                StartCourses.between(first, question.lastMinutes(), question.expectedMinutes()), plates, start.name());
        Map<String, FormedFit> fits = new LinkedHashMap<>();
        for (ReactionSpecies species : question.species()) {
            Function<ReactionPlate, OptionalInt> grade = plate -> plate.grade(species.name());
            if (species.part() != SpeciesPart.START
                    && plates.stream().anyMatch(plate -> grade.apply(plate).isPresent())) {
                fits.put(species.name(), FormedFit.of(species.part(), hypotheses, plates, grade));
            }
        }
        Optional<FormedFit> product =
                question.first(SpeciesPart.PRODUCT).flatMap(species -> Optional.ofNullable(fits.get(species.name())));
        return new ReactionPosterior(hypotheses, weights(hypotheses, fits), fits, product, ReactionMesh.of(plates));
    }

    /** Of another starting material by itself. */
    static ReactionPosterior ofStartAlone(ReactionQuestion question, ReactionSpecies start) {
        return of(
                new ReactionQuestion(List.of(start), question.plates(), question.eluent(), question.expectedMinutes()),
                start);
    }

    private static double[] weights(List<StartHypothesis> hypotheses, Map<String, FormedFit> fits) {
        double[] logs = new double[hypotheses.size()];
        double best = Double.NEGATIVE_INFINITY;
        for (int h = 0; h < logs.length; h++) {
            logs[h] = hypotheses.get(h).logWeight();
            for (FormedFit fit : fits.values()) {
                logs[h] += fit.logTotal(h);
            }
            best = Math.max(best, logs[h]);
        }
        double sum = 0;
        for (int h = 0; h < logs.length; h++) {
            logs[h] = Math.exp(logs[h] - best);
            sum += logs[h];
        }
        for (int h = 0; h < logs.length; h++) {
            logs[h] /= sum;
        }
        return logs;
    }

    /** The chance of each state but "not told" at the latest plate. */
    Map<ReactionState, Double> chances() {
        Map<ReactionState, Double> chances = new EnumMap<>(ReactionState.class);
        for (ReactionState state : ReactionState.values()) {
            if (state != ReactionState.NOT_TOLD) {
                chances.put(state, 0.0);
            }
        }
        for (int h = 0; h < weights.length; h++) {
            double wrong = gone(h);
            chances.merge(ReactionState.GONE_WRONG, weights[h] * wrong, Double::sum);
            chances.merge(state(hypotheses.get(h)), weights[h] * (1 - wrong), Double::sum);
        }
        return chances;
    }

    private ReactionState state(StartHypothesis hypothesis) {
        StartCourse course = hypothesis.course();
        if (course.left(mesh.last()) < none(hypothesis.logFactor())) {
            return ReactionState.FINISHED;
        }
        return course.isAtRest(mesh.last()) ? ReactionState.STALLED : ReactionState.RUNNING;
    }

    /** Less than this of the starting material is none [1]: this eye sees no spot of it, and there is little in any case. */
    static double none(double logFactor) {
        return Math.min(NONE_LEFT, Math.exp((0.5 - ReactionMark.FULL) * logFactor));
    }

    /** Chance under a hypothesis that the product is lost again, or does not show where it should. */
    private double gone(int hypothesis) {
        if (product.isEmpty()) {
            return 0;
        }
        StartCourse start = hypotheses.get(hypothesis).course();
        FormedCourse[] courses = product.get().courses();
        double[] chances = product.get().chances(hypothesis);
        boolean muchGone = start.left(mesh.last()) < MUCH_GONE;
        double gone = 0;
        boolean falls = false;
        for (int c = 0; c < courses.length; c++) {
            if (c == 0 || courses[c].loss() != courses[c - 1].loss()) {
                falls = courses[c].loss() > 0 && falls(start, courses[c].loss());
            }
            if (courses[c].isNothing() ? muchGone : falls) {
                gone += chances[c];
            }
        }
        return gone;
    }

    private boolean falls(StartCourse start, double loss) {
        double most = 0;
        double[] amounts = FormedCourse.amounts(start, mesh.minutes(), loss / mesh.last());
        for (double amount : amounts) {
            most = Math.max(most, amount);
        }
        return most > FALLEN * amounts[amounts.length - 1];
    }

    /** Courses of the whole reaction, each as likely as every other; always the same for the same plates. */
    List<ReactionDraw> draws() {
        List<ReactionDraw> draws = new ArrayList<>();
        double sum = 0;
        int h = -1;
        for (int i = 0; i < DRAWS; i++) {
            double place = (i + 0.5) / DRAWS;
            while (sum < place && h + 1 < weights.length) {
                h++;
                sum += weights[h];
            }
            Map<String, FormedCourse> formed = new LinkedHashMap<>();
            int number = 1;
            for (Map.Entry<String, FormedFit> fit : fits.entrySet()) {
                double turn = i * GOLDEN * number++;
                formed.put(fit.getKey(), fit.getValue().at(h, turn - Math.floor(turn)));
            }
            draws.add(new ReactionDraw(
                    hypotheses.get(h).course(), hypotheses.get(h).logFactor(), formed, mesh.last()));
        }
        return draws;
    }
}
