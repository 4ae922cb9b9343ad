package midplate.benchmark;

import java.util.EnumMap;
import java.util.Map;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.StrengthSeries;
import midplate.chemistry.EluentComponent;
import midplate.chemistry.EluentStrength;
import midplate.chemistry.Sorbent;
import midplate.inference.PairName;

/**
 * Published eluent strengths of one series, without any calibration: {@code G = ln(10)·α'·A_s·ε_AB}, with α' = 0.7 for silica
 * and one area A_s = 10 for every compound.
 *
 * @see "Snyder1968"
 */
final class SnyderLaw implements StrengthLaw {
    private static final double ACTIVITY = 0.7;
    private static final double SOLUTE_AREA = 10;

    private final Map<PairName, EluentComponent> weak = new EnumMap<>(PairName.class);
    private final Map<PairName, EluentComponent> strong = new EnumMap<>(PairName.class);

    SnyderLaw(SolventCatalogue catalogue, StrengthSeries series) {
        for (PairName pair : PairName.values()) {
            weak.put(pair, component(catalogue, pair.weak(), series));
            strong.put(pair, component(catalogue, pair.strong(), series));
        }
    }

    private static EluentComponent component(SolventCatalogue catalogue, String id, StrengthSeries series) {
        return catalogue
                .component(catalogue.solvent(id), Sorbent.SILICA, series)
                .orElseThrow(() -> new IllegalStateException("No strength of " + id + " in series " + series + "."));
    }

    @Override
    public double strength(PairName pair, double percent) {
        double mixture = EluentStrength.binary(of(weak, pair), of(strong, pair), Math.min(1, percent / 100), ACTIVITY);
        return EluentStrength.logCapacityRatio(ACTIVITY, SOLUTE_AREA, 0, mixture);
    }

    private static EluentComponent of(Map<PairName, EluentComponent> components, PairName pair) {
        EluentComponent component = components.get(pair);
        if (component == null) {
            throw new IllegalStateException("No component for " + pair + ".");
        }
        return component;
    }
}
