package midplate.catalogue;

/**
 * A caution beyond the hazard statements, in words.
 *
 * @param key its short name: {@code peroxides}
 * @param text what to mind
 * @param source the publication, or common practice
 * @param basis how it got here
 */
public record Caution(String key, String text, Source source, Basis basis) {}
