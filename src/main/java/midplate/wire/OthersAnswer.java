package midplate.wire;

import midplate.advice.Question;
import midplate.advice.Replacements;

/**
 * Other eluents, for a door that says it in words.
 *
 * @param question what was asked
 * @param replacements the other eluents
 * @param json the answer in JSON
 */
public record OthersAnswer(Question question, Replacements replacements, String json) {}
