package midplate.inference;

/** How much compounds of a fitted pair may differ: the model of this program, and simpler ones it is held against. */
public enum Form {
    /** In how weakly they are held, in area, and in how early the layers of their day let them climb: the model of this program. */
    THREE_TRAITS,
    /**
     * In the first two alone: the model before this one. Readings at the lines are numbers to it, and s is spread alike around a
     * line in c.
     */
    TWO_TRAITS,
    /** In how weakly they are held. */
    ONE_TRAIT
}
