package midplate.lesson;

import java.util.Optional;

/** How much students are told of the unknowns of an exercise. Done is a plate on which every spot is in the window and apart. The order is part of every code. */
public enum ExerciseLevel {
    /** Three unknowns whose groups are told. */
    GROUPS_TOLD("groups-told", 3),
    /** Three unknowns of which only the number is told. */
    NUMBER_TOLD("number-told", 3),
    /** Two unknowns that are hard to part. */
    HARD_TO_PART("hard-to-part", 2);

    private final String id;
    private final int unknowns;

    ExerciseLevel(String id, int unknowns) {
        this.id = id;
        this.unknowns = unknowns;
    }

    /** As it stands in requests and answers. */
    public String id() {
        return id;
    }

    /** How many unknowns it has. */
    public int unknowns() {
        return unknowns;
    }

    /** The level of that id, written exactly so. */
    public static Optional<ExerciseLevel> byId(String id) {
        for (ExerciseLevel level : values()) {
            if (level.id.equals(id)) {
                return Optional.of(level);
            }
        }
        return Optional.empty();
    }
}
