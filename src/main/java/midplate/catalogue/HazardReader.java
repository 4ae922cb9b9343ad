package midplate.catalogue;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import midplate.words.Language;

/** Reads {@code hazard-statements.csv} and its like in other languages: the wording of each code of the GHS and of its European supplement. */
final class HazardReader {
    static final String FILE = "hazard-statements.csv";

    private static final Map<Language, String> FILES =
            Map.of(Language.ENGLISH, FILE, Language.GERMAN, "hazard-statements-de.csv");

    private static final List<String> COLUMNS = List.of("code", "text", "source", "basis", "confidence");
    private static final String ONE = "(H[0-9]{3}[A-Za-z]{0,2}|EUH[0-9]{3})";
    private static final Pattern CODE = Pattern.compile(ONE + "(\\+" + ONE + ")*");

    private HazardReader() {}

    /** The wordings by language and code. */
    static Map<Language, Map<String, String>> readAll(DataFolder folder, Map<String, Source> sources) {
        Map<Language, Map<String, String>> all = new EnumMap<>(Language.class);
        FILES.forEach((language, file) -> all.put(language, read(file, folder, sources)));
        return Collections.unmodifiableMap(all);
    }

    private static Map<String, String> read(String file, DataFolder folder, Map<String, Source> sources) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (CsvRow row : CsvTable.read(folder, file, COLUMNS)) {
            String code = row.matching("code", CODE, "a code like H225, H301+H311 or EUH019");
            row.named("source", sources, SourceReader.FILE);
            row.confidence(row.basis());
            if (texts.put(code, row.filled("text")) != null) {
                throw row.bad("code", "each code once", "Remove one of the two rows.");
            }
        }
        return Collections.unmodifiableMap(texts);
    }
}
