package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import midplate.inference.SpotGuess;

/** Writes which unlabelled spot may be which. */
final class GuessWriter {
    private static final int DECIMALS = 4;
    private static final int MOST_OTHERS = 4;
    /** What is less likely is not told [1]. */
    private static final double LEAST = 0.005;

    private GuessWriter() {}

    static ArrayNode write(List<SpotGuess> guesses) {
        ArrayNode list = JsonWriting.array();
        for (SpotGuess each : guesses) {
            ObjectNode node = list.addObject();
            node.put("run", each.run());
            node.put("lane", each.lane());
            node.put("index", each.index());
            node.set("rf", JsonWriting.number(each.reading().rf(), DECIMALS));
            possibility(node, "guess", each.guess());
            ArrayNode others = node.putArray("others");
            each.possibilities().stream()
                    .skip(1)
                    .limit(MOST_OTHERS)
                    .filter(other -> other.probability() >= LEAST)
                    .forEach(other -> possibility(others.addObject(), "spots", other));
        }
        return list;
    }

    private static void possibility(ObjectNode node, String name, SpotGuess.Possibility possibility) {
        possibility.spots().forEach(node.putArray(name)::add);
        node.set("probability", JsonWriting.number(possibility.probability(), DECIMALS));
    }
}
