package midplate.identity;

import java.util.List;
import midplate.plate.Reading;

/**
 * A spot as read in one lane, or in several lanes of the same content.
 *
 * @param mm its height above the start line [mm]
 * @param runMm the run of its plate [mm]
 * @param sizeMm its length [mm], measured or usual
 * @param shape what it looks like
 * @param size whether its length was measured
 * @param variance of its height [mm²]
 */
record ReadSpot(double mm, double runMm, double sizeMm, SpotShape shape, Size size, double variance) {
    /** Whether the length of a spot was measured. */
    enum Size {
        MEASURED,
        USUAL
    }

    /** Where a spot lies on its plate. */
    enum Place {
        START,
        BETWEEN,
        FRONT
    }

    static ReadSpot of(LaneSpot spot, ComparedPlate plate) {
        double run = runMm(plate);
        double mm = spot.centreMm().isPresent()
                ? spot.centreMm().getAsDouble() - plate.startMm().orElse(0)
                : spot.rf().orElseThrow() * run;
        double size = spot.sizeMm().orElse(PlateComparison.USUAL_SIZE_MM);
        Size measured = spot.sizeMm().isPresent() ? Size.MEASURED : Size.USUAL;
        return new ReadSpot(mm, run, size, spot.shape(), measured, PlateComparison.variance(size, spot.shape(), run));
    }

    static double runMm(ComparedPlate plate) {
        return plate.startMm().isPresent() && plate.frontMm().isPresent()
                ? plate.frontMm().getAsDouble() - plate.startMm().getAsDouble()
                : PlateComparison.USUAL_RUN_MM;
    }

    /** The same spot seen in lanes of one content: the mean. */
    static ReadSpot mean(List<ReadSpot> seen) {
        int n = seen.size();
        double mm = seen.stream().mapToDouble(ReadSpot::mm).sum() / n;
        double size = seen.stream().mapToDouble(ReadSpot::sizeMm).sum() / n;
        double variance = seen.stream().mapToDouble(ReadSpot::variance).sum() / (n * n);
        boolean streak = seen.stream().anyMatch(each -> each.shape() == SpotShape.STREAK);
        boolean measured = seen.stream().allMatch(each -> each.size() == Size.MEASURED);
        return new ReadSpot(
                mm,
                seen.get(0).runMm(),
                size,
                streak ? SpotShape.STREAK : SpotShape.ROUND,
                measured ? Size.MEASURED : Size.USUAL,
                variance);
    }

    double rf() {
        return Math.min(1, Math.max(0, mm / runMm));
    }

    Place place() {
        double rf = mm / runMm;
        return rf <= Reading.AT_START_RF ? Place.START : rf >= Reading.AT_FRONT_RF ? Place.FRONT : Place.BETWEEN;
    }

    /** Its height, or the bound of it that is nearer to the middle, where it sits at a line [mm]. */
    double boundMm() {
        return switch (place()) {
            case START -> Reading.AT_START_RF * runMm;
            case FRONT -> Reading.AT_FRONT_RF * runMm;
            case BETWEEN -> mm;
        };
    }

    double distance(ReadSpot other) {
        return Math.abs(mm - other.mm);
    }

    boolean isOverloaded() {
        return size == Size.MEASURED && sizeMm > PlateComparison.OVERLOADED * runMm;
    }
}
