package org.cupwright.app.maps;

import java.util.List;
import org.cupwright.course.MapPoint;

/**
 * Corners that somebody draws, to lie over a picture of the ground: the same place, and nothing else.
 * The ring has the class {@code ring}.
 *
 * @param corners in the order in which they were drawn; the last is joined to the first
 */
public record DrawnRing(List<MapPoint> corners) {
    public DrawnRing {
        corners = List.copyOf(corners);
    }

    /** The ring alone, as an SVG document of the size of the picture. */
    public String drawn(MapFrame frame) {
        Svg svg = new Svg(frame.width(), frame.height(), "");
        if (!corners.isEmpty()) {
            StringBuilder data = new StringBuilder();
            for (MapPoint at : corners) {
                data.append(data.isEmpty() ? "M" : "L").append(Svg.data(frame.x(at), frame.y(at)));
            }
            double em = MapStyle.PICTURE.em();
            svg.group("ring", MapStyle.broken(MapStyle.INK, 2.6, 0.5 * em, 0.3 * em))
                    .path(data.append('Z').toString())
                    .end();
        }
        return svg.done();
    }
}
