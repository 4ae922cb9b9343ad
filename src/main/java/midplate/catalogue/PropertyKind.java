package midplate.catalogue;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What a property may hold: its units, and the interval outside which a value is surely a slip. */
@SuppressWarnings("ImmutableEnumChecker") // both lists are made by List.of and never change
enum PropertyKind {
    ELUENT_STRENGTH(0, 1.2, ""),
    MOLECULAR_AREA(1, 15, "Snyder units"),
    DENSITY(0.5, 2, "g/mL", ""),
    MOLAR_MASS(30, 200, "g/mol"),
    BOILING_POINT(20, 200, "°C"),
    BOILING_RANGE_LOW(20, 200, "°C"),
    BOILING_RANGE_HIGH(20, 200, "°C"),
    FLASH_POINT(-60, 100, "°C", ""),
    VISCOSITY(0.1, 5, "mPa s", "cP"),
    SURFACE_TENSION(10, 80, "mN/m"),
    REFRACTIVE_INDEX(1.2, 1.7, ""),
    UV_CUTOFF(170, 400, "nm"),
    POLARITY_INDEX(-0.5, 12, ""),
    SELECTIVITY_GROUP("I", "II", "III", "IV", "V", "VIa", "VIb", "VII", "VIII"),
    LOCALIZATION_CLASS(Arrays.stream(LocalizationClass.values())
            .filter(known -> known != LocalizationClass.UNKNOWN)
            .map(LocalizationClass::id)
            .toArray(String[]::new)),
    STABILIZER,
    HAZARD_STATEMENTS;

    /** A flash point may be printed as a word. */
    static final String NONE = "none";

    private static final List<String> STRENGTH_CONDITIONS = List.of("silica older", "silica newer", "alumina");

    private static final Map<String, PropertyKind> BY_ID = new LinkedHashMap<>();

    static {
        for (PropertyKind kind : values()) {
            BY_ID.put(kind.id(), kind);
        }
    }

    private final String id = name().toLowerCase(Locale.ROOT);
    private final double low;
    private final double high;
    private final List<String> units;
    private final List<String> words;

    PropertyKind(double low, double high, String... units) {
        this.low = low;
        this.high = high;
        this.units = List.of(units);
        this.words = List.of();
    }

    PropertyKind(String... words) {
        this.low = Double.NaN;
        this.high = Double.NaN;
        this.units = List.of("");
        this.words = List.of(words);
    }

    String id() {
        return id;
    }

    static Map<String, PropertyKind> byId() {
        return Collections.unmodifiableMap(BY_ID);
    }

    /** Refuses a row whose value, unit or condition this property cannot have. */
    void check(CsvRow row, Map<String, String> hazardTexts) {
        row.oneOf("unit", units);
        if (this == ELUENT_STRENGTH) {
            row.oneOf("condition", STRENGTH_CONDITIONS);
        }
        if (this == HAZARD_STATEMENTS) {
            checkCodes(row, hazardTexts);
        } else if (this == FLASH_POINT && row.text("value").equals(NONE)) {
            return;
        } else if (!words.isEmpty()) {
            row.oneOf("value", words);
        } else if (this == STABILIZER) {
            row.filled("value");
        } else {
            row.number("value", low, high);
        }
    }

    private static void checkCodes(CsvRow row, Map<String, String> hazardTexts) {
        for (String code : row.filled("value").split(" ", -1)) {
            if (!hazardTexts.containsKey(code)) {
                throw row.bad(
                        "value",
                        "codes of " + HazardReader.FILE + " with one blank between, not \"" + code + "\"",
                        "Correct the code, or add its wording there.");
            }
        }
    }
}
