package midplate.identity;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.words.Allowed;
import midplate.words.Message;

/** Whether the sample looks like several of the references together on a plate, and which of its spots none of them accounts for. */
final class SampleParts {
    private final ReadPlate plate;
    /** The spot of the sample that is not told apart from a reference, by reference. */
    private final Map<String, ReadSpot> matched = new LinkedHashMap<>();
    /** The same where it is not decided. */
    private final Map<String, ReadSpot> open = new LinkedHashMap<>();

    private SampleParts(ReadPlate plate) {
        this.plate = plate;
    }

    /**
     * Looks at one plate.
     *
     * @param evidence by reference
     */
    static SampleParts of(ReadPlate plate, Map<String, PairEvidence> evidence) {
        SampleParts parts = new SampleParts(plate);
        evidence.forEach((reference, pair) -> pair.all().stream()
                .filter(each -> each.plate() == plate)
                .forEach(each -> parts.place(reference, pair.outcome(), each.one())));
        return parts;
    }

    private void place(String reference, Verdict.Outcome outcome, ReadSpot spot) {
        switch (outcome) {
            case NOT_TOLD_APART -> matched.put(reference, spot);
            case UNDECIDED -> open.put(reference, spot);
            case DIFFERENT -> {
                // that reference accounts for nothing
            }
        }
    }

    /** References that are not told apart from the sample, in two of its spots or more. */
    Optional<Message> mixture() {
        int spots = new LinkedHashSet<>(matched.values()).size();
        return spots < 2
                ? Optional.empty()
                : Optional.of(Message.of(
                        "same.mixture",
                        "references",
                        Allowed.words(matched.keySet()),
                        "plate",
                        plate.number(),
                        "count",
                        spots));
    }

    /** The spots that none of the references accounts for or may account for; the only spot of a sample is judged already. */
    List<ReadSpot> unexplained() {
        List<ReadSpot> sample = plate.unknown();
        return sample.size() < 2
                ? List.of()
                : sample.stream()
                        .filter(spot -> !matched.containsValue(spot) && !open.containsValue(spot))
                        .toList();
    }
}
