package midplate.catalogue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import midplate.chemistry.EluentComponent;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.Language;
import midplate.words.Refusal;

/**
 * The solvents this program offers and everything published about them that it uses.
 *
 * <p>Read once at start; a file that cannot be vouched for is refused with a {@link BadSolventData}. What is not known is
 * empty, never 0.
 */
public final class SolventCatalogue {
    private static final String ROOM_TEMPERATURE = "20 °C";

    private final Map<String, Solvent> solvents;
    private final NameIndex names;
    private final Map<String, Source> sources;
    private final Map<Language, Map<String, String>> hazardTexts;
    private final Map<String, List<PublishedValue>> values;
    private final Map<String, Map<String, List<PublishedValue>>> byProperty;
    private final List<Immiscibility> immiscible;
    private final Map<String, StandIn> standIns;
    private final Map<String, List<Caution>> cautions;
    private final List<Gap> gaps;
    private final List<Streaker> streakers;

    private SolventCatalogue(DataFolder folder) {
        sources = SourceReader.read(folder);
        solvents = SolventReader.read(folder);
        names = new NameIndex(solvents.values());
        hazardTexts = HazardReader.readAll(folder, sources);
        values = PropertyReader.read(folder, solvents, sources, wordings(Language.ENGLISH));
        byProperty = byProperty(values);
        PairReader pairs = new PairReader(folder, solvents, sources);
        immiscible = pairs.immiscible();
        standIns = pairs.standIns();
        cautions = NoteReader.cautions(folder, solvents, sources);
        gaps = NoteReader.gaps(folder, solvents, values);
        streakers = StreakerReader.read(folder, solvents, sources);
    }

    /** The catalogue packed with the program. */
    public static SolventCatalogue builtIn() {
        return new SolventCatalogue(DataFolder.packed());
    }

    /** A catalogue from a folder of files like those of {@code solvent-data}. */
    public static SolventCatalogue read(Path folder) {
        return new SolventCatalogue(DataFolder.of(folder));
    }

    /** All solvents, in the order of the file. */
    public List<Solvent> solvents() {
        return List.copyOf(solvents.values());
    }

    /**
     * The solvent of that id, name or synonym; upper and lower case, hyphens and blanks alike.
     *
     * @throws Refusal when there is none, with the nearest names; its field is {@code solvent}
     */
    public Solvent solvent(String nameIdOrSynonym) {
        return solventIn("solvent", nameIdOrSynonym);
    }

    /**
     * Like {@link #solvent(String)}, with the field of the input that the name stands in.
     *
     * @throws Refusal when there is none, with the nearest names
     */
    public Solvent solventIn(String field, String nameIdOrSynonym) {
        return find(nameIdOrSynonym).orElseThrow(() -> names.unknown(field, nameIdOrSynonym));
    }

    /** The solvent of that id, name or synonym; empty when there is none. */
    public Optional<Solvent> find(String nameIdOrSynonym) {
        return names.find(nameIdOrSynonym);
    }

    /** All values of a solvent, competing ones included, in the order of the file. */
    public List<PublishedValue> values(Solvent solvent) {
        return values.getOrDefault(solvent.id(), List.of());
    }

    /**
     * All values of one property of a solvent.
     *
     * @param property such as {@code density}
     * @throws IllegalArgumentException when there is no such property
     */
    public List<PublishedValue> values(Solvent solvent, String property) {
        if (!PropertyKind.byId().containsKey(property)) {
            throw new IllegalArgumentException("property \"" + property + "\"; allowed: "
                    + PropertyKind.byId().keySet());
        }
        return byProperty.getOrDefault(solvent.id(), Map.of()).getOrDefault(property, List.of());
    }

    private static Map<String, Map<String, List<PublishedValue>>> byProperty(Map<String, List<PublishedValue>> values) {
        Map<String, Map<String, List<PublishedValue>>> sorted = new HashMap<>();
        values.forEach((solvent, all) -> sorted.put(
                solvent,
                all.stream()
                        .collect(Collectors.groupingBy(
                                PublishedValue::property, HashMap::new, Collectors.toUnmodifiableList()))));
        return sorted;
    }

    /** The one value of a property under a condition that a calculation takes; empty when there is none. */
    public Optional<PublishedValue> preferred(Solvent solvent, String property, String condition) {
        PublishedValue first = null;
        int rivals = 0;
        for (PublishedValue value : values(solvent, property)) {
            if (value.condition().equals(condition)) {
                if (value.preferred()) {
                    return Optional.of(value);
                }
                first = rivals++ == 0 ? value : first;
            }
        }
        return rivals == 1 ? Optional.ofNullable(first) : Optional.empty();
    }

