package org.cupwright.course;

/**
 * Something fixed that can be found again on the ground and measured from: a sprinkler head, a surveyed nail, a front
 * mark.
 *
 * @param kind what it is
 * @param name what the crew calls it, {@code "head 7-3"}
 * @param at where it is
 */
public record Mark(Kind kind, String name, MapPoint at) {
    /** What kind of mark it is. */
    public enum Kind {
        SPRINKLER_HEAD,
        SURVEYED_MARK,
        /** From which "on" is measured where the course squares distances off a front mark. */
        FRONT_MARK
    }
}
