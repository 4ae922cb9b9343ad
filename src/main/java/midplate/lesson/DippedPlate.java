package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import midplate.plate.PlateMeasurement;
import midplate.plate.PlateReading;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * A plate that stands in its eluent; heights from its lower edge, which stands on the jar's base.
 *
 * @param heightMm height of the plate [mm], above 0 to 1000
 * @param startMm height of the start line [mm]
 * @param levelMm height of the eluent's surface [mm], 0 or more and below the start line
 * @param stopMm height of the front at which it is taken out [mm], at least 5 mm above the start line
 */
public record DippedPlate(double heightMm, double startMm, double levelMm, double stopMm) {
    /** A plate of 70 mm, start line at 10 mm, eluent 5 mm deep, stopped at 62 mm. Common practice, no source. */
    public static final DippedPlate USUAL = new DippedPlate(70, 10, 5, 62);

    /** Refuses what is no plate. */
    public DippedPlate {
        List<Refusal> faults = faults(heightMm, startMm, levelMm, stopMm);
        if (!faults.isEmpty()) {
            throw faults.get(0);
        }
    }

    /** Everything that is wrong with the heights of a plate; their fields begin with {@code plate}. */
    public static List<Refusal> faults(double heightMm, double startMm, double levelMm, double stopMm) {
        PlateMeasurement lines = new PlateMeasurement(
                heightMm, startMm, stopMm, OptionalDouble.empty(), OptionalDouble.of(levelMm), List.of());
        List<Refusal> faults = new ArrayList<>();
        for (Refusal refusal : PlateReading.faults(lines)) {
            String field = refusal.field()
                    .replace("plate.frontMm", "plate.stopMm")
                    .replace("plate.solventLevelMm", "plate.levelMm");
            faults.add(new Refusal(field, refusal.reason(), refusal.came(), refusal.allowed(), refusal.todo()));
        }
        if (faults.isEmpty() && !(levelMm < startMm)) {
            faults.add(new Refusal(
                    "plate.levelMm",
                    Message.of("lesson.climb-in-pool", "levelMm", levelMm, "startMm", startMm),
                    Double.toString(levelMm),
                    Allowed.mm(Allowed.rightOpen("0", Allowed.number(startMm))),
                    Message.of("todo.keep-spots-dry")));
        }
        return faults;
    }
}
