package midplate.photo;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Locale;

/** The figures of photos as tables for the README. */
final class PhotoTable {
    /** The figures. */
    static final Path FILE = Path.of("shared", "reference", "photo-figures.json");
    /** Where they are told. */
    static final Path README = Path.of("README.md");

    private static final String BEGIN = "<!-- photo:begin -->";
    private static final String END = "<!-- photo:end -->";

    private PhotoTable() {}

    /** A document with this between its two marks. */
    static String placed(String document, String table) {
        int begin = document.indexOf(BEGIN) + BEGIN.length();
        int end = document.indexOf(END);
        if (begin < BEGIN.length() || end < begin) {
            throw new IllegalArgumentException("The document must hold " + BEGIN + " and then " + END + "; add them.");
        }
        return document.substring(0, begin) + "\n" + table + document.substring(end);
    }

    /** What stands between the two marks. */
    static String found(String document) {
        int begin = document.indexOf(BEGIN);
        int end = document.indexOf(END);
        if (begin < 0 || end < begin) {
            throw new IllegalArgumentException("The document must hold " + BEGIN + " and then " + END + "; add them.");
        }
        return document.substring(begin + BEGIN.length() + 1, end);
    }

    /** The tables. */
    static String of(JsonNode figures) {
        StringBuilder text = new StringBuilder();
        rows(text, "corners and lines by a careful hand", figures.get("byHand"));
        text.append('\n');
        rows(text, "all as proposed", figures.get("asProposed"));
        text.append('\n');
        single(text, figures);
        return text.toString();
    }

    private static void rows(StringBuilder text, String corner, JsonNode rows) {
        text.append("| ").append(corner);
        text.append(" | spots | within 0.015 | of those found | missed | false | median off | 95 of 100 below |\n");
        text.append("| --- |").append(" ---: |".repeat(7)).append('\n');
        for (JsonNode row : rows) {
            String group = row.get("group").asText();
            String name = row.get("name").asText();
            text.append("| ").append(group.equals("all") ? name : group + ": " + named(name));
            text.append(" | ").append(row.get("spots").asLong());
            for (String share : new String[] {"within", "withinOfFound", "missed", "false"}) {
                text.append(" | ").append(percent(row.get(share)));
            }
            text.append(" | ").append(rf(row.get("median")));
            text.append(" | ").append(rf(row.get("most95"))).append(" |\n");
        }
    }

    private static String named(String name) {
        return switch (name) {
            case "true" -> "yes";
            case "false" -> "no";
            case "sharp_head" -> "sharp head";
            case "gauss" -> "bell";
            case "flat" -> "flat-topped";
            case "merged" -> "two as one";
            case "not" -> "not to be seen";
            default -> name;
        };
    }

    private static String percent(JsonNode share) {
        if (share == null || !share.hasNonNull("value")) {
            return "–";
        }
        String value =
                String.format(Locale.ROOT, "%.1f", 100 * share.get("value").asDouble());
        return share.hasNonNull("error")
                ? value
                        + String.format(
                                Locale.ROOT,
                                " ± %.1f %%",
                                100 * share.get("error").asDouble())
                : value + " %";
    }

    private static String rf(JsonNode figure) {
        return figure.hasNonNull("value")
                ? String.format(Locale.ROOT, "%.4f", figure.get("value").asDouble())
                : "–";
    }

    private static void single(StringBuilder text, JsonNode figures) {
        JsonNode proposed = figures.get("proposals");
        JsonNode shapes = figures.get("shapes");
        JsonNode aim = figures.get("byHand").get(0);
        text.append("| further | of | |\n| --- | ---: | ---: |\n");
        long pictures = figures.get("pictures").asLong();
        long corners = proposed.get("cornersProposed").asLong();
        row(text, "corners proposed", pictures + " pictures", part(corners, pictures));
        row(
                text,
                "– all four within 1 mm",
                corners + " pictures",
                part(proposed.get("cornersWithin1mm").asLong(), corners));
        for (String line : new String[] {"start", "front"}) {
            long drawn = proposed.get(line + "Drawn").asLong();
            String name = line.equals("start") ? "start line" : "front";
            row(
                    text,
                    name + " proposed where it is drawn",
                    drawn + " pictures",
                    part(proposed.get(line + "Proposed").asLong(), drawn));
            row(
                    text,
                    "– within 0.5 mm",
                    drawn + " pictures",
                    part(proposed.get(line + "Within05mm").asLong(), drawn));
        }
        long spots = aim.get("spots").asLong();
        row(text, "centre within two of its errors", spots + " spots", percent(aim.get("centreWithinTwoErrors")));
        row(text, "Rf within two of its errors", spots + " spots", percent(aim.get("rfWithinTwoErrors")));
        shape(text, "streaks called streaks", shapes.get("streakCalledStreak"));
        shape(text, "overload called so", shapes.get("overloadCalledSharpHead"));
        shape(text, "two as one called so", shapes.get("mergedCalledMerged"));
        shape(text, "compact spots called streaks", shapes.get("compactCalledStreak"));
        shape(text, "compact spots called overload", shapes.get("compactCalledSharpHead"));
        shape(text, "compact spots called two", shapes.get("compactCalledMerged"));
        if (figures.has("speed")) {
            JsonNode speed = figures.get("speed");
            String megapixels = speed.get("megapixels").asText() + " megapixels";
            row(
                    text,
                    "from the file to the spots",
                    megapixels,
                    String.format(Locale.ROOT, "%.1f s", speed.get("seconds").asDouble()));
            row(
                    text,
                    "longest gap between frames meanwhile",
                    megapixels,
                    speed.get("longestFrameGapMs").asText() + " ms");
        }
    }

    private static void shape(StringBuilder text, String name, JsonNode share) {
        row(text, name, share.get("spots").asText() + " spots", percent(share));
    }

    private static String part(long part, long whole) {
        return whole == 0 ? "–" : String.format(Locale.ROOT, "%.1f %%", 100.0 * part / whole);
    }

    private static void row(StringBuilder text, String name, String of, String figure) {
        text.append("| ")
                .append(name)
                .append(" | ")
                .append(of)
                .append(" | ")
                .append(figure)
                .append(" |\n");
    }
}
