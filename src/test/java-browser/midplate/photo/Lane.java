package midplate.photo;

/**
 * A lane: straight between its places at the start line and at the front, from the left edge [mm].
 *
 * @param startXMm where it was spotted [mm]
 * @param frontXMm where it ends at the front [mm]
 */
record Lane(double startXMm, double frontXMm) {
    double at(double rf) {
        return startXMm + (frontXMm - startXMm) * rf;
    }
}
