package org.cupwright.app.office.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.answers.FindingText;
import org.cupwright.app.desk.files.FileFinding;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.findings.GroundFinding;

/** Draws what was found in files where it is: each place on the map of its green, under its number in a list. */
record FindingsOnGround(Texts texts) {
    /** A place farther from every green is of none, m: as much ground as is drawn about one. */
    private static final double FARTHEST_METRES = 20;

    /**
     * A green and what was found there.
     *
     * @param title which green
     * @param says what was found and in which file, in the order of their numbers
     * @param map where
     */
    record OnGreen(String title, List<String> says, String map) {}

    /** Green by green in the order of the course; greens without findings that have a place are left out. */
    List<OnGreen> of(Course course, List<FileFinding> findings) {
        Map<String, List<FileFinding>> byHole = new LinkedHashMap<>();
        course.holes().forEach(hole -> byHole.put(hole.id(), new ArrayList<>()));
        findings.forEach(found -> found.finding()
                .place()
                .flatMap(place -> green(course, place))
                .ifPresent(hole -> byHole.get(hole.id()).add(found)));
        return course.holes().stream()
                .filter(hole -> !byHole.get(hole.id()).isEmpty())
                .map(hole -> drawn(hole, byHole.get(hole.id())))
                .toList();
    }

    private static Optional<Hole> green(Course course, MapPoint place) {
        return course.holes().stream()
                .filter(hole -> metres(hole, place) <= FARTHEST_METRES)
                .min(Comparator.comparingDouble(hole -> metres(hole, place)))
                .filter(hole -> !isOfAll(hole, place));
    }

    /** What is said of a whole green stands at its middle: there is nothing to be seen there, and the lines name it. */
    private static boolean isOfAll(Hole hole, MapPoint place) {
        return place.equals(hole.green().centroid());
    }

    private static double metres(Hole hole, MapPoint place) {
        return hole.green().polygon().distance(place.toPoint());
    }

    private OnGreen drawn(Hole hole, List<FileFinding> findings) {
        String title = texts.say("map.title", hole.id());
        List<GroundFinding> places = findings.stream()
                .map(found -> new GroundFinding(found.finding(), found.area()))
                .toList();
        List<String> says = findings.stream()
                .map(found -> texts.say(found.finding().says()) + " (" + FindingText.where(texts, found) + ")")
                .toList();
        return new OnGreen(
                title,
                says,
                new GreenMap(texts).picture(GreenDrawing.about(hole, title).withFindings(places)));
    }
}
