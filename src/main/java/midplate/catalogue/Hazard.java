package midplate.catalogue;

/**
 * A hazard statement of a solvent. The supplier's current safety data sheet, the local rules and the person responsible
 * for the laboratory come first.
 *
 * @param code of the open GHS standard: {@code H225}, {@code H301+H311+H331}
 * @param text its wording there
 * @param value the row it comes from, with its condition (whose classification), source, basis and note
 */
public record Hazard(String code, String text, PublishedValue value) {}
