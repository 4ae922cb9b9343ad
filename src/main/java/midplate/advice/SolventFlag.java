package midplate.advice;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import midplate.words.Message;

/**
 * What speaks against a solvent, read from its hazard statements, cautions and formula. A reminder only: the supplier's safety data
 * sheet comes first.
 */
public enum SolventFlag {
    /** Its formula has chlorine. */
    CHLORINATED(Message.of("other.flag-chlorinated"), Set.of()),
    /** The label says that it forms peroxides. */
    PEROXIDES(Message.of("other.flag-peroxides"), Set.of("EUH019")),
    /** It forms peroxides, too slowly for the label to say so. */
    SLOW_PEROXIDES(Message.of("other.flag-slow-peroxides"), Set.of()),
    /** A caution says that it harms the nerves. */
    NERVES(Message.of("other.flag-nerves"), Set.of()),
    /** It harms organs. */
    ORGANS(Message.of("other.flag-organs"), Set.of("H370", "H371", "H372", "H373")),
    /** It may cause cancer, or is suspected to. */
    CANCER(Message.of("other.flag-cancer"), Set.of("H340", "H341", "H350", "H351")),
    /** It may harm fertility or the unborn child, or is suspected to. */
    REPRODUCTION(Message.of("other.flag-reproduction"), Set.of("H360", "H361")),
    /** A poison through mouth, skin or lungs. */
    TOXIC(Message.of("other.flag-toxic"), Set.of("H300", "H301", "H310", "H311", "H330", "H331")),
    /** It burns skin and eyes. */
    CORROSIVE(Message.of("other.flag-corrosive"), Set.of("H314")),
    /** Its vapour catches fire more easily than that of other solvents. */
    EXTREMELY_FLAMMABLE(Message.of("other.flag-extremely-flammable"), Set.of("H224"));

    private final List<Message> said;
    private final List<String> statements;

    SolventFlag(Message said, Set<String> statements) {
        this.said = List.of(said);
        this.statements = List.copyOf(statements);
    }

    /** The word in answers: {@code slow-peroxides}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What it means, to be put into the words of a language. */
    public Message said() {
        return said.get(0);
    }

    /** Whether solvents with it come last where safety counts. */
    boolean isAvoided() {
        return this == CHLORINATED || this == PEROXIDES;
    }

    /** Whether a hazard statement, such as {@code H361d} or {@code H301+H311}, says it. */
    boolean isSaidBy(String code) {
        return List.of(code.split("\\+", -1)).stream()
                .anyMatch(each -> statements.stream().anyMatch(each::startsWith));
    }
}
