package org.cupwright.holelocation.rule;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.Coverage;
import org.cupwright.green.Green;
import org.cupwright.green.Ground;
import org.cupwright.green.LevelSpotsGround;
import org.cupwright.green.PlaneFit;
import org.cupwright.holelocation.spot.GreenMeasurement;
import org.cupwright.holelocation.spot.Leave;
import org.cupwright.holelocation.spot.SpotGrid;
import org.cupwright.holelocation.spot.SpotGround;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Shapes;
import org.cupwright.units.GreenSpeed;

/** Invented greens, measured all over, for the rules that look at the whole of one. */
final class Grids {
    private Grids() {}

    static SpotGrid measured(Outline outline, Ground ground) {
        Hole hole = Hole.of("1", outline);
        return GreenMeasurement.measure(new Green(hole, ground), new GreenSpeed(10), Policy.defaults())
                .grid();
    }

    /** The lattice of some green, for positions that are made by hand and lie on none. */
    static SpotGrid elsewhere() {
        return measured(Shapes.rectangle(0, 0, 1, 1), new LevelSpotsGround(List.of(), Policy.defaults()));
    }

    /** A position with its plane and nothing about it. */
    static JudgedPosition judged(Ground ground, double east, double north) {
        MapPoint at = new MapPoint(east, north);
        PlaneFit plane = ground.planeAt(at).orElseThrow();
        return Spots.alone(new SpotGround(
                at,
                Coverage.KNOWN,
                plane.slope(),
                plane.slopeStandardError(),
                Optional.empty(),
                Optional.empty(),
                Leave.UNKNOWN));
    }
}
