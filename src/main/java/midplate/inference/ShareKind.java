package midplate.inference;

/** What beside G a fit may move at a share. */
enum ShareKind {
    /** Nothing. */
    PLAIN(1),
    /** L: what was run one day may climb sooner than what was run another day. */
    EARLY(0.5),
    /** a: no strong solvent covers the surface. */
    BARE(0.2);

    /**
     * L is taken to be of this size, and a to differ from 1 by it, before anything was read: so one share cannot take all its
     * scatter for them.
     */
    private final double usual;

    private static final double LEAST_HOLD = 0.5;

    ShareKind(double usual) {
        this.usual = usual;
    }

    /** What L or a multiplies at a node; 0 where there is neither. */
    double trait(TraitGrid grid, int node) {
        return switch (this) {
            case PLAIN -> 0;
            case EARLY -> grid.t(node);
            case BARE -> grid.c(node);
        };
    }

    /** By how much what was known before pulls L or a. */
    double pull(Climb climb) {
        double away = this == EARLY ? climb.early() : climb.hold() - 1;
        return -away / (usual * usual);
    }

    /** How much is known of L or a before. */
    double information() {
        return 1 / (usual * usual);
    }

    /** A share after a step of G and one of L or a; L stays 0 at least, a above 0. */
    Climb moved(Climb climb, double stepG, double step) {
        return new Climb(
                this == BARE ? StrictMath.max(LEAST_HOLD, climb.hold() + step) : climb.hold(),
                climb.strength() + stepG,
                this == EARLY ? StrictMath.max(0, climb.early() + step) : climb.early());
    }
}
