package org.cupwright.app.desk.green;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.turf.state.RoughHole;

/**
 * A green as it is on a day.
 *
 * @param judgement the verdicts over the green, and its ground
 * @param ground what lies on it
 * @param lastHole where the hole is before the day's change; empty when nobody knows
 * @param roughHole the same, where only the part of the green is known
 * @param areas the areas that the course has numbers for
 */
public record GreenOnDay(
        GreenJudgement judgement,
        GroundOnDay ground,
        Optional<MapPoint> lastHole,
        Optional<RoughHole> roughHole,
        List<AreaOnDay> areas) {
    public GreenOnDay {
        areas = List.copyOf(areas);
    }

    public Hole hole() {
        return judgement.green().hole();
    }
}
