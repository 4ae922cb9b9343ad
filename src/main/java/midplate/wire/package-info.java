/**
 * The one reader and writer of requests and answers in JSON, for every door: all faults of an input at once, each with
 * its field, what came, what is allowed and what to do. It computes no chemistry.
 */
@org.jspecify.annotations.NullMarked
package midplate.wire;
