/**
 * The door for other programs: one request a line in, one answer a line out, in the same order.
 * It translates and never computes.
 */
@org.jspecify.annotations.NullMarked
package midplate.batch;
