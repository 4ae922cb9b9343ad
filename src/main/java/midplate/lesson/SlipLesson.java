package midplate.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import midplate.advice.Advice;
import midplate.advice.Consultation;
import midplate.advice.Forecast;
import midplate.advice.SpotForecast;
import midplate.plate.Eluent;
import midplate.plate.PlateReading;
import midplate.plate.Reading;
import midplate.plate.Run;
import midplate.plate.SpotMeasurement;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * What a slip does to the advice: the true Rf are the middle of what the model foretells from the structures; a careful pair and the pair of
 * this time note one plate each, and each is advised by the adviser itself.
 */
public final class SlipLesson {
    /** What the adviser says of readings that do not fit. */
    private static final Set<String> DOUBTS = Set.of(
            "advice.readings-differ",
            "advice.runs-backwards",
            "advice.structure-contradicted",
            "advice.structure-exchanged",
            "advice.structure-ran-high",
            "advice.structure-ran-low");

    private final SlipQuestion question;
    private final LessonModel model;
    private final SlipCase worked;

    private SlipLesson(SlipQuestion question, LessonModel model) {
        this.question = question;
        this.model = model;
        double percent = question.percentStrong();
        double then = percentThen(question);
        List<Forecast> plates = model.consult(question.sample()).at(List.of(percent, then));
        this.worked = new SlipCase(question, rf(plates.get(0)), then, rf(plates.get(1)));
    }

    /** Works a slip out. */
    public static SlipAnswer of(SlipQuestion question, LessonModel model) {
        return new SlipLesson(question, model).answer();
    }

    private static List<Double> rf(Forecast plate) {
        return plate.spots().stream().map(SpotForecast::rf).toList();
    }

    private static double percentThen(SlipQuestion question) {
        return switch (question.slip()) {
            case TOO_WEAK -> question.percentStrong() / question.size();
            case TOO_STRONG -> Math.min(100, question.percentStrong() * question.size());
            default -> question.percentStrong();
        };
    }

    /** One plate, as the program takes it. */
    private record Taken(SlipNoting noting, Map<String, Reading> readings, List<Message> told, List<Refusal> refused) {}

    private SlipAnswer answer() {
        SlipPlates plates = SlipPlates.of(worked);
        Taken rightly = taken(plates.rightly());
        Consultation knowing = consult(rightly, question.percentStrong());
        SlipAnswer.Noted careful = noted(rightly, Optional.of(knowing), knowing);
        Set<Message> noticed = new LinkedHashSet<>();
        List<SlipAnswer.Noted> noted = new ArrayList<>();
        for (SlipNoting noting : plates.notings()) {
            Taken taken = taken(noting);
            noticed.addAll(taken.told());
            taken.refused().forEach(refusal -> noticed.add(refusal.reason()));
            Optional<Consultation> misled =
                    taken.refused().isEmpty() ? Optional.of(consult(taken, worked.percentThen())) : Optional.empty();
            misled.ifPresent(each -> each.advice().notes().stream()
                    .filter(note -> DOUBTS.contains(note.key()))
                    .forEach(noticed::add));
            noted.add(noted(taken, misled, knowing));
        }
        noticed.removeAll(rightly.told());
        noticed.removeAll(knowing.advice().notes()); // what a careful pair is told, too, is not told of the slip
        SlipSentences sentences = new SlipSentences(question, careful, noted);
        return new SlipAnswer(
                question.slip(),
                question.slip().size(question.plate()),
                question.size(),
                plates.right(),
                careful,
                plates.seen(),
                noted,
                sentences.errs(),
                question.slip().said("what", question.slip().field(), question.size()),
                sentences.does(plates),
                formula(question.slip()),
                List.copyOf(noticed),
                question.slip().said("now"),
                question.slip().said("next"));
    }

    private static Message formula(Slip slip) {
        return slip.kind() == Slip.Kind.SIZE
                ? slip.said("formula", "heightMm", SpotGrowth.PLATE_HEIGHT_MM)
                : slip.said("formula");
    }

    private static Taken taken(SlipNoting noting) {
        List<Refusal> refused = PlateReading.faults(noting.plate());
        if (!refused.isEmpty()) {
            return new Taken(noting, Map.of(), List.of(), refused);
        }
        PlateReading reading = PlateReading.of(noting.plate());
        Map<String, Reading> readings = new LinkedHashMap<>(reading.readings());
        noting.leftOut().forEach(readings::remove);
        return new Taken(noting, readings, reading.warnings(), List.of());
    }

    private Consultation consult(Taken plate, double percent) {
        LessonSample sample = question.sample();
        Eluent eluent = Eluent.of(sample.sorbent(), sample.weak(), sample.strong(), percent);
        List<Run> runs = plate.readings().isEmpty() ? List.of() : List.of(new Run(eluent, plate.readings()));
        return model.adviser().apply(sample.question(runs));
    }

    private SlipAnswer.Noted noted(Taken plate, Optional<Consultation> advising, Consultation knowing) {
        List<SlipAnswer.Spot> spots = new ArrayList<>();
        for (LessonCompound compound : question.sample().compounds()) {
            Optional<Double> centre = plate.noting().plate().spots().stream()
                    .filter(spot -> spot.spot().equals(compound.name()))
                    .map(SpotMeasurement::centreMm)
                    .findFirst();
            spots.add(new SlipAnswer.Spot(
                    compound.name(),
                    centre,
                    Optional.ofNullable(plate.readings().get(compound.name()))));
        }
        return new SlipAnswer.Noted(
                plate.noting().reading().id(),
                plate.noting().plate().startMm(),
                plate.noting().plate().frontMm(),
                spots,
                advising.map(consultation -> advised(consultation.advice(), knowing)));
    }

    private static SlipAnswer.Advised advised(Advice advice, Consultation knowing) {
        double percent = advice.ratio().percentStrong();
        return new SlipAnswer.Advised(
                advice.ratio().toString(),
                percent,
                advice.bestPercentStrong(),
                advice.forecast().chance(),
                knowing.at(List.of(percent)).get(0));
    }
}
