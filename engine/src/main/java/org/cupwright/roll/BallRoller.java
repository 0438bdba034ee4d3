package org.cupwright.roll;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Jet;
import org.cupwright.green.Surface;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Heading;

/**
 * Rolls balls over a green: where a putt comes to rest, how long it rolls, and whether it leaves the green.
 *
 * <p>The full equations of {@link RollingMotion} are stepped by the classical fourth-order Runge–Kutta rule, by
 * distance rather than by time, in shorter steps where a slow ball bends; the last millimetres come from the plane's
 * closed form ({@link PlaneRest}). A ball that is slow is not therefore at rest: it rests only where the slope is at
 * most ρ, and one that turns round on a steeper slope runs back down. Above ρ a ball may run for ever: after {@link
 * #MOST_SECONDS} or {@link #MOST_PATH_METRES} the roll is given up as {@link RollEnd#RUNNING}.
 *
 * <p>Places are in the course's frame, launch speeds along the ground. The hole is not looked at. The edge is asked at
 * the end of every step: a corner of the outline that a ball cuts within one step is not noticed. Safe for use by
 * several threads, with one {@link RollState} for each.
 */
public final class BallRoller {
    /** Bound on the time of a roll, s (our choice): five times the longest putt one sees. */
    public static final double MOST_SECONDS = 60;

    /** Bound on the length of a roll, m (our choice): longer than any green. */
    public static final double MOST_PATH_METRES = 100;

    /**
     * Below this speed, m/s, a ball counts as turning round or at rest (our choice): it has a few micrometres to roll.
     */
    private static final double TURNING_METRES_PER_SECOND = 1e-4;

    private static final int EDGE_HALVINGS = 24;

    private final Surface surface;
    private final Edge edge;
    private final RollSteps steps;
    private final RollingMotion motion;
    private final RollStep step;

    /** Rolls on ground without end. */
    public BallRoller(Surface surface, GreenSpeed speed) {
        this(surface, speed, Edge.NONE);
    }

    public BallRoller(Surface surface, GreenSpeed speed, Edge edge) {
        this(surface, speed, edge, RollSteps.STANDARD);
    }

    public BallRoller(Surface surface, GreenSpeed speed, Edge edge, RollSteps steps) {
        this.surface = surface;
        this.edge = edge;
        this.steps = steps;
        this.motion = new RollingMotion(speed);
        this.step = new RollStep(surface, motion);
    }

    /**
     * Rolls one ball to its end.
     *
     * @param from where it starts; outside the edge it is off the green at once
     * @param heading its first direction on the map
     * @param launchMetresPerSecond its first speed along the ground, not negative
     */
    public Roll roll(MapPoint from, Heading heading, double launchMetresPerSecond) {
        RollState state = new RollState();
        stopOf(from.east(), from.north(), heading.east(), heading.north(), launchMetresPerSecond, state);
        return state.toRoll();
    }

    /**
     * Rolls one ball to its end, and tells by which way.
     *
     * @param everyMetres how long a piece of the way may be at least before the next place of it is told
     * @return the places it rolled over, from its start to its end; at least the start
     */
    public List<MapPoint> path(MapPoint from, Heading heading, double launchMetresPerSecond, double everyMetres) {
        RollState state = new RollState();
        List<MapPoint> path = new ArrayList<>(List.of(from));
        launch(from.east(), from.north(), heading.east(), heading.north(), launchMetresPerSecond, state);
        double next = everyMetres;
        while (state.end == null) {
            advance(state, MOST_SECONDS);
            if (state.end != null || state.pathMetres >= next) {
                path.add(new MapPoint(state.east, state.north));
                next = state.pathMetres + everyMetres;
            }
        }
        return path;
    }

    /** How fast a ball starts that rolls so far on level ground, m/s. */
    public double launchForLevel(double metres) {
        return Math.sqrt(2 * motion.decelerationOnLevel() * metres);
    }

    /**
     * {@link #roll} for callers that roll millions: makes no object for a ball that stays clear of the edge.
     *
     * @param unitEast east component of the first direction on the map, a unit vector
     * @param out receives the end of the roll
     */
    public void stopOf(
            double east, double north, double unitEast, double unitNorth, double launchMetresPerSecond, RollState out) {
        launch(east, north, unitEast, unitNorth, launchMetresPerSecond, out);
        while (out.end == null) {
            advance(out, MOST_SECONDS);
        }
    }

