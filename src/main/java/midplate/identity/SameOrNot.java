package midplate.identity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.advice.Adviser;
import midplate.catalogue.SolventCatalogue;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * Judges whether a sample is one of the references that ran beside it. It never says that two are one compound: only that this
 * eluent does not part them. Immutable; safe to share between threads.
 */
public final class SameOrNot {
    private final Optional<Adviser> adviser;
    private final Optional<PartingEluents> parting;

    private SameOrNot(Optional<Adviser> adviser, Optional<PartingEluents> parting) {
        this.adviser = adviser;
        this.parting = parting;
    }

    /** With the model of the plates behind it. */
    public static SameOrNot of(Adviser adviser, SolventCatalogue catalogue) {
        return new SameOrNot(Optional.of(adviser), Optional.of(ModelledParting.of(adviser, catalogue)));
    }

    /** Without a model: no eluent is advised, and no candidate foretold from its structure. */
    public static SameOrNot withoutModel() {
        return new SameOrNot(Optional.empty(), Optional.empty());
    }

    /** What the plates say. Refuses with the first of {@link IdentityFaults#in}. */
    public IdentityAnswer judge(IdentityQuestion question) {
        IdentityFaults.in(question).stream().findFirst().ifPresent(fault -> {
            throw fault;
        });
        List<ReadPlate> plates = plates(question);
        Map<String, PairEvidence> evidence = new LinkedHashMap<>();
        question.references().forEach(each -> evidence.put(each.name(), PairEvidence.of(plates, each.name())));
        List<Verdict> verdicts = new ArrayList<>();
        evidence.forEach((reference, pair) -> verdicts.add(VerdictWords.said(reference, pair)));
        List<SampleParts> parts =
                plates.stream().map(plate -> SampleParts.of(plate, evidence)).toList();
        boolean told = verdicts.stream().allMatch(each -> each.outcome() == Verdict.Outcome.DIFFERENT);
        Foretelling foretelling = Foretelling.of(adviser, question, evidence);
        Optional<CandidatesWithin> candidates = candidates(question, plates, evidence, foretelling);
        return new IdentityAnswer(
                verdicts,
                parts.stream().flatMap(each -> each.mixture().stream()).findFirst(),
                unexplained(plates, parts),
                candidates,
                parting.map(eluents -> new FurtherEluents(eluents, question).next(verdicts, candidates))
                        .orElse(List.of()),
                told && candidates.isEmpty() ? List.of() : SecondWays.ALL,
                warnings(question, plates, foretelling),
                List.of(Message.of("same.caution-sheet")));
    }

    private static List<ReadPlate> plates(IdentityQuestion question) {
        List<ReadPlate> plates = new ArrayList<>();
        for (ComparedPlate plate : question.plates()) {
            plates.add(ReadPlate.of(plate, plates.size() + 1));
        }
        return plates;
    }

    private static Optional<Message> unexplained(List<ReadPlate> plates, List<SampleParts> parts) {
        for (int i = 0; i < parts.size(); i++) {
            List<ReadSpot> spots = plates.get(i).unlikeLanes().isPresent()
                    ? List.of()
                    : parts.get(i).unexplained();
            if (!spots.isEmpty()) {
                return Optional.of(Message.of(
                        "same.unexplained",
                        "plate",
                        plates.get(i).number(),
                        "rfs",
                        Allowed.list(spots.stream()
                                .map(spot -> Message.of("same.at-rf", "rf", spot.rf()))
                                .toList())));
            }
        }
        return Optional.empty();
    }

    /** The sample is compared by its largest spot between the lines, on the first plate that shows one. */
    private Optional<CandidatesWithin> candidates(
            IdentityQuestion question,
            List<ReadPlate> plates,
            Map<String, PairEvidence> evidence,
            Foretelling foretelling) {
        for (ReadPlate plate : plates) {
            if (plate.unlikeLanes().isPresent()) {
                continue; // nobody knows which of its lanes is right
            }
            List<ReadSpot> spots = plate.unknown().stream()
                    .filter(spot -> spot.place() == ReadSpot.Place.BETWEEN)
                    .sorted(Comparator.comparingDouble(ReadSpot::sizeMm).reversed())
                    .toList();
            if (!spots.isEmpty()) {
                ReadSpot spot = spots.get(0);
                double alone = Math.sqrt(spot.variance()) / spot.runMm();
                double told = evidence.values().stream()
                        .filter(pair -> !pair.telling().isEmpty())
                        .mapToDouble(PairEvidence::leastToldRf)
                        .min()
                        .orElse(PlateComparison.leastTold(Math.sqrt(2) * alone, PlateComparison.STATED_ALONE));
                return new CandidateComparison(foretelling, question, spot.rf(), alone, told).all();
            }
        }
        return Optional.empty();
    }

    private static List<Message> warnings(IdentityQuestion question, List<ReadPlate> plates, Foretelling foretelling) {
        List<Message> warnings = new ArrayList<>(foretelling.contradictions());
        for (ReadPlate plate : plates) {
            if (plate.isOfRfOnly()) {
                warnings.add(
                        Message.of("same.assumed-run", "plate", plate.number(), "runMm", PlateComparison.USUAL_RUN_MM));
            }
            if (plate.everySpot().stream().anyMatch(ReadSpot::isOverloaded)) {
                warnings.add(Message.of("same.overloaded", "plate", plate.number()));
            }
        }
        boolean sized = plates.stream()
                .flatMap(plate -> plate.everySpot().stream())
                .allMatch(spot -> spot.size() == ReadSpot.Size.MEASURED);
        if (!sized) {
            warnings.add(Message.of("same.no-sizes", "sizeMm", PlateComparison.USUAL_SIZE_MM));
        }
        if (question.candidates().stream()
                .anyMatch(each -> each.rf().isPresent() || each.hrf().isPresent())) {
            warnings.add(Message.of(
                    question.unknownHrf().isPresent() ? "same.wider-corrected" : "same.wider",
                    "plates",
                    PlateComparison.BETWEEN_PLATES,
                    "laboratories",
                    PlateComparison.BETWEEN_LABORATORIES));
        }
        if (question.eluent().isEmpty()) {
            warnings.add(Message.of("same.no-eluent"));
        }
        return warnings;
    }
}
