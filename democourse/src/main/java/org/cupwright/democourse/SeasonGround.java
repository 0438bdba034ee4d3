package org.cupwright.democourse;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Area;
import org.cupwright.cupchange.CrewNote.Severity;
import org.cupwright.cupchange.CrewNote.SomethingOdd;
import org.cupwright.cupchange.GroundNote.Frost;
import org.cupwright.cupchange.GroundNote.GroundMarked;
import org.cupwright.cupchange.GroundNote.GroundReason;
import org.cupwright.cupchange.GroundNote.GroundUse;

/** Ground that was closed and opened again, ground in light use, and two mornings with frost. */
final class SeasonGround {
    private static final String REPAIRED = "8";
    private static final String WORN = "15";
    private static final LocalDate CLOSED_ON = LocalDate.of(2026, 3, 9);
    private static final LocalDate OPENED_ON = LocalDate.of(2026, 4, 13);
    private static final LocalDate WORN_ON = LocalDate.of(2026, 6, 8);
    private static final LocalDate WORN_UNTIL = LocalDate.of(2026, 6, 28);

    private SeasonGround() {}

    static void write(DemoCourse demo, SeasonLog log) {
        closedAndOpened(demo, log);
        light(demo, log);
        for (LocalDate day : List.of(LocalDate.of(2026, 2, 24), LocalDate.of(2026, 3, 3))) {
            log.all(day, LocalTime.of(6, 30), SeasonLog.HEAD, new Frost(true));
            log.all(day, LocalTime.of(9, 15), SeasonLog.HEAD, new Frost(false));
        }
    }

    /** A leaking pipe under the front left of a green: dug, turfed, and back in use five weeks later. */
    private static void closedAndOpened(DemoCourse demo, SeasonLog log) {
        Area dug = square(demo, REPAIRED, -8.5, -9, 5);
        log.at(
                CLOSED_ON,
                LocalTime.of(8, 20),
                SeasonLog.FRONT_NINE,
                REPAIRED,
                new SomethingOdd(Severity.SOON, "Wet patch front left, a pipe leaks.", Optional.empty()));
        log.at(
                CLOSED_ON,
                LocalTime.of(10, 0),
                SeasonLog.HEAD,
                REPAIRED,
                new GroundMarked(GroundUse.CLOSED, dug, GroundReason.REPAIR, CLOSED_ON, Optional.empty()));
        log.at(
                OPENED_ON,
                LocalTime.of(10, 0),
                SeasonLog.HEAD,
                REPAIRED,
                new GroundMarked(GroundUse.FREE, dug, GroundReason.OTHER, OPENED_ON, Optional.empty()));
    }

    private static void light(DemoCourse demo, SeasonLog log) {
        log.at(
                WORN_ON,
                LocalTime.of(15, 10),
                SeasonLog.HEAD,
                WORN,
                new GroundMarked(
                        GroundUse.LIGHT_USE,
                        square(demo, WORN, -2, -11, 5),
                        GroundReason.WEAR,
                        WORN_ON,
                        Optional.of(WORN_UNTIL)));
    }

    /**
     * A square in the green's own frame (x right, y along play), its near left corner given; corners to the centimetre.
     */
    private static Area square(DemoCourse demo, String hole, double x, double y, double side) {
        Hole of = demo.course().find(hole).orElseThrow();
        var play = of.lineOfPlay().orElseThrow().atGreen();
        var right = play.turnedClockwise(90);
        MapPoint corner = of.green().centroid().moved(right, x).moved(play, y);
        return new Area.Drawn(List.of(
                rounded(corner),
                rounded(corner.moved(right, side)),
                rounded(corner.moved(right, side).moved(play, side)),
                rounded(corner.moved(play, side))));
    }

    private static MapPoint rounded(MapPoint point) {
        return new MapPoint(Math.rint(100 * point.east()) / 100, Math.rint(100 * point.north()) / 100);
    }
}
