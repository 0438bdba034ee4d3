package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.texts.RoundLength;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.units.Heading;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Draws all greens of a course where they lie, north up, each with its name and an arrow in the direction of play; and
 * one green by itself with play running up.
 *
 * <p>The groups of the SVG carry classes: {@code green}, with {@code left-out} where it is so and its number in
 * {@code data-green}; {@code reach}, the ground on which a click means the green; {@code play}.
 */
public record CourseMap(String title) {
    private static final int WIDTH = 1000;
    private static final int TALLEST = 1000;
    private static final int LOWEST = 260;
    private static final double MARGIN = 46;
    private static final double LETTERS = 24;
    private static final double REACH = 26;
    private static final double ARROW = 44;
    private static final double WING = 9;

    /** Scale at most, drawing units a metre: a few greens close together are not drawn larger than a picture of one. */
    private static final double LARGEST_SCALE = 8;

    /**
     * A green of the map.
     *
     * @param number by which it is known on the page
     * @param label what stands beside it
     * @param hole its outline and line of play
     * @param leftOut whether it is no hole's
     */
    public record OnMap(int number, String label, Hole hole, boolean leftOut) {}

    /** The map as an SVG document {@value #WIDTH} wide. */
    public String of(List<OnMap> greens) {
        Envelope box = new Envelope();
        greens.forEach(
                green -> box.expandToInclude(green.hole().green().polygon().getEnvelopeInternal()));
        double scale = Math.min(
                LARGEST_SCALE,
                Math.min(
                        (WIDTH - 2 * MARGIN) / Math.max(1, box.getWidth()),
                        (TALLEST - 2 * MARGIN) / Math.max(1, box.getHeight())));
        int height = Math.max(LOWEST, (int) Math.ceil(box.getHeight() * scale + 2 * MARGIN));
        Svg svg = new Svg(WIDTH, height, title);
        Placing placing = new Placing(box.centre(), scale, WIDTH / 2.0, height / 2.0);
        greens.forEach(green -> green(green, placing, svg));
        north(svg);
        return svg.done();
    }

    /** Where a place of the ground lies on the drawing. */
    private record Placing(Coordinate middle, double scale, double x0, double y0) {
        double x(double east) {
            return x0 + (east - middle.x) * scale;
        }

        double y(double north) {
            return y0 - (north - middle.y) * scale;
        }
    }

    private static void green(OnMap green, Placing placing, Svg svg) {
        MapPoint at = green.hole().green().centroid();
        double x = placing.x(at.east());
        double y = placing.y(at.north());
        svg.group(green.leftOut() ? "green left-out" : "green", "data-green=\"" + green.number() + "\"");
        svg.group("reach", MapStyle.fill("transparent")).circle(x, y, REACH).end();
        svg.group(
                        "edge",
                        green.leftOut()
                                ? MapStyle.broken(MapStyle.SOFT, 1.6, 6.0, 5.0)
                                : MapStyle.stroke(MapStyle.INK, 2))
                .path(ring(green.hole(), placing))
                .end();
        green.hole().lineOfPlay().map(LineOfPlay::atGreen).ifPresent(play -> arrow(play, x, y, svg));
        svg.group("label", MapStyle.fill(MapStyle.INK))
                .text(OpenSans.SEMIBOLD, LETTERS, true, x + LETTERS, y - LETTERS / 2, green.label())
                .end()
                .end();
    }

    private static String ring(Hole hole, Placing placing) {
        StringBuilder path = new StringBuilder();
        String command = "M";
        for (Coordinate corner : hole.green().polygon().getExteriorRing().getCoordinates()) {
            path.append(Svg.data(command, placing.x(corner.x), placing.y(corner.y)));
            command = "L";
        }
        return path.append('Z').toString();
    }

    /** From where play comes to the middle of the green. */
    private static void arrow(Heading play, double x, double y, Svg svg) {
        List<Object> path = new ArrayList<>(List.of("M", x - play.east() * ARROW, y + play.north() * ARROW));
        path.addAll(List.of("L", x, y));
        for (int side : new int[] {-1, 1}) {
            Heading back = play.turnedClockwise(180 + side * 30.0);
            path.addAll(List.of("M", x, y, "l", back.east() * WING * 1.6, -back.north() * WING * 1.6));
        }
        svg.group("play", MapStyle.stroke(MapStyle.ACCENT, 2.2))
                .path(path.toArray())
                .end();
    }

    private static void north(Svg svg) {
        svg.group("north", MapStyle.stroke(MapStyle.SOFT, 1.8))
                .path("M", 26.0, 62.0, "V", 30.0, "l", -6.0, 10.0, "M", 26.0, 30.0, "l", 6.0, 10.0)
                .end()
                .group("letter", MapStyle.fill(MapStyle.SOFT))
                .text(OpenSans.SEMIBOLD, 18, true, 26, 24, "N")
                .end();
    }

    /** One green with its hazards, play running up, as large as fits, and a bar of so many metres. */
    public String green(Hole hole, int width, int height, RoundLength bar) {
        MapFrame frame = new MapFrame(hole, width, height);
        Svg svg = new Svg(width, height, title);
        Canvas canvas = new Canvas(frame, MapStyle.CARD, height, svg, new ArrayList<>());
        hole.hazards()
                .forEach(hazard -> canvas.outline(
                        "hazard", MapStyle.broken(MapStyle.SOFT, 2, "0.1 ", 0.25 * canvas.em()), hazard.area()));
        canvas.outline("edge", MapStyle.stroke(MapStyle.INK, 3), hole.green().polygon());
        MapLegend.draw(hole.lineOfPlay().isPresent(), bar, canvas);
        return svg.done();
    }
}
