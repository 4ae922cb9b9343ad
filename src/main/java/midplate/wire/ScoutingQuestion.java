package midplate.wire;

import java.util.LinkedHashMap;
import java.util.Map;
import midplate.advice.Scouting;
import midplate.catalogue.SolventCatalogue;
import midplate.plate.Setting;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * A question about plates to run at once: a question about the next plate, and how many jars are free.
 *
 * @param asked the question about the next plate
 * @param jars how many plates may run at once, 1 to 3
 */
record ScoutingQuestion(Asked asked, int jars) {
    static final String JARS = "jars";
    /** Taken where none is said: two plates fit beside each other on most benches; our own choice. */
    static final int USUAL_JARS = 2;

    /**
     * Reads it.
     *
     * @throws BadInput with all faults
     */
    static ScoutingQuestion read(
            Json value, SolventCatalogue catalogue, Compounds compounds, Setting ifUnsaid, FaultList faults) {
        int jars = USUAL_JARS;
        Json rest = value;
        if (value instanceof Json.Fields fields) {
            Map<String, Json> members = new LinkedHashMap<>(fields.members());
            Json came = members.remove(JARS);
            jars = came == null ? USUAL_JARS : jars(came, faults);
            rest = new Json.Fields(members);
        }
        return new ScoutingQuestion(new QuestionReader(catalogue, compounds, ifUnsaid, faults).read(rest), jars);
    }

    private static int jars(Json came, FaultList faults) {
        double jars = JsonFields.number(JARS, came, faults).orElse(USUAL_JARS);
        if (jars >= 1 && jars <= Scouting.MOST_JARS && jars == Math.rint(jars)) {
            return (int) jars;
        }
        faults.add(
                JARS,
                Message.of("scouting.jars-out-of-range", "jars", came.shown(), "most", Scouting.MOST_JARS),
                came.shown(),
                Message.of("allowed.whole-number", "interval", Allowed.closed(1, Scouting.MOST_JARS)),
                Message.of("todo.give-jars"));
        return USUAL_JARS;
    }
}
