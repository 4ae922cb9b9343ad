package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import midplate.chemistry.GroupCounts;

/** Slips whose direction and size are an own rough choice, to show what they look like: nothing here was measured. */
final class IllustratedSlips {
    /** A spot grows so much each time the amount doubles [mm]. */
    static final double GROWN_MM = 2;

    /** Where the smear of the ink has its middle [Rf]. */
    static final double INK_RF = 0.5;

    private static final List<String> ACIDS =
            List.of("carboxylic-acid", "sulfonic-acid", "phosphonic-acid", "boronic-acid");

    private static final double WHOLE = 100;

    private IllustratedSlips() {}

    static SlipPlates of(SlipCase slip) {
        return SlipPlates.noted(
                slip,
                switch (slip.question().slip()) {
                    case OVERLOAD -> overload(slip);
                    case UNLINED_JAR -> unlined(slip);
                    case INK_LINE -> ink(slip);
                    default -> streaking(slip);
                });
    }

    /** A spot of n times the amount is 2 mm·log₂ n longer, all of it upwards: the middle lies half of that higher, at most at the front. */
    private static SeenPlate overload(SlipCase slip) {
        double longer = GROWN_MM * Math.log(slip.size()) / Math.log(2);
        SeenPlate plain = slip.right();
        List<SeenSpot> spots = new ArrayList<>();
        for (SeenSpot spot : plain.spots()) {
            SeenSpot larger =
                    spot.at(Math.min(plain.frontMm(), spot.mm() + longer / 2)).along(spot.alongMm() + longer);
            spots.add(longer > 0 ? larger.looking(SeenSpot.Look.STREAK, 1) : spot);
        }
        return plain.showing(spots);
    }

    /** What evaporates off the plate runs after: spots go as if the run were so much longer, and the front does not. */
    private static SeenPlate unlined(SlipCase slip) {
        double start = slip.plate().startMm();
        double front = slip.plate().frontMm();
        return slip.running(
                start, start + (1 + slip.size() / WHOLE) * slip.plate().runMm(), front);
    }

    /** The ink makes a smear about the middle of the run; spots with their middle in it cannot be read. */
    private static SeenPlate ink(SlipCase slip) {
        SeenPlate plain = slip.right();
        double middle = slip.plate().at(INK_RF);
        double low = middle - slip.size() / 2;
        double high = middle + slip.size() / 2;
        List<SeenSpot> spots = new ArrayList<>();
        for (SeenSpot spot : plain.spots()) {
            boolean covered = slip.size() > 0 && spot.mm() >= low && spot.mm() <= high;
            spots.add(covered ? spot.looking(SeenSpot.Look.LOST, 1) : spot);
        }
        return new SeenPlate(
                plain.percentStrong(),
                plain.startMm(),
                plain.originMm(),
                plain.frontMm(),
                plain.surfaceMm(),
                slip.size() > 0 ? List.of(low, high) : List.of(),
                spots);
    }

    /**
     * Each acid trails down from its place by so many hundredths of its way from the start line, and its middle is taken midway. In a sample
     * without an acid the lowest spot stands for one.
     */
    private static SeenPlate streaking(SlipCase slip) {
        SeenPlate plain = slip.right();
        List<SeenSpot> spots = new ArrayList<>();
        for (int i = 0; i < plain.spots().size(); i++) {
            SeenSpot spot = plain.spots().get(i);
            double trail = slip.size() / WHOLE * Math.max(0, spot.mm() - plain.startMm());
            SeenSpot streak = spot.at(spot.mm() - trail / 2).along(spot.alongMm() + trail);
            spots.add(streaks(slip, i) && trail > 0 ? streak.looking(SeenSpot.Look.STREAK, 1) : spot);
        }
        return plain.showing(spots);
    }

    private static boolean streaks(SlipCase slip, int spot) {
        List<LessonCompound> compounds = slip.question().sample().compounds();
        if (compounds.stream().anyMatch(each -> isAcid(each.counts()))) {
            return isAcid(compounds.get(spot).counts());
        }
        double lowest = slip.rf().stream().mapToDouble(rf -> rf).min().orElseThrow();
        return slip.rf().indexOf(lowest) == spot;
    }

    static boolean isAcid(GroupCounts counts) {
        return ACIDS.stream().anyMatch(counts.counts()::containsKey);
    }
}
