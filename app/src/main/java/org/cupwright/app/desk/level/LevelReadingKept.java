package org.cupwright.app.desk.level;

import java.util.Optional;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.course.Hole;
import org.cupwright.green.LevelReading;
import org.cupwright.green.PlaneFit;

/**
 * A reading that is kept now.
 *
 * @param day the day on which it was handed in
 * @param hole the hole
 * @param reading the reading
 * @param replaced the reading that lay at the same spot, if one did; it counts no longer
 * @param before the slope that is known there without the reading
 * @param now the slope that is known there with it
 */
public record LevelReadingKept(
        CourseDay day,
        Hole hole,
        LevelReading reading,
        Optional<LevelReading> replaced,
        Optional<PlaneFit> before,
        Optional<PlaneFit> now) {}
