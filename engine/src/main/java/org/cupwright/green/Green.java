package org.cupwright.green;

import java.util.List;
import org.cupwright.course.Hole;

/**
 * One green: the hole it belongs to, what is known of its ground, and what people say of it.
 *
 * @param hole outline, line of play, hazards about it
 * @param ground the shape of its ground
 * @param drawn good and bad ground and usual spots as people drew or named them: their word, not a measurement
 */
public record Green(Hole hole, Ground ground, List<DrawnItem> drawn) {
    public Green {
        drawn = List.copyOf(drawn);
    }

    /** A green of whose ground nobody said anything. */
    public Green(Hole hole, Ground ground) {
        this(hole, ground, List.of());
    }

    public Green withDrawn(List<DrawnItem> others) {
        return new Green(hole, ground, others);
    }
}
