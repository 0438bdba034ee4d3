package org.cupwright.holelocation.rule;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Coverage;
import org.cupwright.holelocation.spot.SpotGround;

/**
 * A position with the ground about it, as the rules look at it.
 *
 * @param own the ground at the position itself
 * @param about the ground at the position and within the course's distance of it, as far as it lies on the green; never
 *     empty
 */
public record JudgedPosition(SpotGround own, List<SpotGround> about) {
    public JudgedPosition {
        about = List.copyOf(about);
    }

    public MapPoint position() {
        return own.at();
    }

    /** Whether part of the ground about the position lies in a gap of the survey. */
    public boolean besideGap() {
        for (SpotGround spot : about) {
            if (spot.coverage() == Coverage.NOT_SURVEYED) {
                return true;
            }
        }
        return false;
    }
}
