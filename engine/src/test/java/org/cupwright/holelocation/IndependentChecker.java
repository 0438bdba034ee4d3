package org.cupwright.holelocation;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.Hazard;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Green;
import org.cupwright.green.GroundItem;
import org.cupwright.green.Jet;
import org.cupwright.green.Surface;
import org.locationtech.jts.geom.Coordinate;

/**
 * Holds a judgement against the true surface and the drawn shapes by brute force, in its own arithmetic: no rule, no
 * disc and no roller of the project is used. Limits stand here once more, as numbers for 10 ft and a dry everyday day.
 */
public final class IndependentChecker {
    private static final double RESISTANCE = 0.0783;
    private static final double HEADINGS = 36;

    private final Green green;
    private final Surface truth;
    private final DayConditions day;
    private final double slopeError;
    private final List<String> broken = new ArrayList<>();

    public IndependentChecker(Green green, Surface truth, DayConditions day, double slopeError) {
        this.green = green;
        this.truth = truth;
        this.day = day;
        this.slopeError = slopeError;
    }

    /** Rules that the position breaks although it does not fail and does not list them as set aside. */
    public List<String> brokenInSilence(Judgement judgement) {
        broken.clear();
        if (judgement.verdict() == Verdict.FAIL || judgement.verdict() == Verdict.NOT_SURVEYED) {
            return broken;
        }
        MapPoint at = judgement.position();
        require(judgement, RuleId.EDGE, toEdge(at) >= 4 * 0.914 - 1e-9);
        require(judgement, RuleId.HAZARD, toHazardousEdge(at) >= 5 * 0.914 - 0.03);
        require(judgement, RuleId.OLD_HOLE, nearest(at, GroundItem.Kind.OLD_HOLE) >= 2.74);
        require(judgement, RuleId.PLUG, nearest(at, GroundItem.Kind.PLUG) >= 0.15);
        require(judgement, RuleId.LEVEL, worstSlope(at) <= 0.03 + 2 * slopeError + 1e-4);
        require(judgement, RuleId.HOLDABLE, worstLeave(at) <= longestLeave());
        return broken;
    }

    /** Rules by which a failing position is said to fail although it keeps to them all. */
    public boolean failsWithoutReason(Judgement judgement) {
        MapPoint at = judgement.position();
        boolean reason = toEdge(at) < 4 * 0.914 + 1e-9
                || toHazardousEdge(at) < 5 * 0.914 + 0.03
                || nearest(at, GroundItem.Kind.OLD_HOLE) < 2.74
                || nearest(at, GroundItem.Kind.PLUG) < 0.15
                || judgement.rule(RuleId.EVEN_GRADE).outcome() == Outcome.FAIL
                || judgement.rule(RuleId.RIDGE).outcome() == Outcome.FAIL
                || worstSlope(at) > 0.03
                || worstLeave(at) > 0.90;
        return judgement.verdict() == Verdict.FAIL && !reason;
    }

    private void require(Judgement judgement, RuleId rule, boolean kept) {
        if (!kept && !judgement.setAside().contains(rule)) {
            broken.add(rule + " at " + judgement.position() + ": " + judgement.rule(rule));
        }
    }

    private double toEdge(MapPoint at) {
        return toRing(at, green.hole().green().polygon().getExteriorRing().getCoordinates());
    }