    /** The value of a property at 20 °C that a calculation takes; empty when there is none. */
    public Optional<PublishedValue> atRoomTemperature(Solvent solvent, String property) {
        return preferred(solvent, property, ROOM_TEMPERATURE);
    }

    /** ε⁰ [1] with its source, on that sorbent in that series; empty when it is not printed there. */
    public Optional<PublishedValue> strengthValue(Solvent solvent, Sorbent sorbent, StrengthSeries series) {
        return preferred(solvent, PropertyKind.ELUENT_STRENGTH.id(), series.condition(sorbent));
    }

    /** ε⁰ [1], on that sorbent in that series; empty when it is not printed there. */
    public Optional<Double> strength(Solvent solvent, Sorbent sorbent, StrengthSeries series) {
        return strengthValue(solvent, sorbent, series).map(PublishedValue::number);
    }

    /**
     * What Snyder's law needs about a solvent; empty when strength, area, molar mass or density is not known. No stand-in is
     * taken silently: ask {@link #standIn(Solvent)}.
     */
    public Optional<EluentComponent> component(Solvent solvent, Sorbent sorbent, StrengthSeries series) {
        Optional<Double> strength = strength(solvent, sorbent, series);
        Optional<Double> area = preferred(solvent, PropertyKind.MOLECULAR_AREA.id(), series.condition(sorbent))
                .or(() -> preferred(solvent, PropertyKind.MOLECULAR_AREA.id(), ""))
                .map(PublishedValue::number);
        Optional<Double> mass =
                preferred(solvent, PropertyKind.MOLAR_MASS.id(), "").map(PublishedValue::number);
        Optional<Double> density =
                preferred(solvent, PropertyKind.DENSITY.id(), ROOM_TEMPERATURE).map(PublishedValue::number);
        if (strength.isEmpty() || area.isEmpty() || mass.isEmpty() || density.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(EluentComponent.of(strength.get(), mass.get(), density.get(), area.get()));
    }

    /** How the solvent sits on silica; {@link LocalizationClass#UNKNOWN} when that was not found. */
    public LocalizationClass localization(Solvent solvent) {
        return preferred(solvent, PropertyKind.LOCALIZATION_CLASS.id(), "")
                .flatMap(value -> LocalizationClass.byId(value.value()))
                .orElse(LocalizationClass.UNKNOWN);
    }

    /** Why two solvents are no eluent together, in either order; empty when nothing speaks against them. */
    public Optional<Immiscibility> immiscible(Solvent one, Solvent other) {
        return Optional.ofNullable(PairReader.find(immiscible, one, other));
    }

    /** The better known solvent that this one may be calculated as, if there is one. */
    public Optional<StandIn> standIn(Solvent solvent) {
        return Optional.ofNullable(standIns.get(solvent.id()));
    }

    /** Every publication by its key. */
    public Map<String, Source> sources() {
        return sources;
    }

    /** The hazard statements of a solvent, each with its English wording and the row it comes from. */
    public List<Hazard> hazards(Solvent solvent) {
        return hazards(solvent, Language.ENGLISH);
    }

    /** The same with the wording of a language, in English where it has none. */
    public List<Hazard> hazards(Solvent solvent, Language language) {
        Map<String, String> english = wordings(Language.ENGLISH);
        Map<String, String> wordings = wordings(language);
        List<Hazard> hazards = new ArrayList<>();
        for (PublishedValue value : values(solvent, PropertyKind.HAZARD_STATEMENTS.id())) {
            Arrays.stream(value.value().split(" ", -1))
                    .map(code -> new Hazard(code, wordings.getOrDefault(code, english.getOrDefault(code, "")), value))
                    .forEach(hazards::add);
        }
        return List.copyOf(hazards);
    }

    private Map<String, String> wordings(Language language) {
        return hazardTexts.getOrDefault(language, Map.of());
    }

    /** The functional groups whose compounds tend to streak on silica, in the order of the file. */
    public List<Streaker> streakers() {
        return streakers;
    }

    /** The cautions of this solvent beyond its hazard statements. */
    public List<Caution> cautions(Solvent solvent) {
        return cautions.getOrDefault(solvent.id(), List.of());
    }

    /** The cautions of every solvent, the safety data sheet first. */
    public List<Caution> generalCautions() {
        return cautions.getOrDefault(NoteReader.ANY, List.of());
    }

    /** What was looked for and not found. */
    public List<Gap> gaps() {
        return gaps;
    }
}
