package midplate.catalogue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;

/** How accurate the advice was on compounds that the fit had not seen: the results that the benchmark wrote, as packed. */
public final class MeasuredAccuracy {
    private static final JsonMapper JSON = new JsonMapper();
    /** The parts told, in each of which the first name is the program. */
    private static final List<String> PARTS = List.of("contenders", "structures");

    private MeasuredAccuracy() {}

    /**
     * The results of the program itself in JSON on one line: {@code contenders} and {@code structures} (what it reached when told
     * structures), each with one name and its figures ({@code value}, {@code standardError}, {@code count}), and how they were
     * got in {@code setting}. All others stand in the file.
     *
     * @throws BadSolventData when the file is not there, or is no JSON
     */
    public static String json() {
        String file = "accuracy.json";
        try {
            JsonNode all = JSON.readTree(DataFolder.packed().text(file));
            ObjectNode told = JSON.createObjectNode();
            told.set("setting", all.path("setting"));
            for (String part : PARTS) {
                ObjectNode program = told.putObject(part);
                all.path(part).properties().stream()
                        .limit(1)
                        .forEach((Map.Entry<String, JsonNode> first) -> program.set(first.getKey(), first.getValue()));
            }
            return JSON.writeValueAsString(told);
        } catch (JsonProcessingException e) {
            throw DataFolder.because(
                    e,
                    new BadSolventData(
                            file,
                            "-",
                            "-",
                            e.getOriginalMessage(),
                            "JSON",
                            "Put the packed file back, or make it again."));
        }
    }
}
