package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import midplate.words.Language;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The reason that a key gives for an order, read off the paper like a student does: it holds for every place. */
class WorksheetReasonsTest {
    private static final Exchange EXCHANGE = Exchange.builtIn();
    /** A group as it is printed: {@code 2 × ether (1.8)}. */
    private static final Pattern GROUP = Pattern.compile("(?:(\\d+) × )?([^(]*) \\((\\d+[.,]\\d)\\)");
    /** Energies are printed to one decimal, so that 0.4 may look like 0.3. */
    private static final double LEAST_APART = 0.3 - 1e-9;

    private record Strongest(String group, double energy, int count) {
        /** The group of the greatest energy in a cell; none has the energy 0. */
        static Strongest in(String cell) {
            Strongest found = new Strongest("", 0, 0);
            Matcher groups = GROUP.matcher(cell);
            while (groups.find()) {
                double energy = Double.parseDouble(groups.group(3).replace(',', '.'));
                int count = groups.group(1) == null ? 1 : Integer.parseInt(groups.group(1));
                if (energy > found.energy()) {
                    found = new Strongest(groups.group(2).replaceFirst("^.*, ", ""), energy, count);
                }
            }
            return found;
        }
    }

    @ParameterizedTest
    @CsvSource({
        "ENGLISH, hexane/ethyl-acetate, 60",
        "GERMAN, hexane/ethyl-acetate, 6",
        "ENGLISH, heptane/ethyl-acetate, 12",
        "ENGLISH, cyclohexane/ethyl-acetate, 12",
        "GERMAN, hexane/acetone, 12"
    })
    void noKeyContradictsItsReason(Language language, String pair, int seeds) throws IOException {
        int compared = 0;
        for (int seed = 1; seed <= seeds; seed++) {
            String json = "{\"seed\": " + seed + ", \"questions\": [\"order\"], \"pair\": \"" + pair + "\"}";
            String answer = EXCHANGE.in(language).lessons().worksheet(json.getBytes(StandardCharsets.UTF_8));
            JsonNode rows = new ObjectMapper().readTree(answer).at("/answers/0/answers/0/table/rows");
            for (int i = 1; i < rows.size(); i++) {
                Strongest below = Strongest.in(rows.get(i - 1).get(2).asText());
                Strongest above = Strongest.in(rows.get(i).get(2).asText());
                boolean holds = below.group().equals(above.group())
                        ? below.count() > above.count()
                        : below.energy() - above.energy() >= LEAST_APART;
                assertTrue(holds, "seed " + seed + ": " + rows.get(i - 1) + " below " + rows.get(i));
                compared++;
            }
        }
        assertEquals(seeds * (pair.endsWith("/ethyl-acetate") && !pair.startsWith("cyclo") ? 3 : 2), compared);
    }
}
