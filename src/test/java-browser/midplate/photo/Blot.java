package midplate.photo;

/**
 * One substance on a plate.
 *
 * @param lane index of its lane
 * @param form how it lies
 * @param xMm its middle, from the left edge [mm]
 * @param mm its middle, from the lower edge [mm]
 * @param lengthMm along the run [mm]
 * @param widthMm across [mm]
 * @param bend of a crescent [1/mm]
 * @param own its unevenness
 * @param most the most of {@link Form#at}, so that the amount is 1 there
 * @param absorbs what it absorbs where it is most, by channel: added to the ratio of absorption and scattering
 * @param bleaches the share of the ground's dye that it takes away where it is most, 0…1
 */
record Blot(
        int lane,
        Form form,
        double xMm,
        double mm,
        double lengthMm,
        double widthMm,
        double bend,
        Unevenness own,
        double most,
        double[] absorbs,
        double bleaches) {
    /** How far from its middle there can be any of it [mm]. */
    double reach() {
        return 1.6 * Math.max(lengthMm, widthMm) + 2;
    }

    /** The amount at a place, 0…1: what runs less far at the plate's edge bends with the run. */
    double amount(Course course, double x, double h) {
        double level = course.heightIn(xMm, x, h);
        if (Math.abs(level - mm) > reach() || Math.abs(x - xMm) > reach()) {
            return 0;
        }
        return form.at(x - xMm, level - mm, widthMm, lengthMm, bend, own) / most;
    }

    static double most(Form form, double length, double width, double bend, Unevenness own) {
        double most = 0;
        for (double v = -length; v <= length; v += 0.05) {
            for (double u = -width; u <= width; u += 0.1) {
                most = Math.max(most, form.at(u, v, width, length, bend, own));
            }
        }
        return most;
    }
}
