package midplate.terminal;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import midplate.wire.RequestText;

/** What spots are said to be, as typed: {@code A=CC(=O)c1ccccc1}, {@code A=aryl-ketone}, {@code A=aryl-ketone:1,alkyl-carbon:1}. */
final class SpotTexts {
    /** Signs of a SMILES that begins where the name should stand. */
    private static final String NO_NAME = ".*[()\\[\\]#@/\\\\].*";

    private final Map<String, Map<String, String>> texts = new LinkedHashMap<>();
    private final Map<String, Map<String, Double>> groups = new LinkedHashMap<>();

    private record Typed(String name, String what) {}

    /** With what an option told as text, a SMILES or a class. */
    SpotTexts with(String option, String field, String example, List<String> typed) {
        for (String text : typed) {
            Typed parts = parts(option, example, text);
            texts.computeIfAbsent(parts.name(), name -> new LinkedHashMap<>()).put(field, parts.what());
        }
        return this;
    }

    /** With what {@code --groups} told. */
    SpotTexts withGroups(List<String> typed) {
        for (String text : typed) {
            Typed parts = parts("--groups", "A=aryl-ketone:1,alkyl-carbon:1", text);
            Map<String, Double> counts = groups.computeIfAbsent(parts.name(), name -> new LinkedHashMap<>());
            for (String group : parts.what().strip().split("[,;\\s]+", -1)) {
                int colon = group.indexOf(':');
                String id = colon < 0 ? group : group.substring(0, colon);
                String number = colon < 0 ? "1" : group.substring(colon + 1);
                double count = Decimal.of(number)
                        .orElseThrow(() -> new Nonsense(
                                "--groups",
                                text,
                                "groups with their numbers, such as aryl-ketone:1,alkyl-carbon:1",
                                "Join each group and its number by a colon, and groups by commas."));
                if (id.isEmpty() || counts.put(id, count) != null) {
                    throw new Nonsense(
                            "--groups", text, "each group once, with its name", "Give each group once, name first.");
                }
            }
        }
        return this;
    }

    private static Typed parts(String option, String example, String text) {
        int equals = text.indexOf('=');
        String name = equals < 0 ? "" : text.substring(0, equals).strip();
        String allowed = "the name of a spot, = and what it is, such as " + example;
        if (name.isEmpty() || name.matches(NO_NAME)) {
            throw new Nonsense(option, text, allowed, "Put the name of the spot and = before it.");
        }
        String what = text.substring(equals + 1);
        if (what.isBlank()) {
            throw new Nonsense(
                    option, text, allowed, "Nothing came behind =: say what " + name + " is, or leave the option out.");
        }
        return new Typed(name, what);
    }

    /** The names that came. */
    Set<String> names() {
        Set<String> names = new LinkedHashSet<>(texts.keySet());
        names.addAll(groups.keySet());
        return names;
    }

    /** Puts a spot and what is known of it into a request. */
    void put(RequestText request, String name) {
        request.withSpot(name, texts.getOrDefault(name, Map.of()));
        Map<String, Double> counts = groups.getOrDefault(name, Map.of());
        if (!counts.isEmpty()) {
            request.withSpotGroups(counts);
        }
    }
}
