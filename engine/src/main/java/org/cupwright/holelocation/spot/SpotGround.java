package org.cupwright.holelocation.spot;

import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.BendFit;
import org.cupwright.green.Coverage;

/**
 * What is known of the ground at one spot, for one green speed.
 *
 * @param at the spot
 * @param coverage whether the ground is known there
 * @param slope slope over the disc, rise over run; NaN where it is not known
 * @param slopeError its standard error
 * @param bend greatest change of slope over the disc; empty where it is not known
 * @param wideBend the same over the wide disc; empty where the slope does not ask for it
 * @param leave how far balls roll on
 */
public record SpotGround(
        MapPoint at,
        Coverage coverage,
        double slope,
        double slopeError,
        Optional<BendFit.Change> bend,
        Optional<BendFit.Change> wideBend,
        Leave leave) {
    static SpotGround unknown(MapPoint at, Coverage coverage) {
        return new SpotGround(at, coverage, Double.NaN, Double.NaN, Optional.empty(), Optional.empty(), Leave.UNKNOWN);
    }

    public boolean known() {
        return coverage == Coverage.KNOWN;
    }

    public double slopePercent() {
        return 100 * slope;
    }
}
