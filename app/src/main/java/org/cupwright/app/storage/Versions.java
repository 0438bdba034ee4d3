package org.cupwright.app.storage;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * How far what is kept of a course has come: what takes long is worked out on a reading that has it, and before
 * anything is written it is compared with how far things are then.
 *
 * @param byPart for each part the number of its newest row; 0 where there is none
 */
public record Versions(Map<Part, Long> byPart) {
    /** A part of what is kept of a course. */
    public enum Part {
        COURSE,
        SURVEYS,
        LEVELS,
        DRAWN,
        POLICY,
        /** The plan of the day in question. */
        PLAN,
        /** What was said of the round of the day in question. */
        ROUND,
        /** The logbook of all courses. */
        LOGBOOK
    }

    public Versions {
        byPart = Map.copyOf(byPart);
    }

    /** The parts in which something was added since. */
    public Set<Part> changedSince(Versions earlier) {
        Set<Part> changed = EnumSet.noneOf(Part.class);
        byPart.forEach((part, newest) -> {
            if (!newest.equals(earlier.byPart().get(part))) {
                changed.add(part);
            }
        });
        return changed;
    }

    /** The number of a part's newest row. */
    public long of(Part part) {
        return byPart.get(part);
    }
}
