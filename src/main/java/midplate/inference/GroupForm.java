package midplate.inference;

/** What is thought of the effects of functional groups before they are fitted. */
public enum GroupForm {
    /** Published adsorption energies say where they lie, and localization lets the strongest group count in full. */
    ENERGIES,
    /** Nothing but that all are about equally large: ridge regression on the same counts. */
    RIDGE
}
