package midplate.lesson;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import midplate.advice.Advice;
import midplate.advice.Consultation;
import midplate.advice.Curves;
import midplate.advice.Forecast;
import midplate.advice.SpotForecast;
import midplate.inference.PairModel;
import midplate.words.Message;

/**
 * A sample on plates side by side, from a weak eluent to a strong one, with the model that advises: why polarity moves spots.
 *
 * @param sample what runs in what
 * @param advice what the adviser says of it, before any plate
 * @param curves what happens at every share that the model of the pair holds
 * @param plates the plates of the series, weak to strong
 * @param grid shares of the clouds and of what is set beside them [% v/v], coarser than the curves
 * @param clouds what is possible
 * @param against the same in another pair at equal published strength, where it was asked for
 * @param otherLayer the same on another layer by theory, where it was asked for
 * @param sentences what to see
 * @param changed what changed on each plate from the one before; nothing on the first
 */
public record PlateSeries(
        LessonSample sample,
        Advice advice,
        Curves curves,
        List<SeriesPlate> plates,
        List<Double> grid,
        PlateClouds clouds,
        Optional<EqualPlates> against,
        Optional<OtherLayer> otherLayer,
        List<Message> sentences,
        List<List<Message>> changed) {
    /** Keeps its own copies. */
    public PlateSeries {
        plates = List.copyOf(plates);
        grid = List.copyOf(grid);
        sentences = List.copyOf(sentences);
        changed = List.copyOf(changed);
    }

    /**
     * The series that was asked for.
     *
     * @throws midplate.words.Refusal for two solvents of which there is no model, a share that it does not hold, another pair that is
     *     equally strong at no share, and a layer for which the strengths are not published
     */
    public static PlateSeries of(LessonModel model, SeriesQuestion question) {
        LessonSample sample = question.sample();
        Consultation consultation = model.consult(sample);
        PairModel pair = consultation.knowledge().model();
        Optional<PublishedStrength> strength =
                PublishedStrength.of(model.catalogue(), sample.sorbent(), sample.weak(), sample.strong());
        List<SeriesPlate> plates = consultation.at(SeriesShares.of(question.percents(), pair)).stream()
                .map(forecast -> SeriesPlate.of(forecast, strength))
                .toList();
        List<Double> grid = SeriesShares.coarse(pair);
        PlateClouds clouds = PlateClouds.of(consultation.knowledge());
        Curves curves = curves(consultation);
        Optional<EqualPlates> against =
                question.against().map(other -> EqualPlates.of(model, sample, other, clouds, strength, grid));
        Optional<OtherLayer> layer = question.otherLayer()
                .map(other -> OtherLayer.of(model.catalogue(), sample, other, consultation.knowledge(), curves));
        Advice advice = consultation.advice();
        SeriesSentences sentences = new SeriesSentences(sample, advice, plates, clouds);
        return new PlateSeries(
                sample,
                advice,
                curves,
                plates,
                grid,
                clouds,
                against,
                layer,
                sentences.all(),
                IntStream.range(0, plates.size()).mapToObj(sentences::changed).toList());
    }

    /** What happens between the shares that the model of the pair holds. */
    static Curves curves(Consultation consultation) {
        List<Double> percents = SeriesShares.fine(consultation.knowledge().model());
        List<Forecast> forecasts = consultation.at(percents);
        Map<String, Curves.SpotCurve> spots = new LinkedHashMap<>();
        for (int i = 0; i < forecasts.get(0).spots().size(); i++) {
            int spot = i;
            List<SpotForecast> each = forecasts.stream()
                    .map(forecast -> forecast.spots().get(spot))
                    .toList();
            spots.put(
                    each.get(0).spot(),
                    new Curves.SpotCurve(
                            each.stream().map(SpotForecast::rf).toList(),
                            each.stream().map(SpotForecast::low).toList(),
                            each.stream().map(SpotForecast::high).toList()));
        }
        return new Curves(
                percents, spots, forecasts.stream().map(Forecast::chance).toList(), List.of(), List.of(), List.of());
    }
}
