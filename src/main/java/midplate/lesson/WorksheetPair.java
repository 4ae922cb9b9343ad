package midplate.lesson;

import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;

/** The two solvents that the plates of a worksheet ran in. A code holds their place in this list, so it only grows at its end, to four. */
public enum WorksheetPair {
    /** Measured. */
    HEXANE_ETHYL_ACETATE("hexane", "ethyl-acetate", 4),
    /** Heptane, by what was measured with hexane. */
    HEPTANE_ETHYL_ACETATE("heptane", "ethyl-acetate", 4),
    /** By theory. */
    CYCLOHEXANE_ETHYL_ACETATE("cyclohexane", "ethyl-acetate", 3),
    /** By theory. */
    HEXANE_ACETONE("hexane", "acetone", 3);

    private final String weak;
    private final String strong;
    private final int ordered;

    WorksheetPair(String weak, String strong, int ordered) {
        this.weak = weak;
        this.strong = strong;
        this.ordered = ordered;
    }

    /** As it stands in requests: {@code hexane/ethyl-acetate}. */
    public String id() {
        return weak + "/" + strong;
    }

    /** The weaker solvent. */
    public Solvent weak(SolventCatalogue catalogue) {
        return catalogue.solventIn("pair", weak);
    }

    /** The stronger solvent. */
    public Solvent strong(SolventCatalogue catalogue) {
        return catalogue.solventIn("pair", strong);
    }

    /** How many compounds can be put into order with wide gaps only: fewer where the model is less sure. */
    int ordered() {
        return ordered;
    }
}
