package org.cupwright.democourse;

import java.util.List;
import org.cupwright.course.Hole;
import org.cupwright.green.Ground;
import org.cupwright.green.LevelReading;
import org.cupwright.green.LevelSpotsGround;
import org.cupwright.green.SurveyPoint;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;

/** The invented greens as their invented club knows them. */
final class DemoGrounds {
    private DemoGrounds() {}

    static Ground of(DemoCourse demo, Hole hole, Policy policy) {
        List<SurveyPoint> points = demo.survey(hole.id());
        List<LevelReading> readings = demo.levelReadings(hole.id());
        if (points.isEmpty()) {
            return new LevelSpotsGround(readings, policy);
        }
        try {
            return SurveyedGround.fit(hole.green(), SurveyPoints.scattered(points), policy);
        } catch (SurveyTooThin thin) {
            throw new IllegalStateException("the invented survey of hole " + hole.id() + " is too thin", thin);
        }
    }
}
