package midplate.catalogue;

/**
 * A row of the published table of glass columns, as printed: bed 15 cm high, head falling 5 cm a minute, target at Rf 0.35.
 *
 * @param diameterMm inner diameter [mm]
 * @param eluentMl eluent for packing and elution [ml]
 * @param loadWideMg typical load where spots lie at least 0.2 apart in Rf [mg]
 * @param loadNarrowMg where they lie at least 0.1 apart [mg]
 * @param fractionMl volume of a fraction [ml]
 * @param source the publication
 * @param basis how the row got here
 * @param confidence of a row from memory: H, M or L
 * @see "Still1978"
 */
public record FlashColumn(
        double diameterMm,
        double eluentMl,
        double loadWideMg,
        double loadNarrowMg,
        double fractionMl,
        Source source,
        Basis basis,
        String confidence) {}
