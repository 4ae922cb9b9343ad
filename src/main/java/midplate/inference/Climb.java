package midplate.inference;

/**
 * What an eluent does to every spot: {@code η = a·c + s·G + t·L}, of which a, G and L are the eluent's, c and s the spot's, and t that of the day it was run on.
 *
 * @param hold a, by how much of what it is in other eluents compounds differ in how weakly they are held [1]; 1 but where no strong
 *     solvent covers the surface
 * @param strength G, the strength [ln units]
 * @param early L, by how much spots on layers that let them climb early are ahead of the average [ln units]; 0 where days are alike
 */
public record Climb(double hold, double strength, double early) {
    /** η [1] of a spot with these traits. */
    public double eta(double c, double s, double t) {
        return hold * c + s * strength + t * early;
    }
}
