/**
 * What the program says: a message is a key with its numbers, and a text file turns it into a sentence.
 * The bottom room: every other one may speak through it, and it knows none of them.
 */
@org.jspecify.annotations.NullMarked
package midplate.words;
