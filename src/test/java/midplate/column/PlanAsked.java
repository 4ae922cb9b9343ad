package midplate.column;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.advice.Advice;
import midplate.advice.ClosestSpots;
import midplate.advice.Consultation;
import midplate.advice.Curves;
import midplate.advice.Forecast;
import midplate.advice.Glassware;
import midplate.advice.OtherEluent;
import midplate.advice.OtherRank;
import midplate.advice.OthersWish;
import midplate.advice.Question;
import midplate.advice.Ratio;
import midplate.advice.Replacements;
import midplate.advice.ScoutingPlan;
import midplate.advice.Window;
import midplate.catalogue.PairBasis;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Sorbent;
import midplate.inference.Knowledge;
import midplate.plate.Setting;
import midplate.words.Message;

/** Asks for plans about invented samples in hexane with ethyl acetate. */
final class PlanAsked {
    static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    private static final ColumnPlanner PLANNER = ColumnPlanner.of(CATALOGUE);

    private Question sample;
    private final String target;
    private final double massMg;
    private Optional<Bed> bed = Optional.empty();
    private Loading loading = Loading.WET;
    private OptionalDouble loadMl = OptionalDouble.empty();
    private OptionalDouble fractionMl = OptionalDouble.empty();
    private Optional<Program> program = Optional.empty();
    private ColumnQuestion.Elution elution = ColumnQuestion.Elution.BEST;

    private PlanAsked(String target, double massMg, String... spots) {
        this.target = target;
        this.massMg = massMg;
        this.sample = new Question(
                Sorbent.SILICA,
                CATALOGUE.solvent("hexane"),
                CATALOGUE.solvent("ethyl acetate"),
                Optional.empty(),
                List.of(spots),
                List.of(),
                Window.USUAL,
                Setting.BENCH,
                Glassware.USUAL);
    }

    static PlanAsked about(String target, double massMg, String... spots) {
        return new PlanAsked(target, massMg, spots);
    }

    PlanAsked on(Bed chosen) {
        bed = Optional.of(chosen);
        return this;
    }

    PlanAsked pouring(Program own) {
        program = Optional.of(own);
        return this;
    }

    PlanAsked by(ColumnQuestion.Elution kind) {
        elution = kind;
        return this;
    }

    PlanAsked dry() {
        loading = Loading.DRY;
        return this;
    }

    PlanAsked loadedIn(double ml) {
        loadMl = OptionalDouble.of(ml);
        return this;
    }

    PlanAsked fractions(double ml) {
        fractionMl = OptionalDouble.of(ml);
        return this;
    }

    PlanAsked made(Map<String, GroupCounts> structures) {
        sample = sample.knowing(structures);
        return this;
    }

    ColumnQuestion question() {
        return new ColumnQuestion(
                sample,
                target,
                massMg,
                bed,
                loading,
                loadMl,
                OptionalDouble.empty(),
                fractionMl,
                program,
                elution,
                List.of());
    }

    ColumnPlan plan(BandLaw law) {
        return plan(law, List.of());
    }

    /** Where other eluents are known. */
    ColumnPlan plan(BandLaw law, List<OtherEluent> others) {
        return PLANNER.plan(question(), law, new Plates(others));
    }

    /** Another pair that is as strong as the one asked about. */
    static OtherEluent other(String weak, String strong, double chanceApart) {
        return new OtherEluent(
                CATALOGUE.solvent(weak),
                CATALOGUE.solvent(strong),
                PairBasis.THEORY,
                OtherEluent.Kind.OTHER,
                Optional.of(new OtherEluent.Equal(50, 40, 60)),
                Optional.empty(),
                new OtherEluent.Pour(new Ratio(1, 1), 5, 5),
                0.5,
                0.5,
                Optional.of(new ClosestSpots("A", "B", chanceApart, 0.1)),
                List.of(),
                OptionalDouble.empty(),
                List.of(),
                List.of(),
                List.of(),
                0.1);
    }

    static List<String> codes(List<Message> messages) {
        return messages.stream().map(Message::code).toList();
    }

    static Message find(List<Message> messages, String code) {
        return messages.stream()
                .filter(message -> message.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + code + " in " + messages));
    }

    /**
     * Plates that say that A and B lie apart on one of ten.
     *
     * @param others what else they know
     */
    private record Plates(List<OtherEluent> others) implements Consultation {
        @Override
        public Advice advice() {
            throw new AssertionError("not asked for");
        }

        @Override
        public List<Forecast> at(List<Double> percentStrong) {
            throw new AssertionError("not asked for");
        }

        @Override
        public Curves curves() {
            throw new AssertionError("not asked for");
        }

        @Override
        public ScoutingPlan scout(int jars) {
            throw new AssertionError("not asked for");
        }

        @Override
        public Knowledge knowledge() {
            throw new AssertionError("not asked for");
        }

        @Override
        public Replacements others(OthersWish wish) {
            Replacements.Of of = new Replacements.Of(
                    wish.percentStrong().orElseThrow(),
                    Optional.empty(),
                    PairBasis.MEASURED,
                    0.3,
                    OptionalDouble.empty(),
                    Optional.of(new ClosestSpots("A", "B", 0.1, 0.02)),
                    0.5,
                    0.1);
            return new Replacements(of, OtherRank.APART, others, List.of(), List.of());
        }
    }
}
