package midplate.catalogue;

import java.util.List;

/**
 * An eluent and a plate for which hRf were tabulated together with reference spots.
 *
 * @param id its name in the table: {@code TC}
 * @param eluent what runs up the plate, by volume
 * @param conditions the layer and what is done to it before spotting; they belong to the values
 * @param source where the values come from
 * @param standards the reference spots, by growing hRf
 */
public record HrfSystem(String id, String eluent, String conditions, Source source, List<HrfStandard> standards) {
    /** Keeps its own copy. */
    public HrfSystem {
        standards = List.copyOf(standards);
    }

    /** Whether a value of it was recalled and not read. */
    public boolean isRecalled() {
        return standards.stream().anyMatch(each -> each.basis() == Basis.MEMORY);
    }

    /**
     * A reference spot.
     *
     * @param name what it is called
     * @param hrf its published hRf [1], above 0 and below 100
     * @param basis how the value got here
     */
    public record HrfStandard(String name, double hrf, Basis basis) {}
}
