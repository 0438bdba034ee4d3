package org.cupwright.holelocation.rule;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.BendFit;
import org.cupwright.green.Coverage;
import org.cupwright.holelocation.spot.Leave;
import org.cupwright.holelocation.spot.SpotGround;

/** Invented measurements of single spots. */
final class Spots {
    static final MapPoint HERE = new MapPoint(0, 0);

    private Spots() {}

    static SpotGround slope(double percent, double errorPercent) {
        return spot(percent, errorPercent, Optional.empty(), Optional.empty(), Leave.UNKNOWN);
    }

    static SpotGround bend(double points, double errorPoints) {
        return spot(1, 0, Optional.of(new BendFit.Change(points, errorPoints)), Optional.empty(), Leave.UNKNOWN);
    }

    static SpotGround bends(double points, double widePoints, double wideErrorPoints) {
        BendFit.Change near = new BendFit.Change(points, 0);
        BendFit.Change wide = new BendFit.Change(widePoints, wideErrorPoints);
        return spot(4, 0, Optional.of(near), Optional.of(wide), Leave.UNKNOWN);
    }

    static SpotGround leave(double metres, double slopeErrorPercent) {
        return spot(1, slopeErrorPercent, Optional.empty(), Optional.empty(), new Leave(metres, metres, 36));
    }

    private static SpotGround spot(
            double percent,
            double errorPercent,
            Optional<BendFit.Change> bend,
            Optional<BendFit.Change> wide,
            Leave leave) {
        return new SpotGround(HERE, Coverage.KNOWN, percent / 100, errorPercent / 100, bend, wide, leave);
    }

    static SpotGround unknown(Coverage coverage) {
        return new SpotGround(
                HERE, coverage, Double.NaN, Double.NaN, Optional.empty(), Optional.empty(), Leave.UNKNOWN);
    }

    static JudgedPosition alone(SpotGround own) {
        return new JudgedPosition(own, List.of(own));
    }

    static JudgedPosition with(SpotGround own, SpotGround beside) {
        return new JudgedPosition(own, List.of(own, beside));
    }

    static JudgedPosition at(double east, double north) {
        SpotGround own = new SpotGround(
                new MapPoint(east, north),
                Coverage.NOT_MEASURED,
                Double.NaN,
                Double.NaN,
                Optional.empty(),
                Optional.empty(),
                Leave.UNKNOWN);
        return alone(own);
    }
}
