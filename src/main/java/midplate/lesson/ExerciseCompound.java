package midplate.lesson;

import midplate.catalogue.TeachingCompound;
import midplate.chemistry.GroupCounts;

/**
 * A compound of the table of lessons, with what it is made of.
 *
 * @param compound of the table
 * @param counts its groups and carbons
 */
public record ExerciseCompound(TeachingCompound compound, GroupCounts counts) {}
