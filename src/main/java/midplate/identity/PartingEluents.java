package midplate.identity;

import java.util.List;

/** In which eluents two compounds are most likely to part, given what the plates at hand showed. */
public interface PartingEluents {
    /**
     * The eluents, the likeliest first: other ratios of the pair at hand, and other pairs.
     *
     * @param here the eluent at hand, in which the compounds have their Rf
     * @param one a compound
     * @param other another one, perhaps at the same Rf here
     * @param most how many at most
     */
    List<NextEluent> apart(PlateEluent here, Compound one, Compound other, int most);
}