    void launch(double east, double north, double unitEast, double unitNorth, double speed, RollState out) {
        out.start(east, north);
        if (!edge.holds(east, north)) {
            out.end = RollEnd.OFF_GREEN;
            return;
        }
        surface.at(east, north, out.jet);
        out.launch(unitEast, unitNorth, speed);
    }

    /** Takes one step, at most to a time, or brings the roll to its end. */
    void advance(RollState state, double untilSeconds) {
        surface.at(state.east, state.north, state.jet);
        motion.at(state.jet, state.velocityEast, state.velocityNorth, state.first);
        double speed = state.first.groundSpeed;
        if (speed < TURNING_METRES_PER_SECOND) {
            turnOrRest(state);
        } else if (finishes(state.jet, speed)) {
            finish(state);
        } else {
            double left = untilSeconds - state.seconds;
            double stepSeconds = stepSeconds(state.first);
            if (stepSeconds < left) {
                takeStep(state, stepSeconds);
            } else {
                takeStep(state, left);
                state.seconds = untilSeconds;
            }
        }
    }

    private double stepSeconds(RollingMotion.Acceleration now) {
        double acceleration = Math.sqrt(now.east * now.east + now.north * now.north);
        double changing = Math.max(acceleration, motion.decelerationOnLevel());
        return Math.min(steps.stepMetres() / now.groundSpeed, steps.greatestSpeedShare() * now.groundSpeed / changing);
    }

    private void takeStep(RollState state, double stepSeconds) {
        state.keep();
        step.take(state, stepSeconds);
        if (!edge.holds(state.east, state.north)) {
            toEdge(state, share -> step.take(state, share * stepSeconds));
        } else if (state.seconds >= MOST_SECONDS || state.pathMetres >= MOST_PATH_METRES) {
            state.end = RollEnd.RUNNING;
        }
    }

    /**
     * Where the slope is at most ρ the ball rests; where it is steeper it starts down the fall line at the speed it
     * has.
     */
    private void turnOrRest(RollState state) {
        double slope = Math.hypot(state.jet.zx, state.jet.zy);
        if (slope <= motion.rollingResistance()) {
            state.comeToRest();
            return;
        }
        double mapSpeed = TURNING_METRES_PER_SECOND / Math.sqrt(1 + slope * slope);
        state.velocityEast = -mapSpeed * state.jet.zx / slope;
        state.velocityNorth = -mapSpeed * state.jet.zy / slope;
        motion.at(state.jet, state.velocityEast, state.velocityNorth, state.first);
        takeStep(state, stepSeconds(state.first));
    }

    /**
     * Whether the ball stops within the last few millimetres, whichever way it goes: the longest way is straight down.
     */
    private boolean finishes(Jet jet, double speed) {
        double rho = motion.rollingResistance();
        double brake = motion.decelerationOnLevel() / rho * 2 * steps.finishMetres();
        double speedSquare = speed * speed;
        if (speedSquare >= brake * rho) {
            return false;
        }
        double gradientSquare = jet.zx * jet.zx + jet.zy * jet.zy;
        double slope = Math.sqrt(gradientSquare);
        return speedSquare * Math.sqrt(1 + gradientSquare) < brake * (rho - slope);
    }

    /** Lets the ball come to rest; over the last millimetres a straight line is near enough to find the edge. */
    private void finish(RollState state) {
        state.rest.solve(state, motion.rollingResistance());
        state.keep();
        state.rest.move(state, 1);
        if (edge.holds(state.east, state.north)) {
            state.comeToRest();
            return;
        }
        toEdge(state, share -> state.rest.move(state, share));
    }

    /** Halves a movement that left the green until its end lies on the edge, to less than a micrometre. */
    private void toEdge(RollState state, DoubleConsumer moveByShare) {
        double on = 0;
        double off = 1;
        for (int i = 0; i < EDGE_HALVINGS; i++) {
            double share = (on + off) / 2;
            state.goBack();
            moveByShare.accept(share);
            if (edge.holds(state.east, state.north)) {
                on = share;
            } else {
                off = share;
            }
        }
        state.end = RollEnd.OFF_GREEN;
    }
}
