package midplate.catalogue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import midplate.chemistry.EluentComponent;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;

/**
 * The pairs of solvents without open measurements, each made from published strengths when it is first asked for.
 *
 * <p>A pair A/B behaves at a share like its base, a measured pair, at the share with the same published strength. The base is
 * dichloromethane/methanol where the strong solvent is an alcohol, else hexane/ethyl acetate; where that is missing, the next of those there are. Silica only: on alumina nothing was
 * measured that could be borrowed.
 *
 * @see "Snyder1968"
 */
public final class TheoryPairs {
    private static final List<String> BASES =
            List.of("silica-hexane-ethyl-acetate", "silica-hexane-diethyl-ether", "silica-dichloromethane-methanol");
    private static final List<String> ALCOHOL_BASES =
            List.of("silica-dichloromethane-methanol", "silica-hexane-ethyl-acetate", "silica-hexane-diethyl-ether");

    /** Methanol was measured up to 9 %; a little beyond it the curve may be trusted, our own choice [% v/v]. */
    private static final double MOST_ALCOHOL = 20;

    private final SolventCatalogue catalogue;
    private final EluentRules rules;
    private final TheoryStrength theory;
    private final Map<String, PlatePair> measured = new HashMap<>();
    private final Map<String, Solvent[]> solvents = new HashMap<>();
    private final Map<String, Optional<TheoryPair>> made = new ConcurrentHashMap<>();

    private TheoryPairs(SolventCatalogue catalogue, MeasuredPairs pairs, TheoryStrength theory) {
        this.catalogue = catalogue;
        this.rules = EluentRules.of(catalogue);
        this.theory = theory;
        pairs.pairs().forEach(pair -> measured.put(pair.id(), pair));
        for (Solvent weak : catalogue.solvents()) {
            for (Solvent strong : catalogue.solvents()) {
                solvents.put(PlatePair.id(Sorbent.SILICA, weak, strong), new Solvent[] {weak, strong});
            }
        }
    }

    /** The pairs that can be made of the solvents of a catalogue. */
    public static TheoryPairs of(SolventCatalogue catalogue, MeasuredPairs measured, TheoryStrength theory) {
        return new TheoryPairs(catalogue, measured, theory);
    }

    /**
     * A pair by its solvents; empty on alumina, where the two are no eluent or equally strong or the strong one is an alkane, which makes
     * none that differs from the weak one, where the pair or the one that it
     * stands in for was measured, and where a strength or an area was not published.
     */
    public Optional<TheoryPair> find(Sorbent sorbent, Solvent weak, Solvent strong) {
        return sorbent == Sorbent.SILICA
                ? made.computeIfAbsent(PlatePair.id(sorbent, weak, strong), id -> make(weak, strong))
                : Optional.empty();
    }

    /** The same by its id, such as {@code silica-hexane-acetone}; empty also where the id is of no two solvents. */
    public Optional<TheoryPair> find(String id) {
        Solvent[] pair = solvents.get(id);
        return pair == null ? Optional.empty() : find(Sorbent.SILICA, pair[0], pair[1]);
    }

    private Optional<TheoryPair> make(Solvent weak, Solvent strong) {
        String standard = PlatePair.id(Sorbent.SILICA, rules.standard(weak), rules.standard(strong));
        if (measured.containsKey(standard)
                || catalogue.localization(strong) == LocalizationClass.WEAK
                || rules.against("strong", Sorbent.SILICA, weak, strong).isPresent()) {
            return Optional.empty();
        }
        Optional<Solvent> weakAs = known(weak);
        Optional<Solvent> strongAs = known(strong);
        Optional<PlatePair> borrowed = (isAlcohol(strong) ? ALCOHOL_BASES : BASES)
                .stream().filter(measured::containsKey).map(measured::get).findFirst();
        if (weakAs.isEmpty() || strongAs.isEmpty() || borrowed.isEmpty()) {
            return Optional.empty();
        }
        PlatePair base = borrowed.get();
        EluentComponent one = component(weakAs.get());
        EluentComponent other = component(strongAs.get());
        if (!(other.strength() > one.strength())) {
            return Optional.empty();
        }
        List<Solvent> used = List.of(weakAs.get(), strongAs.get(), base.weak(), base.strong());
        TheoryKind kind = kind(weakAs.get(), strongAs.get());
        TheoryCheck check = theory.check(kind);
        BorrowedCurve curve = BorrowedCurve.of(
                base, component(base.weak()), component(base.strong()), theory.activity(), theory.slope());
        TheoryForm form = new TheoryForm(theory, check, base, curve, sources(used, base));
        return Optional.of(new TheoryPair(
                form.pair(
                        weak,
                        strong,
                        one,
                        other,
                        trustedFrom(weakAs.get(), strongAs.get()),
                        isAlcohol(strong) ? MOST_ALCOHOL : 100),
                base.id(),
                check.deviationC(),
                check.deviationS(),
                shared(check, strongAs.get(), base.strong())));
    }

