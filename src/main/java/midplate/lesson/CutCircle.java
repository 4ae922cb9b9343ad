package midplate.lesson;

/**
 * A round spot cut by a straight line at a distance d from its middle, both in units of its radius: what lies beyond the line. With
 * −1 ≤ d ≤ 1 its share is {@code (acos d − d·√(1 − d²))/π}, and its own middle lies {@code ⅔·(1 − d²)^{3/2}/(acos d − d·√(1 − d²))}
 * from that of the whole (own algebra: integrals over the segment). Below −1 that is all, above 1 nothing.
 *
 * @param share what lies beyond [1], 0 to 1
 * @param middle where its middle lies [radii], 0 for the whole
 */
record CutCircle(double share, double middle) {
    /** What lies beyond a line. */
    static CutCircle beyond(double d) {
        if (d <= -1) {
            return new CutCircle(1, 0);
        }
        if (d >= 1) {
            return new CutCircle(0, 1);
        }
        double half = Math.sqrt(1 - d * d);
        double area = Math.acos(d) - d * half;
        return new CutCircle(area / Math.PI, 2 * half * half * half / (3 * area));
    }
}
