package midplate.wire;

import midplate.advice.Question;
import midplate.advice.ScoutingPlan;

/**
 * Plates to run at once, for a door that says it in words.
 *
 * @param question what was asked
 * @param plan the plates and why
 * @param json the answer in JSON
 */
public record ScoutingAnswer(Question question, ScoutingPlan plan, String json) {}