    /**
     * Compounds differ from each other by the scatter of the check. Where the strong solvent binds as that of the base does, to single
     * sites or as an alcohol, they do so by no more than with ether in place of ethyl acetate; what is left of the deviation is an
     * error of the strengths, the same for all.
     */
    private double shared(TheoryCheck check, Solvent strong, Solvent lender) {
        double own = bindsAlike(catalogue.localization(strong), catalogue.localization(lender))
                ? theory.check(TheoryKind.ALKANE_LOCALIZING).scatter()
                : check.scatter();
        double deviation = check.deviationC();
        return Math.sqrt(Math.max(0, deviation * deviation - Math.min(own, deviation) * Math.min(own, deviation)));
    }

    private static boolean bindsAlike(LocalizationClass one, LocalizationClass other) {
        return one == other || (TheoryKind.localizes(one) && TheoryKind.localizes(other));
    }

    /** The solvent itself where enough is published about it, else the one that it stands in for, if that is known. */
    private Optional<Solvent> known(Solvent solvent) {
        if (isKnown(solvent)) {
            return Optional.of(solvent);
        }
        return Optional.of(rules.standard(solvent)).filter(this::isKnown);
    }

    private boolean isKnown(Solvent solvent) {
        return catalogue.component(solvent, Sorbent.SILICA, theory.series()).isPresent();
    }

    private EluentComponent component(Solvent solvent) {
        return catalogue
                .component(solvent, Sorbent.SILICA, theory.series())
                .orElseThrow(() -> new IllegalStateException("no strength on silica of " + solvent.id()));
    }

    private boolean isAlcohol(Solvent solvent) {
        return catalogue.localization(solvent) == LocalizationClass.VERY_STRONG_LOCALIZING;
    }

    private TheoryKind kind(Solvent weak, Solvent strong) {
        return isUncertain(weak) || isUncertain(strong)
                ? TheoryKind.ALCOHOL
                : TheoryKind.of(catalogue.localization(weak), catalogue.localization(strong));
    }

    private boolean isUncertain(Solvent solvent) {
        return strength(solvent).confidence().equals("L");
    }

    /**
     * Below 5 % of a solvent that localizes the eluent may demix on the dry layer, and the law fails. With an alcohol the check was
     * made from 1 % on in dichloromethane: what fails there is part of its deviations; in an alkane nobody looked.
     */
    private double trustedFrom(Solvent weak, Solvent strong) {
        LocalizationClass under = catalogue.localization(weak);
        return switch (catalogue.localization(strong)) {
            case WEAK, NON_LOCALIZING -> 0;
            case VERY_STRONG_LOCALIZING ->
                under == LocalizationClass.WEAK || under == LocalizationClass.UNKNOWN ? 5 : 1;
            case LOCALIZING_BASIC, LOCALIZING_NON_BASIC, UNKNOWN -> 5;
        };
    }

    private PublishedValue strength(Solvent solvent) {
        return catalogue
                .strengthValue(solvent, Sorbent.SILICA, theory.series())
                .orElseThrow(() -> new IllegalStateException("no strength on silica of " + solvent.id()));
    }

    private List<String> sources(List<Solvent> used, PlatePair base) {
        Set<String> keys = new LinkedHashSet<>();
        used.forEach(solvent -> keys.add(strength(solvent).source().key()));
        keys.addAll(base.provenance().sources());
        return new ArrayList<>(keys);
    }
}
