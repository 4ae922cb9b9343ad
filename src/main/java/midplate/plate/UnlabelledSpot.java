package midplate.plate;

/**
 * A spot that was seen without anybody saying which compound it is.
 *
 * @param index its place in the list in which it was given, from 0
 * @param reading where it lies
 */
public record UnlabelledSpot(int index, Reading reading) {}
