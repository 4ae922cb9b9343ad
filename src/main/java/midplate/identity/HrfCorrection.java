package midplate.identity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.HrfSystem;
import midplate.catalogue.HrfSystems;
import midplate.words.Message;

/**
 * Corrects hRf with reference spots: straight lines between (0, 0), the pairs (measured, published) and (100, 100).
 *
 * <p>With x between the measured x₀ and x₁ of neighbouring pairs, w = (x − x₀)/(x₁ − x₀) and the slope m = (y₁ − y₀)/(x₁ − x₀), the
 * corrected value is y = y₀ + m·(x − x₀) [hRf, 0 to 100]. Errors σ of reading, alike for all spots, give it the standard deviation
 * m·σ·√(1 + (1 − w)² + w²), where the ends 0 and 100 have no error (own algebra). Outside 0 to 100 it is refused.
 *
 * @see "Stead1982"
 */
public final class HrfCorrection {
    /** One reading of an Rf, σ [hRf] (own choice): 0.01 to 0.02 in Rf. */
    private static final double READING = 1.5;
    /** Factor of a 90 % band of a normal spread [1]. */
    private static final double BAND = 1.645;
    /** A reference spot so far from its published place says that the plate is another one [hRf] (own choice). */
    private static final double FAR = 15;

    private static final double END = 100;

    private final HrfSystems systems;

    private HrfCorrection(HrfSystems systems) {
        this.systems = systems;
    }

    /** With these systems. */
    public static HrfCorrection of(HrfSystems systems) {
        return new HrfCorrection(systems);
    }

    /** The systems that can be asked for. */
    public HrfSystems systems() {
        return systems;
    }

    /** A reference spot: measured and published [hRf]. */
    record Pair(String name, double measured, double published) {
        boolean isEnd() {
            return name.isEmpty();
        }
    }

    static List<Pair> pairs(HrfQuestion question, Optional<HrfSystem> system) {
        return question.standards().stream()
                .map(each -> new Pair(each.name(), each.measured(), published(each, system)))
                .toList();
    }

    private static double published(HrfQuestion.Standard standard, Optional<HrfSystem> system) {
        return system.flatMap(known -> known.standards().stream()
                        .filter(each -> each.name().equals(standard.name()))
                        .findFirst())
                .map(HrfSystem.HrfStandard::hrf)
                .orElseGet(() -> standard.published().orElse(Double.NaN));
    }

    /** The corrected spots. Refuses with the first of {@link HrfFaults#in}. */
    public HrfAnswer correct(HrfQuestion question) {
        HrfFaults.in(question, systems).stream().findFirst().ifPresent(fault -> {
            throw fault;
        });
        Optional<HrfSystem> system = question.system().flatMap(systems::byId);
        List<Pair> given = pairs(question, system);
        List<Pair> line = new ArrayList<>(given);
        line.add(new Pair("", 0, 0));
        line.add(new Pair("", END, END));
        line.sort(Comparator.comparingDouble(Pair::measured));
        return new HrfAnswer(
                question.measured().stream().map(spot -> corrected(spot, line)).toList(),
                system,
                Message.of("hrf.how", "count", given.size()),
                warnings(given, system));
    }

    private static HrfAnswer.Corrected corrected(HrfQuestion.Spot spot, List<Pair> line) {
        int right = 1;
        while (right + 1 < line.size() && spot.hrf() > line.get(right).measured()) {
            right++;
        }
        Pair low = line.get(right - 1);
        Pair high = line.get(right);
        double part = (spot.hrf() - low.measured()) / (high.measured() - low.measured());
        double slope = (high.published() - low.published()) / (high.measured() - low.measured());
        double value = low.published() + part * (high.published() - low.published());
        double ofLow = low.isEnd() ? 0 : 1 - part;
        double ofHigh = high.isEnd() ? 0 : part;
        double half = BAND * slope * READING * Math.sqrt(1 + ofLow * ofLow + ofHigh * ofHigh);
        double least = Math.max(0, value - half);
        double most = Math.min(END, value + half);
        Message text = Message.of(
                "hrf.corrected", "name", spot.name(), "from", spot.hrf(), "to", value, "low", least, "high", most);
        return new HrfAnswer.Corrected(spot.name(), value, least, most, text);
    }

    private static List<Message> warnings(List<Pair> given, Optional<HrfSystem> system) {
        List<Message> warnings = new ArrayList<>();
        system.ifPresent(known -> {
            warnings.add(Message.of("hrf.conditions", "id", known.id()));
            if (known.isRecalled()) {
                warnings.add(Message.of("hrf.from-memory", "id", known.id()));
            }
            if (given.size() < known.standards().size()) {
                warnings.add(Message.of(
                        "hrf.fewer-standards",
                        "count",
                        given.size(),
                        "all",
                        known.standards().size()));
            }
        });
        for (Pair pair : given) {
            if (Math.abs(pair.measured() - pair.published()) > FAR) {
                warnings.add(Message.of(
                        "hrf.far", "name", pair.name(), "measured", pair.measured(), "published", pair.published()));
            }
        }
        return warnings;
    }
}
