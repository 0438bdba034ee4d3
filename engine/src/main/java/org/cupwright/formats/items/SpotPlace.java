package org.cupwright.formats.items;

import java.util.Locale;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.OnConvention;
import org.cupwright.green.Side;
import org.cupwright.message.Message;

/** The place of a level spot: east and north, or paces on and from the side. */
final class SpotPlace {
    private final OnConvention convention;
    private final double paceMetres;

    SpotPlace(OnConvention convention, double paceMetres) {
        this.convention = convention;
        this.paceMetres = paceMetres;
    }

    /**
     * @throws org.cupwright.finding.UnreadableFile if there is no such place on the green
     */
    MapPoint of(Hole hole, NamedColumns.Line line) {
        return line.text("east").isEmpty() ? paced(hole, line) : measured(hole, line);
    }

    private static MapPoint measured(Hole hole, NamedColumns.Line line) {
        MapPoint place = new MapPoint(line.number("east"), line.number("north"));
        if (!hole.green().contains(place)) {
            Message.Argument away = new Message.Length(hole.green().distanceToEdgeMetres(place));
            throw Finding.of(FindingKind.SPOT_OFF_GREEN, line.where(), away)
                    .at(place)
                    .failure();
        }
        return place;
    }

    private MapPoint paced(Hole hole, NamedColumns.Line line) {
        GreenFrame frame = GreenFrame.of(hole, convention)
                .orElseThrow(() -> line.trouble(FindingKind.NEEDS_LINE_OF_PLAY, hole.id()));
        String sideText = line.text("side").toUpperCase(Locale.ROOT);
        if (!sideText.matches("[LR].*")) {
            throw line.trouble(FindingKind.READING_NOT_READABLE, line.text("side"));
        }
        Side side = sideText.startsWith("L") ? Side.LEFT : Side.RIGHT;
        double on = line.number("on") * paceMetres;
        double fromSide = line.numberOf(sideText.substring(1).strip()) * paceMetres;
        return frame.find(on, side, fromSide)
                .orElseThrow(() -> line.trouble(FindingKind.NO_SUCH_PLACE, line.text("on") + " " + line.text("side")));
    }
}
