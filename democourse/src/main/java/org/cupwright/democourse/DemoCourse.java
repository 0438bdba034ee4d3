package org.cupwright.democourse;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.course.Outline;
import org.cupwright.course.Tee;
import org.cupwright.course.WalkOff;
import org.cupwright.green.LevelReading;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.SurveyPoint;
import org.cupwright.units.Heading;

/**
 * Wrenfold Moor: an invented course of eighteen holes on open ocean, made up for demonstrations and tests.
 *
 * <p>Nobody ever surveyed it and no such club exists. The same seed gives the same course, points and readings on every
 * machine.
 */
public final class DemoCourse {
    public static final String ID = "wrenfold-moor";
    public static final String NAME = "Wrenfold Moor (invented)";

    /** The demo's own today: a Saturday, so that the same command always shows the same morning. */
    public static final LocalDate TODAY = LocalDate.of(2026, 6, 20);

    /** UTM zone 26 north: the course lies in the open Atlantic, where no real one is. */
    private static final CourseFrame FRAME = new CourseFrame(32626, ZoneId.of("Atlantic/Azores"));

    private final long seed;
    private final Map<String, DemoLayout> layouts = new TreeMap<>();
    private final Course course;

    public DemoCourse(long seed) {
        this.seed = seed;
        List<DemoHole> plans = DemoHoles.all();
        DemoHole ninth = plans.get(8);
        List<Hole> holes = new ArrayList<>();
        for (DemoHole plan : plans) {
            DemoLayout layout = new DemoLayout(plan, plan.id().equals("18") ? ninth : plan);
            layouts.put(plan.id(), layout);
            holes.add(hole(layout));
        }
        this.course = new Course(ID, NAME, FRAME, holes);
    }

    public Course course() {
        return course;
    }

    /**
     * The form that the hole's green really has: what surveys and readings are taken from, and answers are held
     * against.
     */
    public MadeSurface trueSurface(String holeId) {
        return layout(holeId).surface(30 + 2 * (layout(holeId).middle().east() % 7));
    }

    /** Points of an invented survey; empty for a green that was never surveyed. */
    public List<SurveyPoint> survey(String holeId) {
        DemoLayout layout = layout(holeId);
        return layout.hole().known() == DemoHole.Known.SURVEY
                ? DemoSurvey.points(hole(layout).green(), trueSurface(holeId), seedFor(holeId))
                : List.of();
    }

    /** Slopes read with a level at a few spots; empty where nobody read any. */
    public List<LevelReading> levelReadings(String holeId) {
        DemoLayout layout = layout(holeId);
        return layout.hole().known() == DemoHole.Known.LEVELS
                ? DemoSurvey.readings(layout, trueSurface(holeId), seedFor(holeId))
                : List.of();
    }

    long seed() {
        return seed;
    }

    private long seedFor(String holeId) {
        // the two holes of the double green share its survey
        return 1000 * seed + (holeId.equals("18") ? 9 : Long.parseLong(holeId));
    }

    private DemoLayout layout(String holeId) {
        return Optional.ofNullable(layouts.get(holeId))
                .orElseThrow(() -> new IllegalArgumentException("no hole " + holeId + " on the invented course"));
    }

    private static Hole hole(DemoLayout layout) {
        DemoHole plan = layout.hole();
        List<Hazard> hazards = plan.hazards().stream()
                .map(hazard -> new Hazard(hazard.kind(), layout.beside(hazard)))
                .toList();
        List<Tee> tees = List.of(new Tee("back", layout.tee(20)), new Tee("middle", layout.tee(0)));
        return new Hole(
                plan.id(),
                new Outline(layout.outline()),
                Optional.of(new LineOfPlay(layout.line())),
                OptionalInt.of(plan.par()),
                OptionalDouble.of(length(layout.line())),
                hazards,
                tees,
                heads(layout),
                List.of(walkOff(layout)));
    }

    /** From the green's middle over the edge and on for some paces. */
    private static WalkOff walkOff(DemoLayout layout) {
        Heading leaving = layout.play().turnedClockwise(layout.hole().walkOff());
        MapPoint middle = layout.middle();
        double edge = layout.radius(layout.hole().walkOff());
        return new WalkOff(List.of(middle, middle.moved(leaving, edge), middle.moved(leaving, edge + 12)));
    }

    private static double length(List<MapPoint> line) {
        double length = 0;
        for (int i = 1; i < line.size(); i++) {
            length += line.get(i - 1).distanceMetres(line.get(i));
        }
        return length;
    }

    /** Four sprinkler heads a green, a little outside the edge. */
    private static List<Mark> heads(DemoLayout layout) {
        List<Mark> heads = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            double turn = 45 + 90 * i;
            MapPoint at = layout.middle().moved(layout.play().turnedClockwise(turn), layout.radius(turn) + 2);
            heads.add(new Mark(Mark.Kind.SPRINKLER_HEAD, "head " + layout.hole().id() + "-" + (i + 1), at));
        }
        return heads;
    }
}
