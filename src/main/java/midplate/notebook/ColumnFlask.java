package midplate.notebook;

/**
 * A flask into which tubes were put together.
 *
 * @param id its name in the run
 * @param fromTube the first tube, counted from 1
 * @param toTube the last tube
 * @param tareGrams mass of the empty flask [g]
 * @param grossGrams mass with what stayed in it, dry [g]
 */
public record ColumnFlask(String id, Entered fromTube, Entered toTube, Entered tareGrams, Entered grossGrams) {}
