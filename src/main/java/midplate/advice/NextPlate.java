package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import midplate.plate.PlateMeasurement;
import midplate.plate.PlateReading;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * The jar and the plate that will be used next; heights from the plate's lower edge.
 *
 * @param jarDiameterMm inner diameter of the jar [mm], in (10, 300]
 * @param heightMm height of the plate [mm]
 * @param startMm height of the start line [mm]
 * @param frontMm height at which the plate is to be taken out [mm], at least 5 mm above the start line
 */
public record NextPlate(double jarDiameterMm, double heightMm, double startMm, double frontMm) {
    /** A jar of 50 mm; a plate of 70 mm, start line at 10 mm, front at 62 mm. Common practice, no source. */
    public static final NextPlate USUAL = new NextPlate(50, 70, 10, 62);

    private static final double NARROWEST_MM = 10;
    private static final double WIDEST_MM = 300;

    /** Refuses what is no jar or no plate. */
    public NextPlate {
        List<Refusal> faults = faults(jarDiameterMm, heightMm, startMm, frontMm);
        if (!faults.isEmpty()) {
            throw faults.get(0);
        }
    }

    /** Everything that is wrong with a jar and the lines of a plate; their fields begin with {@code nextPlate}. */
    public static List<Refusal> faults(double jarDiameterMm, double heightMm, double startMm, double frontMm) {
        List<Refusal> faults = new ArrayList<>();
        if (!(jarDiameterMm > NARROWEST_MM && jarDiameterMm <= WIDEST_MM)) {
            faults.add(new Refusal(
                    "nextPlate.jarDiameterMm",
                    Message.of("advice.jar-out-of-range", "diameterMm", jarDiameterMm),
                    Double.toString(jarDiameterMm),
                    Allowed.mm(Allowed.leftOpen(Allowed.number(NARROWEST_MM), Allowed.number(WIDEST_MM))),
                    Message.of("todo.measure-jar")));
        }
        PlateMeasurement lines = new PlateMeasurement(
                heightMm, startMm, frontMm, OptionalDouble.empty(), OptionalDouble.empty(), List.of());
        for (Refusal refusal : PlateReading.faults(lines)) {
            faults.add(new Refusal(
                    "nextPlate." + refusal.field(),
                    refusal.reason(),
                    refusal.came(),
                    refusal.allowed(),
                    refusal.todo()));
        }
        return faults;
    }

    /** The inner area of the jar's base [mm²]. */
    double baseMm2() {
        return Math.PI / 4 * jarDiameterMm * jarDiameterMm;
    }
}
