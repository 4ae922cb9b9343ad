package midplate.chemistry;

import java.util.List;

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
}
