package org.cupwright.app.maps;

import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.Surface;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.holelocation.judging.GreenJudgement;

/**
 * What is to be seen on the drawing of one green.
 *
 * @param hole outline, line of play, hazards, marks
 * @param title what stands on the drawing; empty on a small one
 * @param surface the ground, for contour lines; empty without a survey
 * @param ground hatched, dotted, unknown, closed
 * @param oldHoles old holes with their age in days, the youngest first
 * @param slopes slopes in percent, written where they were taken
 * @param drawn good and bad ground and usual spots as people drew them
 * @param spots today's spot, or several
 * @param areas the course's own areas of the green, those of the day marked
 * @param findings what is doubtful about the ground, the worst first
 * @param about whether it is a drawing of what lies about the green: with more ground beyond the edge, the line along
 *     which it is played to, and a number for each hazard; nothing is said of contours then
 */
public record GreenDrawing(
        Hole hole,
        String title,
        Optional<Surface> surface,
        DrawnGround ground,
        List<OldHoleOnMap> oldHoles,
        List<SlopeOnMap> slopes,
        List<DrawnItem> drawn,
        List<MapPoint> spots,
        List<AreaOnMap> areas,
        List<GroundFinding> findings,
        boolean about) {
    /** Ground shown beyond the edge where the drawing is of what lies about the green, m: as far as maps are read. */
    private static final double ABOUT_METRES = 20;

    public GreenDrawing {
        areas = List.copyOf(areas);
        oldHoles = List.copyOf(oldHoles);
        slopes = List.copyOf(slopes);
        drawn = List.copyOf(drawn);
        spots = List.copyOf(spots);
        findings = List.copyOf(findings);
    }

    /** A green and what lies on it. */
    public GreenDrawing(
            Hole hole,
            String title,
            Optional<Surface> surface,
            DrawnGround ground,
            List<OldHoleOnMap> oldHoles,
            List<SlopeOnMap> slopes,
            List<DrawnItem> drawn,
            List<MapPoint> spots,
            List<AreaOnMap> areas,
            List<GroundFinding> findings) {
        this(hole, title, surface, ground, oldHoles, slopes, drawn, spots, areas, findings, false);
    }

    /** What lies about a green, as it is drawn on the course's map; nothing of a day, and nothing that was judged. */
    public static GreenDrawing about(Hole hole, String title) {
        return new GreenDrawing(
                hole,
                title,
                Optional.empty(),
                DrawnGround.notJudged(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                true);
    }

    /** How much ground beyond the green's edge is shown. */
    double marginMetres() {
        return about ? ABOUT_METRES : MapFrame.MARGIN_METRES;
    }

    /** A green as it was judged on a day, with what lies on it. */
    public static GreenDrawing of(GreenJudgement judgement, GroundOnDay day) {
        return new GreenDrawing(
                judgement.green().hole(),
                "",
                judgement.green().ground().surface(),
                DrawnGround.of(judgement, day),
                oldHoles(day),
                SlopeOnMap.of(judgement),
                judgement.green().drawn(),
                List.of(),
                List.of(),
                List.of());
    }

    /** The old holes that still rest on the day. */
    private static List<OldHoleOnMap> oldHoles(GroundOnDay day) {
        return day.counting(GroundItem.Kind.OLD_HOLE).stream()
                .flatMap(item -> item.since().stream()
                        .map(last -> new OldHoleOnMap(
                                MapPoint.of(item.place().getCoordinate()), ChronoUnit.DAYS.between(last, day.day()))))
                .sorted(Comparator.comparingLong(OldHoleOnMap::days))
                .toList();
    }

    public GreenDrawing withTitle(String text) {
        return new GreenDrawing(hole, text, surface, ground, oldHoles, slopes, drawn, spots, areas, findings, about);
    }

    public GreenDrawing withSpots(List<MapPoint> chosen) {
        return new GreenDrawing(hole, title, surface, ground, oldHoles, slopes, drawn, chosen, areas, findings, about);
    }

    public GreenDrawing withAreas(List<AreaOnMap> ones) {
        return new GreenDrawing(hole, title, surface, ground, oldHoles, slopes, drawn, spots, ones, findings, about);
    }

    /** The ground alone: contours, slopes, gaps; nothing of a day, and nothing that people drew. */
    public GreenDrawing groundAlone() {
        return new GreenDrawing(
                hole, title, surface, ground.onlyGaps(), List.of(), slopes, List.of(), List.of(), List.of(), findings);
    }

    public GreenDrawing withFindings(List<GroundFinding> doubtful) {
        return new GreenDrawing(hole, title, surface, ground, oldHoles, slopes, drawn, spots, areas, doubtful, about);
    }
}
