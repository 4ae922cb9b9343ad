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
 * m·σ·√(1 + (1 − w)² + w²), where the ends 0 and 100 have no error (own algebra). To its square come that of what corrected values still
 * differ by between laboratories, and, where a reference spot beside it is far off or the slope unlike 1, that of half of what the
 * farther one is off by. Outside 0 to 100 it is refused.
 *
 * @see "Stead1982"
 */
public final class HrfCorrection {
    /** One reading of an Rf, σ [hRf] (own choice): 0.01 to 0.02 in Rf. */
    private static final double READING = 1.5;
    /** Factor of a 90 % band of a normal spread [1]. */
    private static final double BAND = 1.645;
    /** A reference spot so far from its published place says that the plate is another one [hRf] (own choice). */
    private static final double FAR = 10;
    /** What corrected values still differ by between laboratories [hRf]; from memory: 2 to 4. */
    private static final double LABORATORIES = 100 * PlateComparison.AFTER_CORRECTION;
    /** A line is unlike that of the table where its slope is above this or below one by this [1] (own choice). */
    private static final double STEEP = 2;
    /** The share of that offset which the correction may leave [1] (own choice). */
    private static final double OFFSET_LEFT = 0.5;

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

        double offset() {
            return Math.abs(measured - published);
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
                warnings(given, line, system),
                cautions(system));
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
        double reading = slope * READING * Math.sqrt(1 + ofLow * ofLow + ofHigh * ofHigh);
        double offset = Math.max(low.offset(), high.offset());
        double doubtful = offset > FAR || isUnlike(slope) ? OFFSET_LEFT * offset : 0;
        double half = BAND * Math.sqrt(reading * reading + LABORATORIES * LABORATORIES + doubtful * doubtful);
        double least = Math.max(0, value - half);
        double most = Math.min(END, value + half);
        Message text = Message.of(
                "hrf.corrected", "name", spot.name(), "from", spot.hrf(), "to", value, "low", least, "high", most);
        return new HrfAnswer.Corrected(spot.name(), value, least, most, text);
    }

    private static boolean isUnlike(double slope) {
        return slope > STEEP || slope < 1 / STEEP;
    }

    private static List<Message> cautions(Optional<HrfSystem> system) {
        List<Message> cautions = new ArrayList<>();
        cautions.add(Message.of("hrf.caution-standards"));
        cautions.add(Message.of("hrf.caution-eluent"));
        if (system.isEmpty() || system.get().conditions().contains("potassium hydroxide")) {
            cautions.add(Message.of("hrf.caution-dip"));
        }
        cautions.add(Message.of("hrf.caution-sheet"));
        return cautions;
    }

    private static List<Message> warnings(List<Pair> given, List<Pair> line, Optional<HrfSystem> system) {
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
            if (pair.offset() > FAR) {
                warnings.add(Message.of(
                        "hrf.far", "name", pair.name(), "measured", pair.measured(), "published", pair.published()));
            }
        }
        for (int i = 1; i < line.size(); i++) {
            Pair low = line.get(i - 1);
            Pair high = line.get(i);
            double slope = (high.published() - low.published()) / (high.measured() - low.measured());
            if (isUnlike(slope)) {
                warnings.add(Message.of(
                        "hrf.slope",
                        "from",
                        low.measured(),
                        "to",
                        high.measured(),
                        "publishedFrom",
                        low.published(),
                        "publishedTo",
                        high.published()));
            }
        }
        return warnings;
    }
}
