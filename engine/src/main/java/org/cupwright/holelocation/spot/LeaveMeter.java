package org.cupwright.holelocation.spot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.Surface;
import org.cupwright.holelocation.HoldPolicy;
import org.cupwright.policy.Policy;
import org.cupwright.roll.BallRoller;
import org.cupwright.roll.Edge;
import org.cupwright.roll.PlaneRoll;
import org.cupwright.roll.RollEnd;
import org.cupwright.roll.RollState;
import org.cupwright.roll.RollSteps;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Heading;
import org.cupwright.units.Physics;

/**
 * Measures how far a ball rolls on that crosses a spot as a putt would that runs a set distance past the hole on the
 * level.
 *
 * <p>Its speed is v = √((10/7)·g·ρ·p) for a distance p, from the energy of a sphere rolling without slipping. From each
 * of the headings a ball crosses the spot as if there were no hole; a heading counts if a putt can start on the green
 * on that side. Down a plane of slope s it rests at p·ρ/(ρ − s). For one thread.
 */
public final class LeaveMeter {
    /**
     * Beyond this a ball is given up, m: our choice, five times what the rule allows; on a plane 0.9 of the critical
     * slope.
     */
    public static final double FARTHEST_METRES = 3;

    /**
     * Coarser than a putt is followed, since millions are rolled: the last 30 mm come from the plane's closed form.
     * Within 2 mm of the standard steps for leaves up to a metre on gentle ground (LeaveMeterAgainstReferenceTest).
     */
    private static final RollSteps STEPS = new RollSteps(0.2, 0.4, 0.03);

    private final PuttingArea area;
    private final GreenSpeed greenSpeed;
    private final double launchSpeed;
    private final double startMetres;
    private final List<Heading> headings = new ArrayList<>();
    private final double[] unitEast;
    private final double[] unitNorth;
    private final Optional<BallRoller> roller;
    private final Reach reach = new Reach();
    private final RollState ball = new RollState();

    LeaveMeter(Optional<Surface> surface, PuttingArea area, GreenSpeed greenSpeed, Policy policy) {
        this.area = area;
        this.greenSpeed = greenSpeed;
        this.launchSpeed = launchMetresPerSecond(greenSpeed, policy.get(HoldPolicy.PAST_METRES));
        this.startMetres = policy.get(HoldPolicy.START_METRES);
        int count = policy.get(HoldPolicy.HEADINGS);
        this.unitEast = new double[count];
        this.unitNorth = new double[count];
        for (int i = 0; i < count; i++) {
            Heading heading = Heading.ofDegrees(360.0 * i / count);
            headings.add(heading);
            unitEast[i] = heading.east();
            unitNorth[i] = heading.north();
        }
        this.roller = surface.map(known -> new BallRoller(known, greenSpeed, reach, STEPS));
    }

    /** The speed along the ground at which a ball crosses the spot, m/s. */
    static double launchMetresPerSecond(GreenSpeed greenSpeed, double pastMetres) {
        return Math.sqrt(10.0 / 7.0 * Physics.GRAVITY * greenSpeed.rollingResistance() * pastMetres);
    }

    /** The leave at a spot whose plane is known; rolled over the surface where there is one, else on that plane. */
    Leave at(MapPoint spot, PlaneFit plane) {
        reach.east = spot.east();
        reach.north = spot.north();
        double worst = 0;
        double sum = 0;
        int counted = 0;
        for (int i = 0; i < unitEast.length; i++) {
            double startEast = spot.east() - startMetres * unitEast[i];
            double startNorth = spot.north() - startMetres * unitNorth[i];
            if (area.contains(startEast, startNorth)) {
                double leave = roller.isPresent() ? rolled(roller.get(), i) : onPlane(plane, spot, headings.get(i));
                worst = Math.max(worst, leave);
                sum += leave;
                counted++;
            }
        }
        return counted == 0 ? Leave.UNKNOWN : new Leave(worst, sum / counted, counted);
    }

    private double rolled(BallRoller balls, int heading) {
        balls.stopOf(reach.east, reach.north, unitEast[heading], unitNorth[heading], launchSpeed, ball);
        return ball.end == RollEnd.REST ? reach.metresTo(ball.east, ball.north) : FARTHEST_METRES;
    }

    private double onPlane(PlaneFit plane, MapPoint spot, Heading heading) {
        if (plane.slope() >= greenSpeed.rollingResistance()) {
            return FARTHEST_METRES;
        }
        MapPoint stop =
                PlaneRoll.roll(plane, greenSpeed, spot, heading, launchSpeed).stop();
        return reach.holds(stop.east(), stop.north()) ? spot.distanceMetres(stop) : FARTHEST_METRES;
    }

    /** On the green and not yet given up; balls end where they leave it. */
    private final class Reach implements Edge {
        private double east;
        private double north;

        private double metresTo(double ballEast, double ballNorth) {
            double dx = ballEast - east;
            double dy = ballNorth - north;
            return Math.sqrt(dx * dx + dy * dy);
        }

        @Override
        public boolean holds(double ballEast, double ballNorth) {
            return metresTo(ballEast, ballNorth) <= FARTHEST_METRES && area.contains(ballEast, ballNorth);
        }
    }
}
