package midplate.catalogue;

import java.util.List;
import java.util.Locale;
import midplate.words.Message;

/**
 * A way to see on a plate what has no colour of its own.
 *
 * @param id its name in files and requests: {@code uv-254}
 * @param name what it is called, in English
 * @param leaves what becomes of the spots
 * @param heat whether the plate is heated
 * @param how what to do, in English; the recipe of a stain is the laboratory's own
 * @param negative what it means when nothing shows, in English
 * @param cautions what to mind, by the keys of {@link #CAUTIONS}
 * @param leastUg the smallest amount seen of compounds that it shows well [µg], an order of magnitude
 * @param mostUg the smallest amount seen of those that it shows badly [µg], an order of magnitude
 * @param amountConfidence H, M or L of the two amounts
 * @param source the publication, or common practice
 * @param basis how the row got here
 * @param confidence H, M or L of a row from memory
 * @param groups what it answers to
 */
public record WayOfSeeing(
        String id,
        String name,
        Leaves leaves,
        Heat heat,
        String how,
        String negative,
        List<String> cautions,
        double leastUg,
        double mostUg,
        String amountConfidence,
        Source source,
        Basis basis,
        String confidence,
        List<Row> groups) {
    /** In place of a group: it answers to nearly every compound. */
    public static final String ANY = "any";

    /** Among what is to be minded: a dry plate. */
    public static final String DRY = "dry";

    /** What may have to be minded, in the order in which it is said. */
    public static final List<String> CAUTIONS =
            List.of("cabinet", DRY, "heat", "iodine", "oxidizer", "acid", "dnph", "skin", "iron", "char", "metal");

    /** Keeps its own copies. */
    public WayOfSeeing {
        cautions = List.copyOf(cautions);
        groups = List.copyOf(groups);
    }

    /** What becomes of the spots on the plate. */
    public enum Leaves {
        /** They are as before. */
        UNCHANGED,
        /** They come back, mostly. */
        REVERSIBLE,
        /** They are gone for any other way. */
        DESTROYED;

        /** The word in files and answers: {@code unchanged}. */
        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Whether the plate is heated. */
    public enum Heat {
        /** Not at all. */
        NONE,
        /** Warmed. */
        GENTLE,
        /** Heated until it chars or turns deep blue. */
        STRONG;

        /** The word in files and answers: {@code gentle}. */
        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** How surely it answers to a group. */
    public enum Sureness {
        /** As a rule. */
        SHOWS,
        /** Weakly, or only some compounds. */
        MAY_SHOW;

        /** The word in files and answers: {@code may-show}. */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * A group that it answers to.
     *
     * @param group id of the group, or {@link #ANY}
     * @param sureness how surely
     * @param least so many of the group must be there
     * @param source the publication, or common practice
     * @param basis how the row got here
     * @param confidence H, M or L of a row from memory
     * @param note what to know of the row; may be empty
     */
    public record Row(
            String group, Sureness sureness, int least, Source source, Basis basis, String confidence, String note) {}

    /** What it is called in the reader's language. */
    public Message said() {
        return Message.of("seeing.way-" + id);
    }
}
