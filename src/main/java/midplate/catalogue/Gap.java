package midplate.catalogue;

import midplate.chemistry.Solvent;

/**
 * A value that was looked for and not found.
 *
 * @param solvent of which solvent
 * @param property which property
 * @param condition under which condition, empty where there is none
 * @param note what was found instead
 */
public record Gap(Solvent solvent, String property, String condition, String note) {}
