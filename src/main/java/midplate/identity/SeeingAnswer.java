package midplate.identity;

import java.util.List;
import midplate.catalogue.WayOfSeeing;
import midplate.words.Message;

/**
 * How to see compounds on a plate.
 *
 * @param ways all ways in the order of use, what leaves the plate as it is first
 * @param enough ways that together show every compound that can be shown, in the order of use: each compound first by one that
 *     spares the plate where there is such a one, and no more ways than that takes; empty where nothing is known
 * @param order what to do in which order
 * @param cautions what to mind, the safety data sheet first
 */
public record SeeingAnswer(List<Way> ways, List<WayOfSeeing> enough, Message order, List<Message> cautions) {
    /** Keeps its own copies. */
    public SeeingAnswer {
        ways = List.copyOf(ways);
        enough = List.copyOf(enough);
        cautions = List.copyOf(cautions);
    }

    /**
     * One way.
     *
     * @param way which
     * @param answers what it does with each compound, in the order asked
     */
    public record Way(WayOfSeeing way, List<Seen> answers) {
        /** Keeps its own copy. */
        public Way {
            answers = List.copyOf(answers);
        }
    }

    /**
     * What a way does with a compound.
     *
     * @param name of the compound
     * @param sight what it does
     * @param because why
     */
    public record Seen(String name, Sight sight, Message because) {}
}
