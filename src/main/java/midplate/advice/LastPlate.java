package midplate.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import midplate.inference.Knowledge;
import midplate.inference.Parting;
import midplate.inference.PlateRun;
import midplate.inference.SpotGuess;
import midplate.plate.Limit;
import midplate.plate.Reading;
import midplate.plate.UnlabelledLane;
import midplate.plate.UnlabelledSpot;
import midplate.words.Digits;
import midplate.words.Message;

/**
 * The last plate in the pair, and whether it shows already what is asked for. Spots without a label count by what they most
 * likely are, or simply by their number: where as many as are asked about lie in one lane, every one in the window.
 */
final class LastPlate {
    /** From this probability on an unlabelled spot is taken for its likeliest compound [1]; common practice, no source. */
    private static final double LIKELY = 0.5;

    private static final double ROUNDING = 1e-9;

    private final Question question;
    private final PlateRun plate;
    private final Knowledge knowledge;

    private LastPlate(Question question, PlateRun plate, Knowledge knowledge) {
        this.question = question;
        this.plate = plate;
        this.knowledge = knowledge;
    }

    /** The last of some plates; empty where there is none. */
    static Optional<LastPlate> of(Question question, List<PlateRun> plates, Knowledge knowledge) {
        return plates.isEmpty()
                ? Optional.empty()
                : Optional.of(new LastPlate(question, plates.get(plates.size() - 1), knowledge));
    }

    /**
     * What to say where it shows already what is asked for.
     *
     * @param advised share of the strong solvent in the ratio advised [% v/v]
     */
    Optional<Message> note(double advised) {
        if (!showsByName() && !showsByNumber()) {
            return Optional.empty();
        }
        String key = "advice.last-plate-works";
        if (Reasons.isSameStrength(knowledge, plate.percent(), advised)) {
            key = question.wishes().apart().isEmpty() ? "advice.last-plate-best" : "advice.last-plate-best-apart";
        }
        return Optional.of(Message.of(key, "percent", Digits.percent(plate.percent())));
    }

    private boolean showsByName() {
        return question.spots().stream().allMatch(spot -> {
                    List<Reading> readings = readings(spot);
                    return !readings.isEmpty() && readings.stream().allMatch(this::isInside);
                })
                && question.wishes().apart().stream()
                        .allMatch(pair -> readings(pair.one()).stream()
                                .allMatch(
                                        one -> readings(pair.other()).stream().allMatch(other -> isApart(one, other))));
    }

    /**
     * Where a spot was read, by its label or as an unlabelled spot that it most likely is: one of a lane that has a spot for each
     * compound, since in one with fewer some compound may not have been there at all.
     */
    private List<Reading> readings(String spot) {
        Reading labelled = plate.readings().get(spot);
        return Stream.concat(
                        Stream.ofNullable(labelled),
                        knowledge.guesses().stream()
                                .filter(guess -> guess.run() == plate.number())
                                .filter(guess -> isAccountedFor(guess.lane()))
                                .filter(guess -> guess.guess().probability() >= LIKELY)
                                .filter(guess -> guess.guess().spots().equals(List.of(spot)))
                                .map(SpotGuess::reading))
                .toList();
    }

    private boolean isAccountedFor(int number) {
        return plate.unlabelled().stream()
                .filter(lane -> lane.lane() == number)
                .anyMatch(lane -> question.spots().stream()
                                .filter(spot -> !lane.labelled().contains(spot))
                                .count()
                        <= lane.spots().size());
    }

    private boolean showsByNumber() {
        boolean hidden = question.spots().stream().anyMatch(plate.notSeen()::contains);
        return !hidden
                && Stream.concat(
                                plate.readings().values().stream(),
                                plate.unlabelled().stream()
                                        .flatMap(lane -> lane.spots().stream())
                                        .map(UnlabelledSpot::reading))
                        .allMatch(this::isInside)
                && plate.unlabelled().stream().map(this::inLane).anyMatch(this::isComplete);
    }

    private List<Reading> inLane(UnlabelledLane lane) {
        List<Reading> readings = new ArrayList<>(
                lane.spots().stream().map(UnlabelledSpot::reading).toList());
        lane.labelled().stream()
                .flatMap(name -> Stream.ofNullable(plate.readings().get(name)))
                .forEach(readings::add);
        return readings;
    }

    /** Whether a lane has as many spots as are asked about; where pairs are to lie apart, any two of them do. */
    private boolean isComplete(List<Reading> lane) {
        return lane.size() >= question.spots().size()
                && (question.wishes().apart().isEmpty() || areApart(lane));
    }

    private static boolean areApart(List<Reading> readings) {
        List<Reading> upwards = readings.stream()
                .sorted(Comparator.comparingDouble(Reading::rf))
                .toList();
        return IntStream.range(1, upwards.size()).allMatch(i -> isApart(upwards.get(i - 1), upwards.get(i)));
    }

    private boolean isInside(Reading reading) {
        return reading.limit() == Limit.NONE && question.window().holds(reading.rf());
    }

    private static boolean isApart(Reading one, Reading other) {
        return Math.abs(one.rf() - other.rf()) >= Parting.LEAST_RF - ROUNDING;
    }
}
