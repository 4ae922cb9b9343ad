package midplate.identity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.plate.Setting;
import midplate.words.Message;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Eluents to run next")
class FurtherEluentsTest {
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();

    private static Solvent solvent(String id) {
        return CATALOGUE.solvent(id);
    }

    private static IdentityQuestion question(List<Candidate> candidates) {
        PlateEluent eluent = new PlateEluent(
                Sorbent.SILICA,
                solvent("hexane"),
                solvent("ethyl-acetate"),
                20,
                Optional.empty(),
                Setting.BENCH,
                List.of());
        return new IdentityQuestion(
                List.of(), List.of(), candidates, Optional.empty(), OptionalDouble.empty(), Optional.of(eluent));
    }

    private static Verdict verdict(String reference, Verdict.Outcome outcome, double rf) {
        return new Verdict(
                reference,
                outcome,
                Message.of("same.undecided", "reference", reference),
                List.of(),
                Optional.of(new RfRange(0, -0.02, 0.02)),
                OptionalDouble.of(0.5),
                OptionalDouble.of(0.05),
                OptionalDouble.of(rf));
    }

    /** The Rf of both of each pair that was asked about. */
    private static List<List<OptionalDouble>> asked(
            IdentityQuestion question, List<Verdict> verdicts, Optional<CandidatesWithin> candidates) {
        List<List<OptionalDouble>> asked = new ArrayList<>();
        PartingEluents parting = (here, one, other, most) -> {
            asked.add(List.of(one.rf(), other.rf()));
            return List.of();
        };
        new FurtherEluents(parting, question).next(verdicts, candidates);
        return asked;
    }

    @Test
    void eachReferenceIsPartedFromTheSpotOfTheSampleBesideIt() {
        List<Verdict> verdicts = List.of(
                verdict("A", Verdict.Outcome.NOT_TOLD_APART, 0.3), verdict("B", Verdict.Outcome.UNDECIDED, 0.5));
        assertEquals(
                List.of(
                        List.of(OptionalDouble.of(0.3), OptionalDouble.of(0.3)),
                        List.of(OptionalDouble.of(0.5), OptionalDouble.of(0.5))),
                asked(question(List.of()), verdicts, Optional.empty()));
    }

    @Test
    void aCandidateIsPartedFromTheSampleWhereItLiesAndWhatWasForetoldIsNoReading() {
        List<CandidatesWithin.Each> each = List.of(
                new CandidatesWithin.Each(
                        "x",
                        new RfRange(0.4, 0.3, 0.5),
                        0.6,
                        CandidatesWithin.From.PRINTED,
                        CandidatesWithin.Standing.LEFT),
                new CandidatesWithin.Each(
                        "y",
                        new RfRange(0.4, 0.1, 0.8),
                        0.3,
                        CandidatesWithin.From.MODEL,
                        CandidatesWithin.Standing.LEFT));
        CandidatesWithin left = new CandidatesWithin(2, 2, Message.of("same.no-eluent"), each);
        assertEquals(
                List.of(
                        List.of(OptionalDouble.of(0.45), OptionalDouble.of(0.4)),
                        List.of(OptionalDouble.of(0.45), OptionalDouble.empty())),
                asked(question(List.of()), List.of(verdict("A", Verdict.Outcome.DIFFERENT, 0.45)), Optional.of(left)));
    }
}
