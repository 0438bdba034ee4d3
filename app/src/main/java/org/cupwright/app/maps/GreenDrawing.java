package org.cupwright.app.maps;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.Surface;
import org.cupwright.holelocation.judging.GreenJudgement;

/**
 * What is to be seen on the drawing of one green.
 *
 * @param hole outline, line of play, hazards, marks
 * @param title what stands on the drawing; empty on a small one
 * @param surface the ground, for contour lines; empty without a survey
 * @param ground hatched, dotted, unknown
 * @param oldHoles old holes with their age in days, the youngest first
 * @param slopes slopes in percent, written where they were taken
 * @param drawn good and bad ground and usual spots as people drew them
 * @param spots today's spot, or several
 * @param findings what is doubtful about the ground
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
        List<FindingOnMap> findings) {
    public GreenDrawing {
        oldHoles = List.copyOf(oldHoles);
        slopes = List.copyOf(slopes);
        drawn = List.copyOf(drawn);
        spots = List.copyOf(spots);
        findings = List.copyOf(findings);
    }

    /** A green with nothing on it but its outline and surroundings. */
    public static GreenDrawing of(Hole hole) {
        return new GreenDrawing(
                hole, "", Optional.empty(), DrawnGround.clear(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    /** A green as it was judged on a day, with what lies on it. */
    public static GreenDrawing of(GreenJudgement judgement, GroundOnDay day) {
        return new GreenDrawing(
                judgement.green().hole(),
                "",
                judgement.green().ground().surface(),
                DrawnGround.of(judgement),
                oldHoles(day),
                SlopeOnMap.of(judgement),
                judgement.green().drawn(),
                List.of(),
                List.of());
    }

    /** The old holes that still rest on the day. */
    private static List<OldHoleOnMap> oldHoles(GroundOnDay day) {
        List<OldHoleOnMap> holes = new ArrayList<>();
        for (GroundItem item : day.counting(GroundItem.Kind.OLD_HOLE)) {
            item.since()
                    .ifPresent(cut -> holes.add(new OldHoleOnMap(
                            MapPoint.of(item.place().getCoordinate()), ChronoUnit.DAYS.between(cut, day.day()))));
        }
        holes.sort(Comparator.comparingLong(OldHoleOnMap::days));
        return holes;
    }

    public GreenDrawing withTitle(String text) {
        return new GreenDrawing(hole, text, surface, ground, oldHoles, slopes, drawn, spots, findings);
    }

    public GreenDrawing withSurface(Surface known) {
        return new GreenDrawing(hole, title, Optional.of(known), ground, oldHoles, slopes, drawn, spots, findings);
    }

    public GreenDrawing withGround(Predicate<MapPoint> hatched, Predicate<MapPoint> dotted) {
        DrawnGround other = new DrawnGround(hatched, dotted, ground.notSurveyed());
        return new GreenDrawing(hole, title, surface, other, oldHoles, slopes, drawn, spots, findings);
    }

    public GreenDrawing withOldHoles(List<OldHoleOnMap> holes) {
        return new GreenDrawing(hole, title, surface, ground, holes, slopes, drawn, spots, findings);
    }

    public GreenDrawing withSlopes(List<SlopeOnMap> taken) {
        return new GreenDrawing(hole, title, surface, ground, oldHoles, taken, drawn, spots, findings);
    }

    public GreenDrawing withDrawn(List<DrawnItem> items) {
        return new GreenDrawing(hole, title, surface, ground, oldHoles, slopes, items, spots, findings);
    }

    public GreenDrawing withSpots(List<MapPoint> chosen) {
        return new GreenDrawing(hole, title, surface, ground, oldHoles, slopes, drawn, chosen, findings);
    }

    public GreenDrawing withFindings(List<FindingOnMap> doubtful) {
        return new GreenDrawing(hole, title, surface, ground, oldHoles, slopes, drawn, spots, doubtful);
    }
}
