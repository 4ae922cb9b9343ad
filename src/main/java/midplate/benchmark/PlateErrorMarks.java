package midplate.benchmark;

import java.util.List;
import java.util.Locale;
import midplate.inference.Series;
import midplate.plate.Setting;

/**
 * Marks advice on plates that are moved as a whole, for each setting and size of the error: {@code plates.possible.hit}, the
 * share of hits among samples that some ratio suits when nothing is moved; over all samples {@code plates.all.said}, {@code
 * plates.all.hit} and {@code plates.all.said-less-came}, the chance said less 1 for a hit and 0 for none. Sample, trial ratio
 * and z are the same for every setting and size.
 */
final class PlateErrorMarks {
    private PlateErrorMarks() {}

    /** Under what name figures stand: {@code Midplate, bench, 0.03}. */
    static String name(String contender, Setting setting, double size) {
        return String.format(Locale.ROOT, "%s, %s, %.2f", contender, setting.id(), size);
    }

    /** Asks a contender in every setting; one that knows no settings is left out. */
    static void mark(PlateErrorTask task, Contender contender, Results results) {
        for (Setting setting : Setting.values()) {
            for (double size : PlateErrorTask.SIZES) {
                contender
                        .choose(task.trials(size), setting)
                        .ifPresent(choice -> mark(
                                task,
                                choice,
                                size,
                                results.samples(Results.Part.PLATE_ERROR, name(contender.name(), setting, size))));
            }
        }
    }

    private static void mark(PlateErrorTask task, Choice choice, double size, Samples samples) {
        List<Series> members = task.plate().members();
        double hit = task.hitAt(choice.percent(), size) ? 1 : 0;
        samples.add("plates.all.said", members, choice.chance());
        samples.add("plates.all.hit", members, hit);
        samples.add("plates.all.said-less-came", members, choice.chance() - hit);
        if (task.plate().possible()) {
            samples.add("plates.possible.hit", members, hit);
        }
    }
}
