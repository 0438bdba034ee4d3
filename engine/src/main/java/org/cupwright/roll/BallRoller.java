package org.cupwright.roll;

import org.cupwright.course.MapPoint;
import org.cupwright.green.Jet;
import org.cupwright.green.Surface;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Heading;

/**
 * Rolls balls over a surface until they rest, leave the green, or are given up.
 *
 * <p>The full equations of a sphere rolling without slipping ({@link RollEquations}) are stepped by distance, so that fast and slow
 * putts are followed equally closely. Low speed alone does not stop a ball: one that turns round on a slope passes zero. When the
 * plane through the ball would bring it to rest within {@link #FINISH_METRES}, the plane's closed form ends the roll.
 *
 * <p>Where the slope exceeds ρ a ball runs away; it is given up after {@link #LONGEST_SECONDS}. Not for use by several threads at
 * once: make one for each.
 */
public final class BallRoller {
    /** Distance between two steps, m; measured to keep stops within 2 mm of a reference integrator. */
    static final double STEP_METRES = 0.15;

    /** Within this of its rest a ball is finished with the closed form, m. */
    static final double FINISH_METRES = 0.003;

    /** The greatest part of its speed that a ball may lose in one step. */
    private static final double LOSS_IN_STEP = 0.35;

    /** No step is shorter, s: a ball that turns round passes zero speed in steps of this length. */
    private static final double SHORTEST_STEP_SECONDS = 0.002;

    /** A ball that rolls longer is given up; on greens of speed 16 ft a level putt rolls 5.3 s from the measuring bar. */
    static final double LONGEST_SECONDS = 60;

    /** Below this speed along the ground the closed form is tried, m/s. */
    private static final double SLOW = 0.2;

    private static final double FIVE_SEVENTHS_GRAVITY = 5.0 / 7.0 * org.cupwright.units.Physics.GRAVITY;

    private final RollEquations equations;
    private final Edge edge;
    private final double resistance;
    private final double stepMetres;

    /** A roller on a surface at a speed; balls that cross the edge end there. */
    public BallRoller(Surface surface, GreenSpeed speed, Edge edge) {
        this(surface, speed, edge, STEP_METRES);
    }

    BallRoller(Surface surface, GreenSpeed speed, Edge edge, double stepMetres) {
        this.resistance = speed.rollingResistance();
        this.equations = new RollEquations(surface, resistance);
        this.edge = edge;
        this.stepMetres = stepMetres;
    }

    /**
     * Rolls one ball.
     *
     * @param from where it starts
     * @param heading its direction on the map
     * @param launchMetresPerSecond its speed along the ground, already rolling
     */
    public Roll roll(MapPoint from, Heading heading, double launchMetresPerSecond) {
        RollState ball = new RollState();
        roll(from.east(), from.north(), heading.east(), heading.north(), launchMetresPerSecond, ball);
        return new Roll(
                new MapPoint(ball.east, ball.north), ball.seconds, ball.pathMetres, ball.pathGroundMetres, ball.end);
    }

    /**
     * Rolls one ball without making objects; the state holds the end.
     *
     * @param unitEast east part of the unit vector of the start direction on the map
     * @param launch speed along the ground, m/s
     */
    public void roll(double east, double north, double unitEast, double unitNorth, double launch, RollState ball) {
        Jet jet = equations.jetAt(east, north);
        double climb = jet.zx * unitEast + jet.zy * unitNorth;
        double onMap = launch / Math.sqrt(1 + climb * climb);
        ball.start(east, north, onMap * unitEast, onMap * unitNorth);
        while (ball.end == RollEnd.RUNNING && ball.seconds < LONGEST_SECONDS) {
            advance(ball);
        }
    }

    private void advance(RollState ball) {
        double speed = Math.hypot(ball.velocityEast, ball.velocityNorth);
        if (speed < SLOW && finishes(ball)) {
            return;
        }
        double east = ball.east;
        double north = ball.north;
        double before = ball.seconds;
        equations.step(ball, stepSeconds(speed));
        if (!edge.inside(ball.east, ball.north)) {
            leave(ball, east, north, before);
        }
    }

    private double stepSeconds(double speed) {
        double byDistance = stepMetres / Math.max(speed, 1e-9);
        double byLoss = LOSS_IN_STEP * speed / (FIVE_SEVENTHS_GRAVITY * 2 * resistance);
        return Math.max(SHORTEST_STEP_SECONDS, Math.min(byDistance, byLoss));
    }

    /** Ends the roll in closed form if the plane through the ball stops it soon enough. */
    private boolean finishes(RollState ball) {
        Jet jet = equations.jetAt(ball.east, ball.north);
        double slope = Math.sqrt(jet.zx * jet.zx + jet.zy * jet.zy);
        if (slope >= resistance) {
            return false;
        }
        double stretch = Math.sqrt(1 + slope * slope);
        double downEast = slope > 0 ? -jet.zx / slope : 1;
        double downNorth = slope > 0 ? -jet.zy / slope : 0;
        double down = (ball.velocityEast * downEast + ball.velocityNorth * downNorth) * stretch;
        double across = ball.velocityNorth * downEast - ball.velocityEast * downNorth;
        double speed = Math.hypot(down, across);
        if (speed == 0) {
            ball.end = RollEnd.REST;
            return true;
        }
        PlaneRoll last = PlaneRoll.toRest(slope, resistance, speed, down / speed);
        if (last.pathMetres() > FINISH_METRES) {
            return false;
        }
        double onDown = last.downMetres() / stretch;
        double onAcross = Math.copySign(last.acrossMetres(), across);
        ball.east += onDown * downEast - onAcross * downNorth;
        ball.north += onDown * downNorth + onAcross * downEast;
        ball.seconds += last.seconds();
        ball.pathGroundMetres += last.pathMetres();
        ball.pathMetres += Math.hypot(onDown, onAcross);
        ball.velocityEast = 0;
        ball.velocityNorth = 0;
        ball.end = RollEnd.REST;
        return true;
    }

    /** Moves a ball that has left the green back to where its last step crossed the edge. */
    private void leave(RollState ball, double east, double north, double before) {
        double inside = 0;
        double outside = 1;
        for (int i = 0; i < 30; i++) {
            double middle = (inside + outside) / 2;
            boolean on = edge.inside(east + middle * (ball.east - east), north + middle * (ball.north - north));
            inside = on ? middle : inside;
            outside = on ? outside : middle;
        }
        double beyond = (1 - outside) * Math.hypot(ball.east - east, ball.north - north);
        ball.east = east + outside * (ball.east - east);
        ball.north = north + outside * (ball.north - north);
        ball.seconds = before + outside * (ball.seconds - before);
        ball.pathMetres -= beyond;
        ball.pathGroundMetres -= beyond;
        ball.end = RollEnd.OFF_GREEN;
    }
}