    private static double toRing(MapPoint at, Coordinate[] ring) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < ring.length; i++) {
            double dx = ring[i].x - ring[i - 1].x;
            double dy = ring[i].y - ring[i - 1].y;
            double share = ((at.east() - ring[i - 1].x) * dx + (at.north() - ring[i - 1].y) * dy) / (dx * dx + dy * dy);
            double on = Math.max(0, Math.min(1, share));
            nearest = Math.min(
                    nearest, Math.hypot(ring[i - 1].x + on * dx - at.east(), ring[i - 1].y + on * dy - at.north()));
        }
        return nearest;
    }

    /** Walks the edge in steps of 2 cm and looks for hazards from there. */
    private double toHazardousEdge(MapPoint at) {
        double nearest = Double.POSITIVE_INFINITY;
        Coordinate[] ring = green.hole().green().polygon().getExteriorRing().getCoordinates();
        for (int i = 1; i < ring.length; i++) {
            int steps = (int) Math.ceil(ring[i].distance(ring[i - 1]) / 0.02);
            for (int step = 0; step < steps; step++) {
                double share = (double) step / steps;
                MapPoint edge = new MapPoint(
                        ring[i - 1].x + share * (ring[i].x - ring[i - 1].x),
                        ring[i - 1].y + share * (ring[i].y - ring[i - 1].y));
                double distance = edge.distanceMetres(at);
                if (distance < nearest && hazardWithin(edge, 5 * 0.914 - 0.005)) {
                    nearest = distance;
                }
            }
        }
        return nearest;
    }

    private boolean hazardWithin(MapPoint edge, double reach) {
        for (Hazard hazard : green.hole().hazards()) {
            if (toRing(edge, hazard.area().getExteriorRing().getCoordinates()) <= reach) {
                return true;
            }
        }
        return false;
    }

    private double nearest(MapPoint at, GroundItem.Kind kind) {
        double nearest = Double.POSITIVE_INFINITY;
        for (GroundItem item : day.ground().items()) {
            if (item.kind() == kind) {
                Coordinate there = item.place().getCoordinate();
                nearest = Math.min(nearest, Math.hypot(there.x - at.east(), there.y - at.north()));
            }
        }
        return nearest;
    }

    private double worstSlope(MapPoint at) {
        double worst = 0;
        for (double east = -0.5; east <= 0.5; east += 0.25) {
            for (double north = -0.5; north <= 0.5; north += 0.25) {
                if (Math.hypot(east, north) <= 0.6) {
                    worst = Math.max(worst, discSlope(at.east() + east, at.north() + north));
                }
            }
        }
        return worst;
    }

    /** Least squares through heights every 7 cm in the disc. */
    private double discSlope(double east, double north) {
        Jet jet = new Jet();
        double xx = 0;
        double xz = 0;
        double yz = 0;
        for (int i = -13; i <= 13; i++) {
            for (int j = -13; j <= 13; j++) {
                if (Math.hypot(0.07 * i, 0.07 * j) <= 0.91) {
                    truth.at(east + 0.07 * i, north + 0.07 * j, jet);
                    xx += 0.07 * i * 0.07 * i;
                    xz += 0.07 * i * jet.z;
                    yz += 0.07 * j * jet.z;
                }
            }
        }
        return Math.hypot(xz / xx, yz / xx);
    }

    /** The longest leave that may still be called a caution: 0.91 m on ground whose slope is two errors off. */
    private double longestLeave() {
        double slope = RESISTANCE * (1 - 0.30 / 0.91) + 2 * slopeError;
        return Math.min(3, 0.30 * RESISTANCE / (RESISTANCE - slope)) + 0.02;
    }

    private double worstLeave(MapPoint at) {
        double worst = 0;
        for (int heading = 0; heading < HEADINGS; heading++) {
            worst = Math.max(worst, leave(at, 2 * Math.PI * heading / HEADINGS));
        }
        return worst;
    }

    /** Small steps of time with the small-slope form of the motion. */
    private double leave(MapPoint at, double angle) {
        double speed = Math.sqrt(10.0 / 7 * 9.81 * RESISTANCE * 0.30);
        double x = at.east();
        double y = at.north();
        double u = speed * Math.sin(angle);
        double w = speed * Math.cos(angle);
        double dt = 0.002;
        Jet jet = new Jet();
        for (int i = 0; i < 10_000; i++) {
            truth.at(x, y, jet);
            double v = Math.hypot(u, w);
            double slope = Math.hypot(jet.zx, jet.zy);
            boolean rests = v < 0.002 && slope < RESISTANCE;
            if (rests || Math.hypot(x - at.east(), y - at.north()) > 3) {
                break;
            }
            u -= dt * 5 / 7 * 9.81 * (jet.zx + RESISTANCE * u / v);
            w -= dt * 5 / 7 * 9.81 * (jet.zy + RESISTANCE * w / v);
            x += dt * u;
            y += dt * w;
        }
        return Math.min(3, Math.hypot(x - at.east(), y - at.north()));
    }
}
