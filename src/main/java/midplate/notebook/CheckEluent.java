package midplate.notebook;

import java.util.OptionalDouble;

/**
 * What a plate of a check ran in.
 *
 * @param weak id of the weaker solvent
 * @param strong id of the stronger solvent
 * @param typed the ratio or share as it was typed: {@code 9 : 1}; may be empty
 * @param percentStrong the share of the stronger solvent that it means [% v/v], where it means one
 * @param additive what was added to it
 */
public record CheckEluent(
        String weak, String strong, String typed, OptionalDouble percentStrong, JarAdditive additive) {}
