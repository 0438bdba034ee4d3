package org.cupwright.app.maps;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;

/**
 * What is asked about a green, drawn to lie over its picture: the same ground at the same place, and nothing else.
 *
 * <p>The asked spot is a ring with four strokes, the one that is held beside it a square about a point, a better spot
 * near it a broken ring, places to read with the level are triangles with their numbers. A ball's way is a line with a
 * point where it ended. The marks are our own, in ink, and as clear in grey. The groups carry classes: {@code asked},
 * {@code held}, {@code better}, {@code reading}, {@code way}, {@code way-end}.
 *
 * @param asked the spot that is asked about
 * @param held the spot that another is held against
 * @param better the nearest better one
 * @param readings places to lay the level, in the order of a walk
 * @param way the places a ball rolled over; none where no ball was rolled
 */
public record SpotMarks(
        Optional<MapPoint> asked,
        Optional<MapPoint> held,
        Optional<MapPoint> better,
        List<MapPoint> readings,
        List<MapPoint> way) {
    private static final double EM = MapStyle.PICTURE.em();
    private static final double RING = 0.8 * EM;

    public SpotMarks {
        readings = List.copyOf(readings);
        way = List.copyOf(way);
    }

    /** The marks alone, as an SVG document of the size of the green's picture. */
    public String drawn(MapFrame frame) {
        Svg svg = new Svg(frame.width(), frame.height(), "");
        way(frame, svg);
        for (int i = 0; i < readings.size(); i++) {
            reading(i + 1, frame.x(readings.get(i)), frame.y(readings.get(i)), svg);
        }
        better.ifPresent(at -> ring("better", MapStyle.broken(MapStyle.INK, 2, 0.4 * EM, 0.3 * EM), at, frame, svg));
        held.ifPresent(at -> held(frame.x(at), frame.y(at), svg));
        asked.ifPresent(at -> asked(frame.x(at), frame.y(at), svg));
        return svg.done();
    }

    private void way(MapFrame frame, Svg svg) {
        if (way.isEmpty()) {
            return;
        }
        StringBuilder data = new StringBuilder();
        for (MapPoint at : way) {
            data.append(data.isEmpty() ? "M" : "L").append(Svg.data(frame.x(at), frame.y(at)));
        }
        MapPoint end = way.get(way.size() - 1);
        svg.group("way", MapStyle.stroke(MapStyle.INK, 2.6))
                .path(data.toString())
                .end();
        svg.group("way-end", MapStyle.fill(MapStyle.INK))
                .circle(frame.x(end), frame.y(end), 0.35 * EM)
                .end();
    }

    private static void ring(String name, String paint, MapPoint at, MapFrame frame, Svg svg) {
        svg.group(name, paint).circle(frame.x(at), frame.y(at), RING).end();
    }

    private static void asked(double x, double y, Svg svg) {
        double from = 0.5 * RING;
        double arm = 1.1 * RING;
        svg.group("asked", MapStyle.stroke(MapStyle.INK, 2.6))
                .circle(x, y, RING)
                .path("M", x - from, y, "h", -arm, "M", x + from, y, "h", arm)
                .path("M", x, y - from, "v", -arm, "M", x, y + from, "v", arm)
                .end();
    }

    private static void held(double x, double y, Svg svg) {
        svg.group("held", MapStyle.stroke(MapStyle.INK, 2.6))
                .path("M", x - RING, y - RING, "h", 2 * RING, "v", 2 * RING, "h", -2 * RING, "Z")
                .end();
        svg.group("held-middle", MapStyle.fill(MapStyle.INK))
                .circle(x, y, 0.2 * EM)
                .end();
    }

    private static void reading(int number, double x, double y, Svg svg) {
        double reach = 0.95 * EM;
        svg.group(
                        "reading-ground",
                        MapStyle.fill(MapStyle.PAPER) + " stroke=\"" + MapStyle.INK + "\" stroke-width=\"2\"")
                .path("M", x, y - 1.3 * reach, "l", 1.1 * reach, 2 * reach, "h", -2.2 * reach, "Z")
                .end();
        svg.group("reading", MapStyle.fill(MapStyle.INK))
                .text(OpenSans.SEMIBOLD, 0.9 * EM, true, x, y + 0.5 * EM, Integer.toString(number))
                .end();
    }
}
