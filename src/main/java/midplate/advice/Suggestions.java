package midplate.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import midplate.catalogue.EluentRules;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.StrengthSeries;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.Message;

/** What to name beside an advice where another solvent would help; where a shelf was told, only what stands on it. */
final class Suggestions {
    /** For compounds that are acids, and for bases; common practice, no source. */
    private static final String FOR_ACIDS = "acetic-acid";

    private static final String FOR_BASES = "triethylamine";

    private final Question question;
    private final PlatePair pair;
    private final List<PlatePair> measured;
    private final SolventCatalogue catalogue;
    private final EluentRules rules;
    private final Shelf shelf;

    Suggestions(Question question, PlatePair pair, List<PlatePair> measured, SolventCatalogue catalogue) {
        this.question = question;
        this.pair = pair;
        this.measured = measured;
        this.catalogue = catalogue;
        this.rules = EluentRules.of(catalogue);
        this.shelf = question.wishes().shelf();
    }

    /** What is said where a spot stays low even in the strongest mixture of this pair. */
    Message tooPolar(String spot, double percent) {
        Message strong = question.strong().said();
        Additives help = new Additives(question, catalogue);
        boolean strongest = stronger().isEmpty() && !shelf.isTold();
        if (help.isIon(spot) || strongest && !help.mayHelp(spot)) {
            return Message.of("advice.too-polar-aqueous", "spot", spot, "strong", strong, "percent", percent);
        }
        if (!shelf.isTold()) {
            return Message.of(
                    stronger().isEmpty() ? "advice.too-polar-strongest" : "advice.too-polar",
                    "spot",
                    spot,
                    "strong",
                    strong,
                    "percent",
                    percent);
        }
        Optional<PlatePair> other = stronger();
        if (other.isPresent()) {
            return Message.of(
                    "advice.too-polar-shelf",
                    "spot",
                    spot,
                    "strong",
                    strong,
                    "percent",
                    percent,
                    "otherWeak",
                    named(other.get().weak()),
                    "otherStrong",
                    named(other.get().strong()));
        }
        Optional<Message> additive = help.mayHelp(spot) ? additives() : Optional.empty();
        return additive.isPresent()
                ? Message.of(
                        "advice.too-polar-shelf-additive",
                        "spot",
                        spot,
                        "strong",
                        strong,
                        "percent",
                        percent,
                        "additive",
                        additive.get())
                : Message.of("advice.too-polar-shelf-none", "spot", spot, "strong", strong, "percent", percent);
    }

    /** What is said where a spot runs high in the weak solvent of this pair alone, though a weaker one exists. */
    Message runsInWeak(String spot) {
        Message weak = question.weak().said();
        if (!shelf.isTold()) {
            return Message.of("advice.runs-in-weak", "spot", spot, "weak", weak);
        }
        Optional<PlatePair> other = best(
                candidate -> strength(candidate.weak()) < strength(pair.weak()),
                Comparator.comparingDouble(candidate -> -strength(candidate.weak())));
        return other.isPresent()
                ? Message.of(
                        "advice.runs-in-weak-shelf",
                        "spot",
                        spot,
                        "weak",
                        weak,
                        "otherWeak",
                        named(other.get().weak()),
                        "otherStrong",
                        named(other.get().strong()))
                : Message.of("advice.runs-in-weak-shelf-none", "spot", spot, "weak", weak);
    }

    /** What is said where a little of a localizing solvent may demix. */
    Message demixing(double percent) {
        Message strong = question.strong().said();
        if (!shelf.isTold()) {
            return Message.of("advice.demixing", "percent", percent, "strong", strong);
        }
        List<Solvent> weaker = otherStrong().stream()
                .filter(solvent -> strength(solvent) < strength(pair.strong()))
                .toList();
        return weaker.isEmpty()
                ? Message.of("advice.demixing-shelf-none", "percent", percent, "strong", strong)
                : Message.of(
                        "advice.demixing-shelf", "percent", percent, "strong", strong, "others", Shelf.names(weaker));
    }

    /** What is said where two spots may touch. */
    Message touching(String lower, String upper, double gap) {
        if (!shelf.isTold()) {
            return Message.of("advice.why-touching", "lower", lower, "upper", upper, "gap", gap);
        }
        List<Solvent> others = otherStrong();
        return others.isEmpty()
                ? Message.of("advice.why-touching-shelf-none", "lower", lower, "upper", upper, "gap", gap)
                : Message.of(
                        "advice.why-touching-shelf",
                        "lower",
                        lower,
                        "upper",
                        upper,
                        "gap",
                        gap,
                        "others",
                        Shelf.names(others));
    }

    /** The measured pair with the strongest strong solvent, if that is stronger than the one asked about. */
    private Optional<PlatePair> stronger() {
        return best(
                candidate -> strength(candidate.strong()) > strength(pair.strong()),
                Comparator.comparingDouble(candidate -> strength(candidate.strong())));
    }

    private Optional<PlatePair> best(Predicate<PlatePair> wanted, Comparator<PlatePair> order) {
        return measured.stream()
                .filter(wanted)
                .filter(candidate ->
                        shelf.inPlaceOf(candidate.weak(), rules::standard).isPresent())
                .filter(candidate ->
                        shelf.inPlaceOf(candidate.strong(), rules::standard).isPresent())
                .max(order);
    }

    private Message named(Solvent solvent) {
        return shelf.inPlaceOf(solvent, rules::standard).orElse(solvent).said();
    }

    /** Solvents on the shelf that could take the strong solvent's place. */
    private List<Solvent> otherStrong() {
        return shelf.solvents().stream()
                .filter(solvent -> !solvent.equals(question.strong()))
                .filter(solvent -> strength(solvent) > strength(pair.weak()))
                .filter(solvent -> rules.against("strong", question.sorbent(), question.weak(), solvent)
                        .isEmpty())
                .toList();
    }

    private Optional<Message> additives() {
        List<Solvent> useful = shelf.solvents().stream()
                .filter(solvent -> List.of(FOR_ACIDS, FOR_BASES).contains(solvent.id()))
                .toList();
        return useful.isEmpty() ? Optional.empty() : Optional.of(Shelf.names(useful));
    }

    private double strength(Solvent solvent) {
        return catalogue
                .strength(rules.standard(solvent), Sorbent.SILICA, StrengthSeries.NEWER)
                .orElse(0.0);
    }
}
