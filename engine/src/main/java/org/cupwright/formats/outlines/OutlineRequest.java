package org.cupwright.formats.outlines;

import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.units.Heading;

/**
 * What a person says about a course beside its map file.
 *
 * @param courseId short name for commands and files
 * @param name the name people use; empty: what the map calls the course, else its id
 * @param zone time zone of its days
 * @param frame the frame its survey is in, which becomes the course's own where it is fit for measuring; empty: the
 *     outlines' UTM zone
 * @param towards directions of play by hole, which go before the map's lines
 */
public record OutlineRequest(
        String courseId,
        Optional<String> name,
        ZoneId zone,
        Optional<CoordinateFrame> frame,
        Map<String, Heading> towards) {
    public OutlineRequest {
        towards = Map.copyOf(towards);
    }

    /** Nothing said but what must be. */
    public static OutlineRequest of(String courseId, ZoneId zone) {
        return new OutlineRequest(courseId, Optional.empty(), zone, Optional.empty(), Map.of());
    }

    public OutlineRequest inFrame(CoordinateFrame other) {
        return new OutlineRequest(courseId, name, zone, Optional.of(other), towards);
    }

    public OutlineRequest withTowards(Map<String, Heading> directions) {
        return new OutlineRequest(courseId, name, zone, frame, directions);
    }
}
