package midplate.identity;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.words.Message;

/**
 * How far a reaction has come.
 *
 * @param state the verdict
 * @param inWords the verdict in a sentence
 * @param reasons what it rests on, spot by spot
 * @param chances the chance of each state but "not told" [1]; they sum to 1; empty where too little was seen
 * @param lookAgain when to run the next plate; empty where nothing is left to wait for
 * @param courses of each spot what to expect over time, by its name
 * @param apart how far starting material and product stand apart
 * @param next eluents that part the two best
 * @param practice how to take such a plate
 * @param warnings what makes the verdict doubtful
 * @param cautions what may hurt somebody
 */
public record ReactionAnswer(
        ReactionState state,
        Message inWords,
        List<Message> reasons,
        Map<ReactionState, Double> chances,
        Optional<LookAgain> lookAgain,
        Map<String, Course> courses,
        Optional<Apart> apart,
        List<NextEluent> next,
        List<Message> practice,
        List<Message> warnings,
        List<Message> cautions) {
    /**
     * A reminder to run the next plate.
     *
     * @param afterMinutes after the latest plate [min]
     * @param atMinutes after the reaction was begun [min]
     * @param text in a sentence
     */
    public record LookAgain(double afterMinutes, double atMinutes, Message text) {}

    /**
     * The grades to expect of a spot, in the steps of the eye.
     *
     * @param minutes times [min], rising
     * @param value the mean at each time, in [0, 4]
     * @param low below with probability 0.05
     * @param high above with probability 0.05
     */
    public record Course(List<Double> minutes, List<Double> value, List<Double> low, List<Double> high) {}

    /**
     * How far starting material and product stand apart.
     *
     * @param gapRf the distance of the two [1], where both were read
     * @param text in a sentence
     */
    public record Apart(OptionalDouble gapRf, Message text) {}
}
