package midplate.photo;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Figures over pictures, with standard errors that count pictures and not spots, since those of one picture go together. */
final class Tally {
    /** The aim [Rf]. */
    static final double NEAR = 0.015;

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int RESAMPLES = 200;

    private final List<Judged> pictures;
    private final Predicate<Outcome> ofMarks;
    private final Predicate<Proposed> ofProposals;

    Tally(List<Judged> pictures, Predicate<Outcome> ofMarks, Predicate<Proposed> ofProposals) {
        this.pictures = pictures;
        this.ofMarks = ofMarks;
        this.ofProposals = ofProposals;
    }

    /** A share and its standard error. */
    record Share(double value, double error, long of) {
        double percent() {
            return 100 * value;
        }
    }

    private double marks(Judged picture, Predicate<Outcome> such) {
        return picture.outcomes().stream().filter(ofMarks).filter(such).count();
    }

    private double proposals(List<Proposed> proposals) {
        return proposals.stream().filter(ofProposals).count();
    }

    Share ofAll(Predicate<Outcome> such) {
        return share(picture -> marks(picture, such), picture -> marks(picture, any -> true));
    }

    Share ofFound(Predicate<Outcome> such) {
        Predicate<Outcome> found = outcome -> !outcome.isMissed();
        return share(picture -> marks(picture, found.and(such)), picture -> marks(picture, found));
    }

    Share extra() {
        return share(picture -> proposals(picture.extra()), picture -> proposals(picture.counted()));
    }

    private Share share(ToDoubleFunction<Judged> part, ToDoubleFunction<Judged> whole) {
        double parts = pictures.stream().mapToDouble(part).sum();
        double wholes = pictures.stream().mapToDouble(whole).sum();
        double share = parts / wholes;
        double squares = 0;
        int count = 0;
        for (Judged picture : pictures) {
            if (whole.applyAsDouble(picture) > 0) {
                double rest = part.applyAsDouble(picture) - share * whole.applyAsDouble(picture);
                squares += rest * rest;
                count++;
            }
        }
        double error = count < 2 ? Double.NaN : Math.sqrt(squares * count / (count - 1)) / wholes;
        return new Share(share, error, (long) wholes);
    }

    /** A quantile of |ΔRf| of the spots found, and its standard error by drawing pictures again. */
    private double[] quantile(double share) {
        double value = quantile(pictures, share);
        Random random = new Random(7);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < RESAMPLES; i++) {
            List<Judged> drawn = new ArrayList<>();
            for (int k = 0; k < pictures.size(); k++) {
                drawn.add(pictures.get(random.nextInt(pictures.size())));
            }
            double again = quantile(drawn, share);
            sum += again;
            squares += again * again;
        }
        double mean = sum / RESAMPLES;
        return new double[] {value, Math.sqrt(Math.max(0, squares / RESAMPLES - mean * mean))};
    }

    private double quantile(List<Judged> of, double share) {
        double[] off = of.stream()
                .flatMap(picture -> picture.outcomes().stream())
                .filter(ofMarks)
                .filter(outcome -> !outcome.isMissed())
                .mapToDouble(outcome -> Math.abs(outcome.offRf()))
                .toArray();
        Arrays.sort(off);
        return off.length == 0 ? Double.NaN : off[(int) Math.min(off.length - 1, Math.floor(share * off.length))];
    }

    long count() {
        return ofAll(any -> true).of();
    }

    long pictures() {
        return pictures.stream()
                .filter(picture -> marks(picture, any -> true) > 0)
                .count();
    }

    /** All figures. */
    ObjectNode told() {
        ObjectNode told = JSON.createObjectNode();
        told.put("spots", count()).put("pictures", pictures());
        put(told, "within", ofAll(outcome -> outcome.isWithin(NEAR)));
        put(told, "withinOfFound", ofFound(outcome -> outcome.isWithin(NEAR)));
        put(told, "missed", ofAll(Outcome::isMissed));
        put(told, "false", extra());
        put(told, "centreWithinTwoErrors", ofFound(Outcome::isWithinTwoErrors));
        put(told, "rfWithinTwoErrors", ofFound(Outcome::isRfWithinTwoErrors));
        put(told, "median", quantile(0.5));
        put(told, "most95", quantile(0.95));
        return told;
    }

    private static void put(ObjectNode told, String name, Share share) {
        put(told, name, new double[] {share.value(), share.error()});
    }

    private static void put(ObjectNode told, String name, double[] figure) {
        ObjectNode at = told.putObject(name);
        at.put("value", rounded(figure[0]));
        at.put("error", rounded(figure[1]));
    }

    private static @org.jspecify.annotations.Nullable Double rounded(double value) {
        return Double.isNaN(value) ? null : Math.round(value * 1e5) / 1e5;
    }
}
