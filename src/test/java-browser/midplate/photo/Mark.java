package midplate.photo;

/**
 * What a person would mark, or leave, as one spot.
 *
 * @param lane index of its lane, from the left
 * @param xMm from the plate's left edge [mm]
 * @param mm the middle of its outline along the lane where the darkening is half its largest, from the lower edge [mm]
 * @param rf the same as a share of the run there
 * @param contrast 1 − I/I₀ at its darkest in linear light in the channel that shows it best, with the glare that lies on it
 * @param sizeMm length along the lane where the darkening is above a fifth of its largest [mm]
 * @param shape compact, streak, sharp-head or merged
 * @param form how it was made
 * @param marked whether a person would mark it
 */
record Mark(
        int lane,
        double xMm,
        double mm,
        double rf,
        double contrast,
        double sizeMm,
        String shape,
        String form,
        boolean marked) {}
