package midplate.catalogue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import midplate.chemistry.EluentComponent;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;

/**
 * What Snyder's law takes of a solvent, with the published values it comes from.
 *
 * @param solvent the solvent itself, or the one it may be calculated as
 * @param component what the law needs
 * @param values strength, molecular area, molar mass and density, in this order
 */
public record StrengthInputs(Solvent solvent, EluentComponent component, List<PublishedValue> values) {
    /** Keeps its own copy. */
    public StrengthInputs {
        values = List.copyOf(values);
    }

    /** Of a solvent, else of the one that it may be calculated as; empty where a figure of both is missing. */
    public static Optional<StrengthInputs> of(
            SolventCatalogue catalogue, Solvent solvent, Sorbent sorbent, StrengthSeries series) {
        return own(catalogue, solvent, sorbent, series)
                .or(() -> catalogue
                        .standIn(solvent)
                        .flatMap(other -> own(catalogue, other.standsInFor(), sorbent, series)));
    }

    private static Optional<StrengthInputs> own(
            SolventCatalogue catalogue, Solvent solvent, Sorbent sorbent, StrengthSeries series) {
        String condition = series.condition(sorbent);
        return catalogue
                .component(solvent, sorbent, series)
                .map(component -> new StrengthInputs(
                        solvent,
                        component,
                        Stream.of(
                                        catalogue.strengthValue(solvent, sorbent, series),
                                        catalogue
                                                .preferred(solvent, PropertyKind.MOLECULAR_AREA.id(), condition)
                                                .or(() -> catalogue.preferred(
                                                        solvent, PropertyKind.MOLECULAR_AREA.id(), "")),
                                        catalogue.preferred(solvent, PropertyKind.MOLAR_MASS.id(), ""),
                                        catalogue.atRoomTemperature(solvent, PropertyKind.DENSITY.id()))
                                .flatMap(Optional::stream)
                                .toList()));
    }
}
