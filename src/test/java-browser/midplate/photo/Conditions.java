package midplate.photo;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The rows of the figures: of what pictures and of what spots each is. */
final class Conditions {
    /** From what contrast on the aims are to hold. */
    static final double AIMED = 0.15;

    /**
     * A row.
     *
     * @param group what is told apart
     * @param name which of them
     * @param pictures of which pictures
     * @param marks of which spots
     * @param proposals of which proposals, as far as those that are false are counted
     */
    record Row(
            String group,
            String name,
            Predicate<Judged> pictures,
            Predicate<Outcome> marks,
            Predicate<Proposed> proposals) {
        Tally of(List<Judged> all) {
            return new Tally(all.stream().filter(pictures).toList(), marks, proposals);
        }
    }

    private final List<Row> rows = new ArrayList<>();

    private Conditions() {}

    static final Row AIM = new Row(
            "all",
            "contrast of 15 % and more",
            picture -> true,
            outcome -> outcome.mark().contrast() >= AIMED,
            proposal -> proposal.contrast() >= AIMED);

    static List<Row> all() {
        Conditions conditions = new Conditions();
        conditions.rows.add(AIM);
        conditions.rows.add(new Row(
                "all",
                "contrast of 8 to 15 %",
                picture -> true,
                outcome -> outcome.mark().contrast() < AIMED,
                proposal -> proposal.contrast() < AIMED));
        conditions.rows.add(new Row("all", "all", picture -> true, outcome -> true, proposal -> true));
        conditions.ofSpots();
        conditions.ofPictures();
        return List.copyOf(conditions.rows);
    }

    private void ofSpots() {
        double[] contrasts = {0.15, 0.3, 0.6, 1.01};
        String[] named = {"15 to 30 %", "30 to 60 %", "60 to 90 %"};
        for (int i = 0; i < named.length; i++) {
            double low = contrasts[i];
            double high = contrasts[i + 1];
            rows.add(new Row(
                    "contrast",
                    named[i],
                    picture -> true,
                    outcome ->
                            outcome.mark().contrast() >= low && outcome.mark().contrast() < high,
                    proposal -> proposal.contrast() >= low && proposal.contrast() < high));
        }
        double[] sizes = {0, 2, 4, 8, 99};
        String[] sized = {"below 2 mm", "2 to 4 mm", "4 to 8 mm", "above 8 mm"};
        for (int i = 0; i < sized.length; i++) {
            double low = sizes[i];
            double high = sizes[i + 1];
            spot(
                    "length",
                    sized[i],
                    mark -> mark.sizeMm() >= low && mark.sizeMm() < high,
                    proposal -> proposal.sizeMm() >= low && proposal.sizeMm() < high);
        }
        for (String form : List.of(
                "gauss", "disc", "ellipse", "flat", "crescent", "ring", "tail", "sharp_head", "streak", "merged")) {
            spot("form", form, mark -> mark.form().equals(form), proposal -> false);
        }
        spot("place", "within 2 mm of the start line", Conditions::isAtStart, proposal -> false);
        spot("place", "Rf above 0.95", mark -> mark.rf() > 0.95, proposal -> proposal.rf() > 0.95);
        spot("place", "between them", mark -> !isAtStart(mark) && mark.rf() <= 0.95, proposal -> false);
    }

    private static boolean isAtStart(Mark mark) {
        return mark.rf() < 0.04;
    }

    private void spot(String group, String name, Predicate<Mark> marks, Predicate<Proposed> proposals) {
        rows.add(new Row(
                group,
                name,
                picture -> true,
                outcome -> AIM.marks().test(outcome) && marks.test(outcome.mark()),
                proposal -> AIM.proposals().test(proposal) && proposals.test(proposal)));
    }

    private void picture(String group, String name, Predicate<JsonNode> such) {
        rows.add(new Row(group, name, picture -> such.test(picture.conditions()), AIM.marks(), AIM.proposals()));
    }

    private void bins(String group, String field, double[] edges, String... names) {
        for (int i = 0; i < names.length; i++) {
            double low = i == 0 ? -1 : edges[i - 1];
            double high = i == edges.length ? 1e9 : edges[i];
            picture(group, names[i], conditions -> {
                double value = conditions.get(field).asDouble();
                return value >= low && value < high;
            });
        }
    }

    private void words(String group, String field, String... words) {
        for (String word : words) {
            picture(
                    group,
                    word.replace('_', ' '),
                    conditions -> conditions.get(field).asText().equals(word));
        }
    }

    private void ofPictures() {
        words("ground", "ground", "green", "white", "cream", "permanganate", "anisaldehyde");
        bins("turned by", "tiltDegrees", new double[] {5, 10}, "below 5°", "5 to 10°", "10 to 15°");
        bins("leaning by", "perspectiveDegrees", new double[] {5, 10}, "below 5°", "5 to 10°", "above 10°");
        bins("light across the plate", "lightRatio", new double[] {1.4, 2}, "below 1 : 1.4", "to 1 : 2", "to 1 : 3");
        words("glare", "glare", "false", "true");
        words("shadow", "shadow", "false", "true");
        bins("JPEG quality", "jpegQuality", new double[] {70, 83}, "60 to 69", "70 to 82", "83 to 95");
        bins("noise over 0.5 mm", "noise", new double[] {0.005, 0.01}, "below 0.5 %", "0.5 to 1 %", "above 1 %");
        bins("blur", "blurMm", new double[] {0.06, 0.1}, "below 0.06 mm", "to 0.1 mm", "above 0.1 mm");
        bins("front curved by", "curvedMm", new double[] {0.4, 1.2}, "below 0.4 mm", "to 1.2 mm", "to 2.5 mm");
        bins("lane drift", "driftMm", new double[] {0.4, 0.9}, "below 0.4 mm", "to 0.9 mm", "to 1.5 mm");
        words("front", "front", "drawn", "wet_edge", "not");
        words("circles", "circles", "false", "true");
    }
}
