package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Geometry;

/**
 * Something doubtful, marked where it is.
 *
 * @param number its number on the green
 * @param at where; empty when it is about the whole green
 * @param area the ground it is about, when it is about a part
 * @param says what it is
 */
public record FindingOnMap(int number, Optional<MapPoint> at, Optional<Geometry> area, Message says) {
    /** The findings about a green, the worst first. */
    public static List<FindingOnMap> of(List<GroundFinding> findings) {
        List<FindingOnMap> marked = new ArrayList<>();
        for (GroundFinding found : findings) {
            marked.add(new FindingOnMap(
                    marked.size() + 1,
                    found.finding().place(),
                    found.area().map(area -> area),
                    found.finding().says()));
        }
        return marked;
    }
}
