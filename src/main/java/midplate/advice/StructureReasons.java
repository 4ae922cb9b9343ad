package midplate.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import midplate.chemistry.GroupCounts;
import midplate.inference.Knowledge;
import midplate.inference.Outlook;
import midplate.inference.PlateModels;
import midplate.inference.StructureForecast;
import midplate.plate.Limit;
import midplate.plate.Reading;
import midplate.words.Allowed;
import midplate.words.Message;
import org.jspecify.annotations.Nullable;

/** The sentences of what structures say: what a spot was judged by, how well that is known, what it adds to a plate. */
final class StructureReasons {
    private static final double NEAR_LINE = 0.05;
    /** A band of Rf that becomes narrower by less is not told [1]. */
    private static final double WORTH_SAYING = 0.02;

    /** A band of 90 % that covers more of the plate is called wide [1]; common practice, no source. */
    private static final double WIDE = 0.5;

    private final Question question;
    private final PlateModels models;
    private final Outlook outlook;
    private final UsedRuns runs;

    StructureReasons(Question question, PlateModels models, Outlook outlook, UsedRuns runs) {
        this.question = question;
        this.models = models;
        this.outlook = outlook;
        this.runs = runs;
    }

    /** The spots of which their structure says something in this pair. */
    Set<String> judged() {
        return question.spots().stream()
                .filter(spot -> forecast(spot).isPresent())
                .collect(Collectors.toSet());
    }

    /** Whether every spot has a structure that says something in this pair. */
    boolean isEverySpotJudged() {
        return judged().size() == question.spots().size();
    }

    /** That structures say nothing in a pair for which none were fitted. */
    Optional<Message> notFitted() {
        List<Message> without = question.spots().stream()
                .filter(question.structures()::containsKey)
                .filter(spot -> forecast(spot).isEmpty())
                .map(spot -> Message.of("allowed.words", "words", spot))
                .toList();
        return without.isEmpty()
                ? Optional.empty()
                : Optional.of(Message.of(
                        "advice.structure-not-fitted",
                        "spots",
                        Allowed.list(without),
                        "weak",
                        question.weak().said(),
                        "strong",
                        question.strong().said()));
    }

    private Optional<StructureForecast> forecast(String spot) {
        return Optional.ofNullable(question.structures().get(spot))
                .flatMap(counts -> models.forecast(outlook.knowledge().model().id(), counts));
    }

    /** What each spot was judged by, and what its structure adds to what the plate advised is expected to show. */
    List<Message> all(Forecast advised) {
        List<Message> reasons = new ArrayList<>();
        for (int i = 0; i < question.spots().size(); i++) {
            String spot = question.spots().get(i);
            Optional<StructureForecast> forecast = forecast(spot);
            if (forecast.isPresent()) {
                GroupCounts counts = question.structures().get(spot);
                forecast.get().heldBy().ifPresent(part -> reasons.add(held(spot, part, counts)));
                rare(spot, forecast.get(), counts).ifPresent(reasons::add);
                adds(i, advised).ifPresent(reasons::add);
            }
        }
        wide(advised).ifPresent(reasons::add);
        return reasons;
    }

    /** The spots judged by structure whose band is wide. */
    private Optional<Message> wide(Forecast advised) {
        List<Message> wide = new ArrayList<>();
        for (int i = 0; i < question.spots().size(); i++) {
            if (forecast(question.spots().get(i)).isPresent()) {
                SpotForecast spot = advised.spots().get(i);
                if (spot.high() - spot.low() > WIDE) {
                    wide.add(Allowed.words(question.spots().get(i)));
                }
            }
        }
        return wide.isEmpty()
                ? Optional.empty()
                : Optional.of(Message.of("advice.why-structure-wide", "spots", Allowed.list(wide)));
    }

    private static Message held(String spot, StructureForecast.Part part, @Nullable GroupCounts counts) {
        boolean whole = counts == null || counts.detail() == GroupCounts.Detail.WHOLE;
        if (part.compounds() == 0) {
            return Message.of(
                    whole ? "advice.why-structure-unmeasured" : "advice.why-structure-part-unmeasured",
                    "spot",
                    spot,
                    "group",
                    named(part));
        }
        return Message.of(
                whole ? "advice.why-structure" : "advice.why-structure-part",
                "spot",
                spot,
                "group",
                named(part),
                "compounds",
                part.compounds() < StructureForecast.FEW_COMPOUNDS
                        ? Message.of("advice.only", "count", part.compounds())
                        : part.compounds());
    }

    private static Message named(StructureForecast.Part part) {
        return Message.of("group." + part.id());
    }

    /** The rarest group of a spot; what is only supposed to carry the groups is none, nor what was told of already. */
    private static Optional<Message> rare(String spot, StructureForecast forecast, @Nullable GroupCounts counts) {
        String told = forecast.heldBy().map(StructureForecast.Part::id).orElse("");
        return forecast.rare().stream()
                .filter(part -> counts != null && counts.of(part.id()) > 0)
                .filter(part -> !part.id().equals(told))
                .min(Comparator.comparingInt(StructureForecast.Part::compounds))
                .map(part -> part.compounds() == 0
                        ? Message.of("advice.why-structure-none", "spot", spot, "group", named(part))
                        : Message.of(
                                "advice.why-structure-rare",
                                "spot",
                                spot,
                                "group",
                                named(part),
                                "compounds",
                                part.compounds()));
    }

    /** Where plates showed a spot at the lines only: what its structure narrows. */
    private Optional<Message> adds(int place, Forecast advised) {
        String spot = question.spots().get(place);
        List<Reading> readings = runs.own().stream()
                .flatMap(plate -> Optional.ofNullable(plate.readings().get(spot)).stream())
                .toList();
        if (readings.isEmpty() || !readings.stream().allMatch(StructureReasons::isAtLine)) {
            return Optional.empty();
        }
        SpotForecast with = advised.spots().get(place);
        Outlook.Spot without = withoutStructure(spot).spot(place, advised.percentStrong());
        double narrower = without.high() - without.low() - (with.high() - with.low());
        return narrower < WORTH_SAYING
                ? Optional.empty()
                : Optional.of(Message.of(
                        "advice.why-structure-adds",
                        "spot",
                        spot,
                        "low",
                        with.low(),
                        "high",
                        with.high(),
                        "lowWithout",
                        without.low(),
                        "highWithout",
                        without.high()));
    }

    private Outlook withoutStructure(String spot) {
        Map<String, GroupCounts> others = question.structures().entrySet().stream()
                .filter(entry -> !entry.getKey().equals(spot))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        Knowledge knowledge = models.learn(
                outlook.knowledge().model().id(), question.setting(), question.spots(), runs.all(), others);
        return models.outlook(
                knowledge,
                question.setting(),
                question.window().low(),
                question.window().high());
    }

    private static boolean isAtLine(Reading reading) {
        return reading.limit() != Limit.NONE || reading.rf() < NEAR_LINE || reading.rf() > 1 - NEAR_LINE;
    }
}
