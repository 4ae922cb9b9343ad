package midplate.wire;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.SolventCatalogue;
import midplate.lesson.LessonSample;
import midplate.lesson.Slip;
import midplate.lesson.SlipPlate;
import midplate.lesson.SlipQuestion;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** Reads which slip is asked about; what is left out is as usual. */
final class SlipReader {
    static final List<String> PLATE_FIELDS = List.of("heightMm", "widthMm", "startMm", "frontMm");
    static final List<String> FIELDS = fields();

    /** Share of the strong solvent where none is given [% v/v]. */
    private static final double USUAL_PERCENT = 20;

    private final LessonSampleReader samples;
    private final FaultList faults;

    SlipReader(SolventCatalogue catalogue, Compounds compounds, FaultList faults) {
        this.samples = new LessonSampleReader(catalogue, compounds, faults);
        this.faults = faults;
    }

    private static List<String> fields() {
        List<String> own = new java.util.ArrayList<>(List.of("percentStrong", "plate", "slip"));
        own.addAll(Slip.FIELDS);
        return LessonSampleReader.fieldsWith(own.toArray(String[]::new));
    }

    /**
     * The question.
     *
     * @throws BadInput with all faults
     */
    SlipQuestion read(JsonFields request) {
        Optional<LessonSample> sample = samples.read(request);
        double percent = request.percent("percentStrong").orElse(USUAL_PERCENT);
        Optional<SlipPlate> plate = plate(request);
        Optional<Slip> slip = request.has("slip")
                ? request.choice("slip", Slip.ids()).flatMap(Slip::byId)
                : Optional.of(Slip.FROM_EDGE);
        slip.ifPresentOrElse(known -> sizesOfOthers(request, known), () -> Slip.FIELDS.forEach(request::number));
        Optional<Double> size = plate.isEmpty() || slip.isEmpty()
                ? Optional.empty()
                : Optional.of(size(request, plate.get(), slip.get()));
        faults.throwIfAny();
        return new SlipQuestion(
                sample.orElseThrow(), percent, plate.orElseThrow(), slip.orElseThrow(), size.orElseThrow());
    }

    private Optional<SlipPlate> plate(JsonFields request) {
        if (!request.has("plate")) {
            return Optional.of(SlipPlate.USUAL);
        }
        int before = faults.count();
        Optional<SlipPlate> plate = request.any("plate")
                .flatMap(value -> JsonFields.of(request.path("plate"), value, faults, PLATE_FIELDS))
                .map(fields -> new SlipPlate(
                        fields.number("heightMm").orElse(SlipPlate.USUAL.heightMm()),
                        fields.number("widthMm").orElse(SlipPlate.USUAL.widthMm()),
                        fields.number("startMm").orElse(SlipPlate.USUAL.startMm()),
                        fields.number("frontMm").orElse(SlipPlate.USUAL.frontMm())));
        if (faults.count() == before) {
            plate.ifPresent(read -> read.faults().forEach(this::tell));
        }
        return faults.count() > before ? Optional.empty() : plate;
    }

    private double size(JsonFields request, SlipPlate plate, Slip slip) {
        OptionalDouble came = request.number(slip.field());
        if (came.isPresent()) {
            SlipQuestion.faults(plate, slip, came.getAsDouble()).forEach(this::tell);
        }
        return came.orElse(slip.size(plate).usual());
    }

    private void tell(Refusal refusal) {
        faults.add(refusal.field(), refusal);
    }

    /** The size of another slip would be passed over in silence. */
    private void sizesOfOthers(JsonFields request, Slip slip) {
        for (String name : Slip.FIELDS) {
            if (request.has(name) && !name.equals(slip.field())) {
                faults.add(
                        request.path(name),
                        Message.of("fault.size-of-another-slip", "slip", slip.id()),
                        request.any(name).map(Json::shown).orElse(""),
                        Allowed.words(slip.field()),
                        Message.of("todo.leave-out"));
            }
        }
    }
}
