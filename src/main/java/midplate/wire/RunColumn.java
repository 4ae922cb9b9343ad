package midplate.wire;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The columns of a table of runs, with what else people call them in English and German. */
enum RunColumn {
    PLATE(
            "plate",
            "plateno",
            "platenr",
            "platenumber",
            "platte",
            "plattennr",
            "plattennummer",
            "dc",
            "dcplatte",
            "tlc",
            "tlcplate",
            "tlcplateno",
            "plateid",
            "run",
            "lauf"),
    WEAK(
            "weak",
            "weaker",
            "weaksolvent",
            "weakersolvent",
            "solventa",
            "solvent1",
            "schwach",
            "schwaecheres",
            "loesungsmittela",
            "loesungsmittel1"),
    STRONG(
            "strong",
            "stronger",
            "strongsolvent",
            "strongersolvent",
            "solventb",
            "solvent2",
            "stark",
            "staerkeres",
            "loesungsmittelb",
            "loesungsmittel2"),
    PERCENT_STRONG(
            "percent_strong",
            "%strong",
            "strong%",
            "percentb",
            "%b",
            "b%",
            "%stark",
            "stark%",
            "prozentstark",
            "anteilstark",
            "percent",
            "prozent",
            "%",
            "vol%",
            "anteil"),
    ELUENT(
            "eluent",
            "eluant",
            "eluens",
            "mobilephase",
            "ratio",
            "eluentratio",
            "solventratio",
            "solventsystem",
            "solvents",
            "solvent",
            "laufmittel",
            "fliessmittel",
            "elutionsmittel",
            "laufmittelgemisch",
            "verhaeltnis",
            "mischung",
            "gemisch",
            "loesungsmittel",
            "mobilephase"),
    ADDITIVE("additive", "modifier", "zusatz", "additiv"),
    HEIGHT("height_mm", "height", "plateheight", "heightofplate", "hoehe", "plattenhoehe", "hoehederplatte"),
    WIDTH("width_mm", "width", "platewidth", "breite", "plattenbreite"),
    START("start_mm", "start", "startline", "baseline", "origin", "startlinie", "auftragslinie", "auftragelinie"),
    FRONT(
            "front_mm",
            "front",
            "solventfront",
            "frontline",
            "laufmittelfront",
            "fliessmittelfront",
            "loesungsmittelfront",
            "frontlinie"),
    LANE("lane", "laneno", "lanenr", "track", "bahn", "bahnnr", "spur"),
    SPOT(
            "spot",
            "spotname",
            "name",
            "compound",
            "substance",
            "analyte",
            "label",
            "sample",
            "fleck",
            "verbindung",
            "substanz",
            "stoff",
            "probe",
            "analyt",
            "bezeichnung"),
    CENTRE(
            "centre_mm",
            "centre",
            "center",
            "spotcentre",
            "spotcenter",
            "spotheight",
            "position",
            "mitte",
            "fleckmitte",
            "fleckhoehe",
            "spothoehe"),
    RF("rf", "rfvalue", "rfwert", "retardationfactor", "retentionfactor", "retardationsfaktor", "retentionsfaktor"),
    SIZE("size_mm", "size", "spotsize", "diameter", "spotdiameter", "groesse", "fleckgroesse", "durchmesser"),
    ERROR("error_mm", "centreerror", "centererror", "errorofcentre", "errorofcenter", "fehlerdermitte", "hoehenfehler"),
    SHAPE("shape", "spotshape", "form", "fleckform"),
    SEEN(
            "seen",
            "seenby",
            "seenunder",
            "detection",
            "visualisation",
            "visualization",
            "stain",
            "gesehen",
            "detektion",
            "sichtbarmachung",
            "anfaerbung",
            "faerbung"),
    NOT_SEEN("not_seen", "nichtgesehen", "absent"),
    /** How far a spot ran from the start line; its other names are those of {@link #distance}. */
    DISTANCE("distance_mm"),
    /** How far the front ran from the start line. */
    FRONT_DISTANCE("front_distance_mm");

    private static final String RAN =
            "(solventfront|solvent|front|eluent|laufmittelfront|laufmittels?|fliessmittelfront"
                    + "|fliessmittels?|loesungsmittelfront|loesungsmittels?|spot|compound|substance|analyte|fleck(?:s|es)?|substanz"
                    + "|verbindung|analyt|stoffs?)?";
    private static final Pattern DISTANCE_OF = Pattern.compile(RAN
            + "(?:run|migration|lauf|wanderungs|wander)?(?:distance|distanz|strecke|weite|weg|abstand|migration)"
            + "(?:travell?ed|run|moved|covered)?(?:(?:of|by)(?:the)?|der|des)?" + RAN
            + "(?:(?:from|to|ab|von|vom|zum|zur)(?:the|der)?(?:start|startline|startlinie|origin|baseline))?");

    private final String id;
    private final List<String> names;

    RunColumn(String id, String... names) {
        this.id = id;
        this.names = List.of(names);
    }

    /** Its name in tables written here, in requests and in answers. */
    String id() {
        return id;
    }

    /** Whether its cells are lengths. */
    boolean isLength() {
        return id.endsWith("_mm");
    }

    /** Whether its cells are numbers by themselves. */
    boolean isNumber() {
        return isLength() || this == RF || this == PERCENT_STRONG;
    }

    /** Those of a table written here: a height above the lower edge says all that a distance does, and more. */
    static List<RunColumn> written() {
        return Arrays.stream(values())
                .filter(column -> column != DISTANCE && column != FRONT_DISTANCE)
                .toList();
    }

    static List<String> ids() {
        return Arrays.stream(values()).map(RunColumn::id).toList();
    }

    static Optional<RunColumn> byId(String id) {
        return Arrays.stream(values()).filter(column -> column.id.equals(id)).findFirst();
    }

    /** The column of a plain name (see {@link #plain}). */
    static Optional<RunColumn> called(String plain) {
        return Arrays.stream(values())
                .filter(column -> plain(column.id).equals(plain) || column.names.contains(plain))
                .findFirst()
                .or(() -> distance(plain));
    }

    /** A distance from the start line, and of what: {@code Laufstrecke}, {@code distance of solvent front}, {@code spot distance}. */
    private static Optional<RunColumn> distance(String plain) {
        Matcher form = DISTANCE_OF.matcher(plain);
        if (!form.matches()) {
            return Optional.empty();
        }
        String of = Objects.requireNonNullElse(form.group(1), "") + Objects.requireNonNullElse(form.group(2), "");
        boolean isFront = of.matches(".*(?:front|solvent|eluent|mittel).*");
        return Optional.of(isFront ? FRONT_DISTANCE : DISTANCE);
    }

    /** A header with what does not matter taken away: case, accents (ö as oe), blanks and punctuation. */
    static String plain(String header) {
        String spelt = header.toLowerCase(Locale.ROOT)
                .replace("ä", "ae")
                .replace("ö", "oe")
                .replace("ü", "ue")
                .replace("ß", "ss");
        return Normalizer.normalize(spelt, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^\\p{L}\\p{N}%]+", "");
    }
}
