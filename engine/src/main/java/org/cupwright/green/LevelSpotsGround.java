package org.cupwright.green;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.policy.Policy;

/**
 * A green without a survey: its slopes are known where they were read with a level, and a short way about; where nobody
 * read any, nothing can be said of them.
 */
public final class LevelSpotsGround implements Ground {
    private final LevelReadings readings;

    public LevelSpotsGround(List<LevelReading> readings, Policy policy) {
        this.readings = new LevelReadings(readings, policy.get(GroundPolicy.READING_REACH_METRES));
    }

    public List<LevelReading> readings() {
        return readings.readings();
    }

    @Override
    public RestsOn restsOn() {
        return readings.readings().isEmpty() ? RestsOn.OUTLINE : RestsOn.LEVELS;
    }

    @Override
    public Coverage coverageAt(MapPoint point) {
        return readings.findNear(point).isPresent() ? Coverage.KNOWN : Coverage.NOT_MEASURED;
    }

    @Override
    public Optional<PlaneFit> planeAt(MapPoint point) {
        return readings.findNear(point).map(LevelReading::plane);
    }
}
