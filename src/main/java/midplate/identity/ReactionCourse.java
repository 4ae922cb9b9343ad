package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.identity.ReactionAnswer.Apart;
import midplate.identity.ReactionAnswer.LookAgain;
import midplate.words.Message;

/**
 * Follows a reaction by the grades that the eye gave to its spots: running, stalled, finished, gone wrong, or not told. Grades are no amounts,
 * so no conversion is given.
 *
 * <p>The starting material falls as {@link StartCourse} says, others form and are lost as {@link FormedCourse} says, and the eye grades as
 * {@link EyeGrades} says; Bayes' rule on a grid of such courses gives the chance of each state.
 */
public final class ReactionCourse {
    private static final int MOST_ELUENTS = 3;

    private final PartingEluents parting;

    private ReactionCourse(PartingEluents parting) {
        this.parting = parting;
    }

    /** With what is known of eluents. */
    public static ReactionCourse of(PartingEluents parting) {
        return new ReactionCourse(parting);
    }

    /** What the plates say of a reaction in which {@link ReactionFaults} finds no fault. */
    public ReactionAnswer follow(ReactionQuestion question) {
        ReactionSpecies start = question.first(SpeciesPart.START).orElseThrow();
        ReactionSight sight = new ReactionSight(question, start);
        ReactionRf places = new ReactionRf(question);
        Optional<Message> blind = blind(sight, places);
        if (tooFew(sight)) {
            ReactionVerdict verdict = ReactionVerdict.notTold(
                    blind.orElseGet(() -> Message.of("done.too-few-plates", "start", start.name())), Map.of());
            return answer(sight, places, verdict, Optional.of(NextLook.first(question)), Map.of());
        }
        ReactionPosterior posterior = ReactionPosterior.of(question, start);
        ReactionVerdict verdict = blind.map(why -> ReactionVerdict.notTold(why, Map.of()))
                .orElseGet(() -> ReactionVerdict.of(sight, places, posterior));
        Optional<LookAgain> look = NextLook.after(verdict, question, posterior);
        double until = look.map(LookAgain::atMinutes).orElse(question.lastMinutes());
        return answer(sight, places, verdict, look, new ReactionCurves(until).of(question, posterior));
    }

    /** Whether the starting material was looked for on fewer than two plates. */
    private static boolean tooFew(ReactionSight sight) {
        return sight.with(sight.startName()).size() < 2;
    }

    /** Why the plates cannot tell, however many they are. */
    private static Optional<Message> blind(ReactionSight sight, ReactionRf places) {
        if (places.isOneSpot()) {
            return Optional.of(Message.of(
                    "done.one-spot",
                    "start",
                    sight.startName(),
                    "product",
                    sight.productName().orElseThrow()));
        }
        if (sight.isNeverSeen(sight.startName())) {
            return Optional.of(Message.of("done.start-never-seen", "start", sight.startName()));
        }
        boolean looked = sight.question().plates().isEmpty()
                || sight.last().grade(sight.startName()).isPresent();
        return looked
                ? Optional.empty()
                : Optional.of(Message.of("done.start-not-looked-for", "start", sight.startName()));
    }

    private ReactionAnswer answer(
            ReactionSight sight,
            ReactionRf places,
            ReactionVerdict verdict,
            Optional<LookAgain> look,
            Map<String, ReactionAnswer.Course> courses) {
        ReactionQuestion question = sight.question();
        ReactionWarnings seen = new ReactionWarnings(sight);
        List<Message> warnings = new ArrayList<>(seen.strongerStarts());
        seen.fallingProduct(verdict.state()).ifPresent(warnings::add);
        warnings.addAll(places.jumps());
        if (question.first(SpeciesPart.PRODUCT).isEmpty()) {
            warnings.add(Message.of("done.no-product-named"));
        }
        if (question.eluent().isEmpty()) {
            warnings.add(Message.of("done.no-eluent"));
        }
        List<Message> reasons = question.plates().isEmpty() ? List.of() : new ReactionReasons(sight).of(verdict);
        return new ReactionAnswer(
                verdict.state(),
                verdict.inWords(),
                reasons,
                verdict.chances(),
                look,
                courses,
                apart(places, question),
                next(places, question),
                ReactionPractice.steps(),
                warnings,
                ReactionPractice.cautions());
    }

    private static Optional<Apart> apart(ReactionRf places, ReactionQuestion question) {
        return question.first(SpeciesPart.PRODUCT)
                .map(product -> places.apart()
                        .orElseGet(() -> new Apart(OptionalDouble.empty(), Message.of("done.apart-not-read"))));
    }

    /** Eluents for the two that count, where both are known by their Rf or by what they are made of. */
    private List<NextEluent> next(ReactionRf places, ReactionQuestion question) {
        Optional<Compound> start =
                question.first(SpeciesPart.START).map(places::placed).filter(ReactionCourse::isKnown);
        Optional<Compound> product =
                question.first(SpeciesPart.PRODUCT).map(places::placed).filter(ReactionCourse::isKnown);
        return question.eluent().isPresent() && start.isPresent() && product.isPresent()
                ? parting.apart(question.eluent().get(), start.get(), product.get(), MOST_ELUENTS)
                : List.of();
    }

    private static boolean isKnown(Compound compound) {
        return compound.rf().isPresent() || compound.structure().isPresent();
    }
}
