package org.cupwright.holelocation.spot;

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
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Heading;
import org.cupwright.units.Physics;

/**
 * Measures how far a ball rolls on that crosses a spot as a putt would that runs a set distance past the hole on the level.
 *
 * <p>Its speed is v = √((10/7)·g·ρ·p) for a distance p, from the energy of a sphere rolling without slipping. From each of the
 * headings a ball crosses the spot as if there were no hole; a heading counts if a putt can start on the green on that side. Down
 * a plane of slope s it rests at p·ρ/(ρ − s). For one thread.
 */
public final class LeaveMeter {
    /** Beyond this a ball is given up, m: our choice, five times what the rule allows; on a plane 0.9 of the critical slope. */
    public static final double FARTHEST_METRES = 3;

    private final PuttingArea area;
    private final GreenSpeed greenSpeed;
    private final double resistance;
    private final double speed;
    private final double startMetres;
    private final Heading[] headings;
    private final double[] unitEast;
    private final double[] unitNorth;
    private final Optional<BallRoller> roller;
    private final Reach reach = new Reach();
    private final RollState ball = new RollState();

    public LeaveMeter(Optional<Surface> surface, PuttingArea area, GreenSpeed greenSpeed, Policy policy) {
        this.area = area;
        this.greenSpeed = greenSpeed;
        this.resistance = greenSpeed.rollingResistance();
        this.speed = Math.sqrt(10.0 / 7.0 * Physics.GRAVITY * resistance * policy.get(HoldPolicy.PAST_METRES));
        this.startMetres = policy.get(HoldPolicy.START_METRES);
        int count = policy.get(HoldPolicy.HEADINGS);
        this.headings = new Heading[count];
        this.unitEast = new double[count];
        this.unitNorth = new double[count];
        for (int i = 0; i < count; i++) {
            headings[i] = Heading.ofDegrees(360.0 * i / count);
            unitEast[i] = headings[i].east();
            unitNorth[i] = headings[i].north();
        }
        this.roller = surface.map(known -> new BallRoller(known, greenSpeed, reach));
    }

    /** The leave at a spot whose plane is known; rolled over the surface where there is one, else on that plane. */
    public Leave at(double east, double north, PlaneFit plane) {
        double worst = 0;
        double sum = 0;
        int counted = 0;
        for (int i = 0; i < unitEast.length; i++) {
            if (area.contains(east - startMetres * unitEast[i], north - startMetres * unitNorth[i])) {
                double leave =
                        roller.isPresent() ? rolled(roller.get(), east, north, i) : onPlane(plane, east, north, i);
                worst = Math.max(worst, leave);
                sum += leave;
                counted++;
            }
        }
        return counted == 0 ? Leave.UNKNOWN : new Leave(worst, sum / counted, counted);
    }

    private double rolled(BallRoller balls, double east, double north, int heading) {
        reach.east = east;
        reach.north = north;
        balls.stopOf(east, north, unitEast[heading], unitNorth[heading], speed, ball);
        return ball.end == RollEnd.REST ? Math.hypot(ball.east - east, ball.north - north) : FARTHEST_METRES;
    }

    private double onPlane(PlaneFit plane, double east, double north, int heading) {
        if (plane.slope() >= resistance) {
            return FARTHEST_METRES;
        }
        MapPoint from = new MapPoint(east, north);
        MapPoint stop = PlaneRoll.roll(plane, greenSpeed, from, headings[heading], speed)
                .stop();
        reach.east = east;
        reach.north = north;
        return reach.holds(stop.east(), stop.north()) ? from.distanceMetres(stop) : FARTHEST_METRES;
    }

    /** On the green and not yet given up; balls end where they leave it. */
    private final class Reach implements Edge {
        private double east;
        private double north;

        @Override
        public boolean holds(double ballEast, double ballNorth) {
            double dx = ballEast - east;
            double dy = ballNorth - north;
            return dx * dx + dy * dy <= FARTHEST_METRES * FARTHEST_METRES && area.contains(ballEast, ballNorth);
        }
    }
}
