package midplate.advice;

import midplate.words.Message;

/**
 * Something else to do than one plate in this pair.
 *
 * @param what it, in words
 * @param chance that every spot then reads inside the window [1]
 */
public record Alternative(Message what, double chance) {}
