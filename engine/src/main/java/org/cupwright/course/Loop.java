package org.cupwright.course;

import java.util.List;

/**
 * Holes that belong together on lists and paper: a nine, an eighteen, or a practice green with all its holes.
 *
 * @param name what people call it; empty where nobody named it
 * @param holes its holes' names in round order, one at least
 * @param practice whether they are the holes of a practice green, which belong to no round
 */
public record Loop(String name, List<String> holes, boolean practice) {
    public Loop {
        holes = List.copyOf(holes);
    }
}
