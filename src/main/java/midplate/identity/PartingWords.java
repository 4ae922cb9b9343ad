package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import midplate.advice.Ratio;
import midplate.catalogue.LocalizationClass;
import midplate.catalogue.PairBasis;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.words.Message;

/**
 * The sentence beside an eluent that may part two compounds: how likely, what it rests on, and whether its strong solvent holds on to
 * the layer in another way than the one at hand.
 *
 * @see "SnyderKirklandDolan2010"
 */
final class PartingWords {
    private static final String SOURCED = "same.next-sourced";
    private static final Set<String> OF_CLASSES = Set.of("same.why-same-class", "same.why-other-class");

    private final SolventCatalogue catalogue;

    PartingWords(SolventCatalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * An eluent with its sentence.
     *
     * @param here the eluent at hand
     * @param chance that both read inside the window and lie apart [1]
     * @param gap the distance to expect [1 in Rf]
     */
    NextEluent said(
            PlateEluent here, Solvent weak, Solvent strong, Ratio ratio, PairBasis basis, double chance, double gap) {
        Solvent last = ratio.strong() == 0 ? weak : strong;
        boolean alone = ratio.strong() == 0 || ratio.weak() == 0;
        Message text = Message.of(
                "same.next",
                "eluent",
                alone
                        ? Message.of("same.eluent-pure", "solvent", last.said())
                        : Message.of(
                                "same.eluent", "weak", weak.said(), "strong", strong.said(), "ratio", ratio.toString()),
                "times",
                (double) Math.round(100 * chance),
                "gap",
                gap,
                "basis",
                Message.of("same.basis-" + basis.id()),
                "why",
                why(here, weak, last));
        return new NextEluent(weak, strong, ratio, basis, chance, gap, text);
    }

    /** These eluents, the source of the classes of solvents told beside the first that speaks of them, and there only. */
    static List<NextEluent> sourcedOnce(List<NextEluent> eluents) {
        List<NextEluent> told = new ArrayList<>();
        boolean sourced = false;
        for (NextEluent eluent : eluents) {
            Message bare = bare(eluent.text());
            boolean speaks = bare.args().get("why") instanceof Message why && OF_CLASSES.contains(why.key());
            told.add(eluent.saying(speaks && !sourced ? Message.of(SOURCED, "next", bare) : bare));
            sourced = sourced || speaks;
        }
        return told;
    }

    private static Message bare(Message text) {
        return text.key().equals(SOURCED) && text.args().get("next") instanceof Message bare ? bare : text;
    }

    private Message why(PlateEluent here, Solvent weak, Solvent strong) {
        if (strong.equals(here.strong())) {
            return Message.of(
                    weak.equals(here.weak()) ? "same.why-ratio" : "same.why-same-strong", "strong", strong.said());
        }
        LocalizationClass now = catalogue.localization(here.strong());
        LocalizationClass then = catalogue.localization(strong);
        if (now == LocalizationClass.UNKNOWN || then == LocalizationClass.UNKNOWN) {
            return Message.of(
                    "same.why-unknown",
                    "strong",
                    strong.said(),
                    "now",
                    here.strong().said());
        }
        return Message.of(
                now == then ? "same.why-same-class" : "same.why-other-class",
                "strong",
                strong.said(),
                "class",
                Message.of("same.class-" + then.id()),
                "now",
                here.strong().said(),
                "nowClass",
                Message.of("same.class-" + now.id()));
    }
}
