package org.cupwright.app.desk.ground;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.cupwright.course.Course;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Problem;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * A course on which something was drawn about one of its greens.
 *
 * @param before the course as it was
 * @param after the course as it is then
 * @param hole the hole on whose page it was drawn
 * @param hazard the hazard that was, and the one that is; neither where the edge was drawn
 */
record Drawn(Course before, Course after, String hole, HazardChange hazard) {
    /** What was there, and what is. */
    record HazardChange(Optional<Hazard> before, Optional<Hazard> after) {
        static final HazardChange NONE = new HazardChange(Optional.empty(), Optional.empty());

        boolean isNone() {
            return before.isEmpty() && after.isEmpty();
        }

        Hazard.Kind kind() {
            return after.or(() -> before).orElseThrow().kind();
        }
    }

    Hole was() {
        return before.find(hole).orElseThrow();
    }

    Hole is() {
        return after.find(hole).orElseThrow();
    }

    /**
     * Draws it.
     *
     * @param paceMetres in which corners are counted
     * @throws Problem if it can be no edge, bunker or water, or nothing is otherwise
     */
    static Drawn of(Course course, Hole hole, GroundWish wish, double paceMetres) {
        PaceGrid grid = PaceGrid.of(hole, paceMetres);
        Drawn drawn;
        if (wish instanceof GroundWish.Edge edge) {
            List<MapPoint> corners = new TypedRing(grid, corners(hole.green().polygon())).read(edge.corners());
            Outline outline = ShapeChecks.green(ShapeChecks.edge(corners, hole.green()), hole.green());
            drawn = new Drawn(course, withEdge(course, hole, outline), hole.id(), HazardChange.NONE);
        } else {
            HazardChange change = hazard(hole, wish, grid);
            drawn = new Drawn(course, withHazard(course, change), hole.id(), change);
        }
        if (drawn.after().equals(course)) {
            throw Problem.of("ground.same", TypedRing.FIELD, "");
        }
        return drawn;
    }

    private static HazardChange hazard(Hole hole, GroundWish wish, PaceGrid grid) {
        if (wish instanceof GroundWish.Another another) {
            Polygon ground = ShapeChecks.ground(new TypedRing(grid, List.of()).read(another.corners()));
            return new HazardChange(
                    Optional.empty(), Optional.of(ShapeChecks.hazard(another.kind(), ground, hole.green())));
        }
        if (wish instanceof GroundWish.Moved moved) {
            Hazard known = known(hole, moved.number());
            List<MapPoint> corners = new TypedRing(grid, corners(known.area())).read(moved.corners());
            return new HazardChange(
                    Optional.of(known),
                    Optional.of(ShapeChecks.hazard(known.kind(), ShapeChecks.ground(corners), hole.green())));
        }
        return new HazardChange(Optional.of(known(hole, ((GroundWish.Away) wish).number())), Optional.empty());
    }

    private static Hazard known(Hole hole, int number) {
        if (number < 1 || number > hole.hazards().size()) {
            throw Problem.of(
                    "ground.noHazard", "draw", number, new Count(hole.hazards().size()));
        }
        return hole.hazards().get(number - 1);
    }

    /** Whether a course differs from an older version by nothing but what is drawn about one green. */
    static boolean isDrawn(Course older, Course course, Hole hole) {
        List<String> shared = course.onGreenOf(hole);
        Course asOlder = each(course, one -> {
            Hole before = older.find(one.id()).orElse(one);
            Hole hazards = one.withHazards(before.hazards());
            return shared.contains(one.id()) ? hazards.withGreen(before.green()) : hazards;
        });
        return asOlder.equals(older);
    }

    /** The corners of an area's edge, none twice. */
    static List<MapPoint> corners(Polygon area) {
        List<MapPoint> all = Arrays.stream(area.getExteriorRing().getCoordinates())
                .map(MapPoint::of)
                .toList();
        return all.subList(0, all.size() - 1);
    }

    /** All holes of one green have the same edge, and all hazards that lie near it by now. */
    private static Course withEdge(Course course, Hole hole, Outline outline) {
        List<String> shared = course.onGreenOf(hole);
        List<Hazard> all = course.holes().stream()
                .flatMap(one -> one.hazards().stream())
                .distinct()
                .toList();
        return each(course, one -> {
            if (!shared.contains(one.id())) {
                return one;
            }
            List<Hazard> hazards = new ArrayList<>(one.hazards());
            all.stream()
                    .filter(hazard -> !hazards.contains(hazard) && reaches(hazard, outline.polygon()))
                    .forEach(hazards::add);
            return one.withGreen(outline).withHazards(hazards);
        });
    }

    /** A hazard belongs to every green that it lies near to, as it does when a map is read. */
    private static Course withHazard(Course course, HazardChange change) {
        return each(course, hole -> {
            List<Hazard> hazards = new ArrayList<>(hole.hazards());
            int at = change.before().map(hazards::indexOf).orElse(-1);
            Optional<Hazard> near =
                    change.after().filter(hazard -> reaches(hazard, hole.green().polygon()));
            if (at >= 0) {
                hazards.remove(at);
            }
            near.ifPresent(hazard -> hazards.add(at >= 0 ? at : hazards.size(), hazard));
            return hazards.equals(hole.hazards()) ? hole : hole.withHazards(hazards);
        });
    }

    private static boolean reaches(Hazard hazard, Geometry green) {
        return hazard.area().isWithinDistance(green, ShapeChecks.REACH_METRES);
    }

    private static Course each(Course course, UnaryOperator<Hole> change) {
        return course.withHoles(course.holes().stream().map(change).toList());
    }
}
