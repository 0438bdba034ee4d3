package org.cupwright.holelocation.spot;

import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.BendFit;
import org.cupwright.green.Ground;
import org.cupwright.green.PlaneFit;
import org.cupwright.holelocation.SlopePolicy;
import org.cupwright.policy.Policy;
import org.cupwright.units.GreenSpeed;

/** Measures the ground at single spots. For one thread. */
public final class SpotMeter {
    private final Ground ground;
    private final LeaveMeter leaves;
    private final double marginalSlope;
    private final double wideMetres;

    SpotMeter(Ground ground, LeaveMeter leaves, GreenSpeed speed, Policy policy) {
        this.ground = ground;
        this.leaves = leaves;
        this.marginalSlope = policy.get(SlopePolicy.WIDE_GRADE_SHARE) * speed.rollingResistance();
        this.wideMetres = policy.get(SlopePolicy.WIDE_GRADE_METRES);
    }

    public SpotGround at(MapPoint spot) {
        Optional<PlaneFit> plane = ground.planeAt(spot);
        if (plane.isEmpty()) {
            return SpotGround.unknown(spot, ground.coverageAt(spot));
        }
        double slope = plane.get().slope();
        return new SpotGround(
                spot,
                ground.coverageAt(spot),
                slope,
                plane.get().slopeStandardError(),
                ground.bendAt(spot, Ground.DISC_RADIUS_METRES).map(BendFit::greatest),
                slope > marginalSlope ? ground.bendAt(spot, wideMetres).map(BendFit::greatest) : Optional.empty(),
                leaves.at(spot, plane.get()));
    }
}
