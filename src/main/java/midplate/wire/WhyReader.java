package midplate.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.SolventCatalogue;
import midplate.lesson.LessonSample;

/** Reads of what the surface is to be shown. */
final class WhyReader {
    static final String PERCENTS = "percents";
    static final List<String> FIELDS = LessonSampleReader.fieldsWith(ClimbReader.PERCENT, PERCENTS);

    /** A page that follows a slider needs no more. */
    static final int MOST_PERCENTS = 101;

    private final LessonSampleReader samples;
    private final FaultList faults;

    WhyReader(SolventCatalogue catalogue, Compounds compounds, FaultList faults) {
        this.samples = new LessonSampleReader(catalogue, compounds, faults);
        this.faults = faults;
    }

    /**
     * What is asked, read without a fault.
     *
     * @param sample what runs in what
     * @param percentStrong share of the strong solvent [% v/v]
     * @param percents at which others [% v/v]
     */
    record Asked(LessonSample sample, double percentStrong, List<Double> percents) {
        Asked {
            percents = List.copyOf(percents);
        }
    }

    /**
     * The request.
     *
     * @throws BadInput with all faults
     */
    Asked read(JsonFields fields) {
        Optional<LessonSample> sample = samples.read(fields);
        OptionalDouble percent = ClimbReader.percent(fields);
        List<Double> percents = new ArrayList<>();
        fields.items(PERCENTS, MOST_PERCENTS).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                JsonFields.percent(fields.path(PERCENTS + "[" + i + "]"), list.get(i), faults)
                        .ifPresent(percents::add);
            }
        });
        faults.throwIfAny();
        return new Asked(sample.orElseThrow(), percent.orElseThrow(), percents);
    }
}
