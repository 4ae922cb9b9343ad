package midplate.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Sorbent;
import midplate.lesson.LessonSample;
import midplate.lesson.SeriesQuestion;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads what is asked of a series of plates. */
final class SeriesReader {
    static final String PERCENTS = "percents";
    static final String AGAINST = "against";
    static final String OTHER_LAYER = "otherLayer";
    static final List<String> FIELDS = LessonSampleReader.fieldsWith(PERCENTS, AGAINST, OTHER_LAYER);
    static final List<String> AGAINST_FIELDS = List.of("weak", "strong");
    /** The layers that may be set beside that of the lesson. */
    static final List<String> OTHER_LAYERS = List.of(Sorbent.ALUMINA.id());

    private final LessonSampleReader samples;
    private final PairReader pairs;
    private final FaultList faults;

    SeriesReader(SolventCatalogue catalogue, Compounds compounds, FaultList faults) {
        this.samples = new LessonSampleReader(catalogue, compounds, faults);
        this.pairs = new PairReader(catalogue, faults);
        this.faults = faults;
    }

    /**
     * The question.
     *
     * @throws BadInput with all faults
     */
    SeriesQuestion read(JsonFields request) {
        Optional<LessonSample> sample = samples.read(request);
        List<Double> percents = percents(request);
        Optional<SeriesQuestion.Eluent> against = request.any(AGAINST)
                .flatMap(value -> JsonFields.of(AGAINST, value, faults, AGAINST_FIELDS))
                .flatMap(fields ->
                        pairs.read(fields, sample.map(LessonSample::sorbent).orElse(Sorbent.SILICA)))
                .map(pair -> new SeriesQuestion.Eluent(pair.weak(), pair.strong()));
        Optional<Sorbent> layer = request.choice(OTHER_LAYER, OTHER_LAYERS).flatMap(Sorbent::byId);
        faults.throwIfAny();
        return new SeriesQuestion(sample.orElseThrow(), percents, against, layer);
    }

    /** Shares that rise; empty where they are left out, or where one is faulty. */
    private List<Double> percents(JsonFields request) {
        List<Double> read = new ArrayList<>();
        int before = faults.count();
        List<Json> items = request.items(PERCENTS, SeriesQuestion.MOST).orElse(List.of());
        for (int i = 0; i < items.size(); i++) {
            OptionalDouble percent = JsonFields.percent(request.path(PERCENTS + "[" + i + "]"), items.get(i), faults);
            percent.ifPresent(read::add);
        }
        if (faults.count() > before || !request.has(PERCENTS)) {
            return List.of();
        }
        if (read.size() < SeriesQuestion.FEWEST) {
            faults.add(
                    request.path(PERCENTS),
                    Message.of("fault.too-few-series-percents"),
                    Message.of("came.entries", "count", read.size()),
                    Message.of(
                            "allowed.entries", "interval", Allowed.closed(SeriesQuestion.FEWEST, SeriesQuestion.MOST)),
                    Message.of("todo.give-series-percents"));
        }
        for (int i = 1; i < read.size(); i++) {
            if (!(read.get(i) > read.get(i - 1))) {
                faults.add(
                        request.path(PERCENTS + "[" + i + "]"),
                        Message.of("fault.series-percent-falls"),
                        items.get(i).shown(),
                        Allowed.leftOpen(Allowed.number(read.get(i - 1)), "100"),
                        Message.of("todo.give-series-percents"));
            }
        }
        return read;
    }
}
