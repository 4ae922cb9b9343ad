package midplate.lesson;

/**
 * A spot as a pair of students read it.
 *
 * @param pair who read it
 * @param plate on which plate
 * @param lane in which lane of it, or for which time, from 1
 * @param spot its place among the spots of the class, from 0
 * @param rf what they read [1], 0 to 1
 * @param how how that came about
 */
public record ClassReading(String pair, ClassPlate plate, int lane, int spot, double rf, HowRead how) {}
