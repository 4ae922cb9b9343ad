package midplate.chemistry;

import java.util.List;
import java.util.Map;
import midplate.words.Message;

/**
 * A solvent by its names.
 *
 * @param id the name in files and requests, lower case with hyphens: {@code ethyl-acetate}
 * @param name the name in sentences: {@code ethyl acetate}
 * @param cas the CAS registry number, empty for a mixture sold under several
 * @param formula the molecular formula, empty for a mixture
 * @param synonyms what else chemists call it: {@code EA}, {@code EtOAc}
 */
public record Solvent(String id, String name, String cas, String formula, List<String> synonyms) {
    /** Keeps its own copy of the synonyms. */
    public Solvent {
        synonyms = List.copyOf(synonyms);
    }

    /** Its name, to be put into the words of a language; in English it is {@link #name()}. */
    public Message said() {
        return new Message("solvent." + id, Map.of());
    }
}
