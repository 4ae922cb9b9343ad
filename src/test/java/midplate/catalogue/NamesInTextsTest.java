package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.English;
import midplate.words.Language;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;

/** The names that the data give, and those of the texts. */
class NamesInTextsTest {
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();

    private static Set<String> keys(String room) {
        return Texts.english().keys().stream()
                .filter(key -> key.startsWith(room))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everySolventIsCalledInEnglishAsItsFileCallsIt() {
        Map<String, String> file = new TreeMap<>();
        Map<String, String> said = new TreeMap<>();
        for (Solvent solvent : CATALOGUE.solvents()) {
            file.put("solvent." + solvent.id(), solvent.name());
            said.put(solvent.said().key(), English.said(solvent.said()));
        }
        assertEquals(file, said);
        assertEquals(file.keySet(), keys("solvent."));
    }

    @Test
    void sorbentsAndTablesAreCalledInEnglishAsInRequests() {
        Set<String> conditions = new TreeSet<>();
        for (Sorbent sorbent : Sorbent.values()) {
            assertEquals(sorbent.id(), English.said(sorbent.said()));
            for (StrengthSeries series : StrengthSeries.values()) {
                assertEquals(series.condition(sorbent), English.said(series.said(sorbent)));
                conditions.add(series.said(sorbent).key());
            }
        }
        assertEquals(conditions, keys("condition."));
    }

    @Test
    void everyGroupHasAName() {
        Set<String> groups = FunctionalGroups.builtIn().ids().stream()
                .map(id -> "group." + id)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(groups, keys("group."));
    }

    @Test
    void everyHazardStatementHasAGermanWording() {
        Map<String, String> same = new TreeMap<>();
        for (Solvent solvent : CATALOGUE.solvents()) {
            for (Hazard hazard : CATALOGUE.hazards(solvent, Language.GERMAN)) {
                same.put(hazard.code(), hazard.text());
            }
            for (Hazard hazard : CATALOGUE.hazards(solvent)) {
                same.remove(hazard.code(), hazard.text());
            }
        }
        Set<String> codes = new TreeSet<>();
        CATALOGUE.solvents().forEach(solvent -> CATALOGUE.hazards(solvent).forEach(hazard -> codes.add(hazard.code())));
        assertEquals(codes, same.keySet(), "codes whose German wording is not the English one");
    }
}
