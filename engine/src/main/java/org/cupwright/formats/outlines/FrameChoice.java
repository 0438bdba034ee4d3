package org.cupwright.formats.outlines;

import java.util.List;
import java.util.Optional;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.FrameForMeasuring;
import org.cupwright.formats.Projection;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Chooses a course's frame: the survey's own where it is fit for measuring, else the UTM zone of the greens. */
final class FrameChoice {
    private final CoordinateFrame ofOutlines;
    private final List<Finding> findings;

    FrameChoice(CoordinateFrame ofOutlines, List<Finding> findings) {
        this.ofOutlines = ofOutlines;
        this.findings = findings;
    }

    CoordinateFrame choose(List<MapFeature> greens, Optional<CoordinateFrame> asked) {
        Envelope all = new Envelope();
        greens.forEach(green -> all.expandToInclude(green.shape().getEnvelopeInternal()));
        Coordinate middle = all.centre();
        CoordinateFrame degrees = CoordinateFrame.of(CoordinateFrame.WGS84);
        Coordinate place = Projection.between(ofOutlines, degrees).apply(middle.x, middle.y);
        CoordinateFrame utm = CoordinateFrame.utmOf(place.x, place.y);
        if (asked.isEmpty() || FrameForMeasuring.fits(asked.get(), place.x, place.y)) {
            return asked.orElse(utm);
        }
        Message.Argument given = new Message.Name(asked.get().toString());
        findings.add(Finding.of(FindingKind.FRAME_NOT_FOR_MEASURING, Where.file(), given)
                .trying(new Message.Name(utm.toString())));
        return utm;
    }
}
