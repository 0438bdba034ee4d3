package org.cupwright.app.desk.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.first.FirstOfDay;
import org.cupwright.app.desk.green.GreenOnDay;
import org.cupwright.app.desk.round.RoundOfDay;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.storage.StoredPlan;

/**
 * All that paper of a day is made from: the plan, what became of it, and the greens it is for.
 *
 * @param day the day, at the speed and in the weather the plan was made for
 * @param plan the plan
 * @param greens the greens in round order, also those that the plan leaves out
 * @param positions by hole: where it was cut, or is to be as long as nobody said that it was; a hole of unknown place
 *     is missing
 * @param soFar how much of the plan has been cut
 * @param first what has to be known before anybody goes out, the spots told of where they are
 * @param round in which order and by when the holes are cut, and by whom
 */
public record DayPaper(
        CourseDay day,
        StoredPlan plan,
        List<GreenOnDay> greens,
        Map<String, JudgedPosition> positions,
        CutSoFar soFar,
        FirstOfDay first,
        RoundOfDay round) {
    public DayPaper {
        greens = List.copyOf(greens);
        positions = Map.copyOf(positions);
    }

    /** The paper of a plan, before anything was cut. */
    public static DayPaper planned(
            CourseDay day, StoredPlan plan, List<GreenOnDay> greens, FirstOfDay first, RoundOfDay round) {
        return new DayPaper(day, plan, greens, planned(plan), CutSoFar.NOTHING, first, round);
    }

    /** Where the plan has its holes. */
    public static Map<String, JudgedPosition> planned(StoredPlan plan) {
        Map<String, JudgedPosition> positions = new HashMap<>();
        plan.holes().forEach(hole -> positions.put(hole.hole(), hole.position()));
        return positions;
    }

    public Optional<JudgedPosition> position(String hole) {
        return Optional.ofNullable(positions.get(hole));
    }
}
