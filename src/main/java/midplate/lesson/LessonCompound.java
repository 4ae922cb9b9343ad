package midplate.lesson;

import midplate.chemistry.GroupCounts;

/**
 * A compound of a lesson.
 *
 * @param name as it stands beside its spot; each name once in a lesson
 * @param counts what it is made of
 */
public record LessonCompound(String name, GroupCounts counts) {}
