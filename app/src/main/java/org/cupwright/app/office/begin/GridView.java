package org.cupwright.app.office.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cupwright.app.desk.ground.PaceGrid;
import org.cupwright.app.desk.ground.TypedRing;
import org.cupwright.app.maps.PaceSheet;
import org.cupwright.app.maps.PaceSheet.Shape;
import org.cupwright.app.office.frame.Board;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hazard;
import org.cupwright.course.MapPoint;
import org.cupwright.policy.EnumNames;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * The grid of paces, with what is drawn of a green already.
 *
 * @param green empty for another one
 * @param edgeToo whether its edge is there already; else that is what is being drawn
 */
record GridView(Texts texts, Optional<BegunGreen> green, boolean edgeToo, double paceMetres) {
    /** Where the cross stands at first, paces on: our choice, in the middle of most greens. */
    private static final double START = 12;

    /** A hazard and its number in the list. */
    record Row(int number, String says) {}

    Board board() {
        return new Board(
                new PaceSheet(texts.say("begin.grid")).with(shapes()),
                PaceSheet.nothing(),
                PaceSheet.UNITS / 2,
                PaceSheet.x(0),
                PaceSheet.y(START),
                PaceSheet.x(0),
                PaceSheet.y(0),
                PaceSheet.UNITS);
    }

    private List<Shape> shapes() {
        List<Shape> shapes = new ArrayList<>();
        green.ifPresent(known -> {
            if (edgeToo) {
                shapes.add(shape(true, known.hole().green().polygon()));
            }
            known.hole().hazards().forEach(hazard -> shapes.add(shape(false, hazard.area())));
        });
        return shapes;
    }

    private Shape shape(boolean edge, Polygon ground) {
        PaceGrid grid = grid();
        return new Shape(
                edge,
                corners(ground).stream()
                        .map(corner -> new MapPoint(grid.right(corner), grid.on(corner)))
                        .toList());
    }

    private PaceGrid grid() {
        return PaceGrid.of(green.orElseThrow().hole(), paceMetres);
    }

    private static List<MapPoint> corners(Polygon ground) {
        Coordinate[] ring = ground.getExteriorRing().getCoordinates();
        return Stream.of(ring).limit(ring.length - 1L).map(MapPoint::of).toList();
    }

    /** The corners of its edge, to be moved. */
    String edge() {
        return green.map(known ->
                        TypedRing.written(grid(), corners(known.hole().green().polygon())))
                .orElse("");
    }

    List<Row> hazards() {
        List<Hazard> all = green.map(known -> known.hole().hazards()).orElse(List.of());
        return IntStream.range(0, all.size())
                .mapToObj(i -> new Row(i + 1, says(i + 1, all.get(i))))
                .toList();
    }

    private String says(int number, Hazard hazard) {
        double gap = hazard.area().distance(green.orElseThrow().hole().green().polygon());
        return texts.say(
                "draw.hazard." + EnumNames.lowerCamel(hazard.kind()),
                number,
                texts.area(hazard.area().getArea()),
                texts.length(gap));
    }
}
