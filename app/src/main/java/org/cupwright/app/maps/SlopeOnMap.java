package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Green;
import org.cupwright.green.LevelReading;
import org.cupwright.green.LevelSpotsGround;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.holelocation.spot.SpotGround;
import org.cupwright.units.Heading;
import org.locationtech.jts.geom.Envelope;

/**
 * A slope, written where it was taken.
 *
 * @param at where
 * @param percent the slope
 */
public record SlopeOnMap(MapPoint at, double percent) {
    /** Between the slopes written on a surveyed green, m: our choice, as many as can be read. */
    private static final double APART_METRES = 4;

    /** As many slopes of a green as can be read: every few metres of a survey, or every reading of a level. */
    static List<SlopeOnMap> of(GreenJudgement judgement) {
        Green green = judgement.green();
        if (green.ground() instanceof LevelSpotsGround levels) {
            return levels.readings().stream()
                    .map(LevelReading::place)
                    .flatMap(at -> levels.planeAt(at).stream().map(plane -> new SlopeOnMap(at, plane.slopePercent())))
                    .toList();
        }
        return grid(green).stream()
                .flatMap(at -> judgement.findSpot(at).stream())
                .filter(SpotGround::known)
                .map(spot -> new SlopeOnMap(spot.at(), spot.slopePercent()))
                .toList();
    }

    /** Points in rows across the line of play, from the green's middle. */
    private static List<MapPoint> grid(Green green) {
        Heading play = green.hole().lineOfPlay().map(LineOfPlay::atGreen).orElse(new Heading(0));
        Heading across = play.turnedClockwise(90);
        MapPoint middle = green.hole().green().centroid();
        Envelope box = green.hole().green().polygon().getEnvelopeInternal();
        int reach = (int) Math.ceil(Math.hypot(box.getWidth(), box.getHeight()) / 2 / APART_METRES);
        List<MapPoint> points = new ArrayList<>();
        for (int row = reach; row >= -reach; row--) {
            for (int column = -reach; column <= reach; column++) {
                MapPoint at = middle.moved(play, row * APART_METRES).moved(across, column * APART_METRES);
                if (green.hole().green().contains(at)
                        && green.hole().green().distanceToEdgeMetres(at) > APART_METRES / 4) {
                    points.add(at);
                }
            }
        }
        return points;
    }
}
