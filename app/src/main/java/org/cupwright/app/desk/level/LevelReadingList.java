package org.cupwright.app.desk.level;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.course.Hole;
import org.cupwright.green.LevelReading;
import org.cupwright.green.PlaneFit;

/**
 * What the level has read on a course.
 *
 * @param day the day by whose policy the ground is fitted
 * @param greens those that have readings, in round order
 */
public record LevelReadingList(CourseDay day, List<OfGreen> greens) {
    public LevelReadingList {
        greens = List.copyOf(greens);
    }

    /**
     * One green's readings.
     *
     * @param hole the hole
     * @param readings the oldest first
     * @param without the slope without any reading at the spot of each, where it is known
     */
    public record OfGreen(Hole hole, List<LevelReading> readings, List<Optional<PlaneFit>> without) {
        public OfGreen {
            readings = List.copyOf(readings);
            without = List.copyOf(without);
        }
    }
}
