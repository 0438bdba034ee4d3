package org.cupwright.app.field;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.cupwright.app.desk.plan.PaintedDots.Dot;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.maps.MapFrame;
import org.cupwright.app.sheets.DaySheet;
import org.cupwright.app.sheets.PlaceWords;
import org.cupwright.app.sheets.SheetHole;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.OnConvention;
import org.cupwright.message.Message.Direction;
import org.cupwright.settingout.Directions;
import org.cupwright.settingout.FromMark;
import org.cupwright.units.Heading;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What the page needs to lead to one hole's spot, as numbers of the green's own frame: x to the right of its middle, y
 * on along the line of play, or north where nobody knows that, as on the map.
 */
final class CarriedWay {
    /** Decimals of what is measured from, and of an edge that was traced; degrees to a millimetre. */
    private static final int MILLIMETRES = 3;

    private static final int CENTIMETRES = 2;
    private static final int DEGREES = 8;

    /** A dot farther from the spot is another spot's, m: a pace, our choice. */
    private static final double DOT_OF_SPOT_METRES = 1;

    private final SheetHole hole;
    private final DaySheet sheet;
    private final Texts texts;
    private final Hole green;
    private final GreenFrame frame;
    private final PlaceWords words;

    CarriedWay(SheetHole hole, DaySheet sheet, Texts texts) {
        this.hole = hole;
        this.sheet = sheet;
        this.texts = texts;
        this.green = hole.drawing().hole();
        this.frame = frame(green, sheet.convention());
        this.words = new PlaceWords(texts, sheet.paceMetres());
    }

    /** With north on where nobody knows how the green is played to. */
    static GreenFrame frame(Hole green, OnConvention convention) {
        return GreenFrame.of(green, convention)
                .or(() -> GreenFrame.of(
                        green.withLineOfPlay(LineOfPlay.towards(green.green(), new Heading(0))), convention))
                .orElseThrow();
    }

    /**
     * Writes it down; nothing where no hole is to be found today.
     *
     * @param dot the dot on this green, if there is one
     * @param course where the green lies in the world; empty where nobody knows
     */
    void put(ObjectNode out, Optional<Dot> dot, Optional<CourseFrame> course) {
        if (hole.cut().isEmpty() || hole.temporary()) {
            return;
        }
        Directions way = hole.cut().get().directions();
        ObjectNode node = out.putObject("way");
        node.put("played", way.place().isPresent());
        point(node.putArray("spot"), way.at());
        said(way, node.putArray("said"));
        marks(node.putArray("marks"));
        way.fromMark().ifPresent(from -> node.put("from", green.marks().indexOf(from.mark())));
        edge(node.putArray("edge"));
        if (sheet.convention() == OnConvention.SQUARED_OFF_FRONT) {
            way.place()
                    .ifPresent(place -> node.put(
                            "front",
                            rounded(
                                    frame.forwardMetres(way.at())
                                            - place.metres().onMetres(),
                                    MILLIMETRES)));
        }
        map(node.putArray("map"));
        course.ifPresent(where -> {
            ArrayNode world = node.putArray("world");
            GreenInWorld.of(frame, where).numbers().forEach(number -> world.add(rounded(number, DEGREES)));
        });
        dot.ifPresent(painted -> node.put("dot", dot(painted, way)));
    }

    /** What can be paced, as it is said, with its length: the page says beside it how many of somebody's own steps. */
    private void said(Directions way, ArrayNode out) {
        way.place().ifPresent(place -> {
            said(words.on(place.metres()), place.metres().onMetres(), out);
            words.fromBack(place).ifPresent(text -> said(text, place.metres().fromBackMetres(), out));
            said(words.side(place.metres()), place.metres().sideMetres(), out);
        });
        way.leeway()
                .filter(leeway -> leeway.goodWithinPaces() > 0)
                .ifPresent(
                        leeway -> said(words.within(leeway, hole.cut().get().verdict()), leeway.goodWithinMetres(), out)
                                .add("down"));
        way.fromMark()
                .ifPresent(from -> said(fromMark(from), from.metres(), out).add("mark"));
    }

    /** Towards another mark in line, or as the way is seen from the fairway. */
    private String fromMark(FromMark from) {
        Optional<Heading> play = green.lineOfPlay().map(LineOfPlay::atGreen);
        return from.towards().isPresent() || from.heading().isEmpty() || play.isEmpty()
                ? words.fromMark(from)
                : texts.say(
                        "round.find.markWay",
                        texts.paces(from.paces()),
                        from.mark().name(),
                        texts.way(new Direction(from.heading().get(), play)));
    }

    private static ArrayNode said(String text, double metres, ArrayNode out) {
        return out.addArray().add(text).add(rounded(metres, MILLIMETRES));
    }

    private void marks(ArrayNode out) {
        for (Mark mark : green.marks()) {
            ArrayNode one = out.addArray().add(mark.name());
            point(one, mark.at());
            one.add(mark.kind() == Mark.Kind.SURVEYED_MARK);
        }
    }

    private void edge(ArrayNode out) {
        Polygon polygon = green.green().polygon();
        ring(polygon.getExteriorRing(), out.addArray());
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            ring(polygon.getInteriorRingN(i), out.addArray());
        }
    }

    /** Without the last corner, which is the first again. */
    private void ring(LinearRing ring, ArrayNode out) {
        for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
            Coordinate corner = ring.getCoordinateN(i);
            out.add(rounded(frame.rightMetres(MapPoint.of(corner)), CENTIMETRES));
            out.add(rounded(frame.forwardMetres(MapPoint.of(corner)), CENTIMETRES));
        }
    }

    /** Where the middle of the green is drawn, and the drawing's units a metre. */
    private void map(ArrayNode out) {
        MapFrame map = new GreenMap(texts).frame(hole.drawing());
        MapPoint middle = frame.at(0, 0);
        out.add(rounded(map.x(middle), CENTIMETRES));
        out.add(rounded(map.y(middle), CENTIMETRES));
        out.add(rounded(map.length(1), MILLIMETRES));
    }

    private String dot(Dot dot, Directions way) {
        if (dot.at().distanceMetres(way.at()) <= DOT_OF_SPOT_METRES) {
            return texts.say("round.find.dot", dot.person());
        }
        return texts.say("round.find.dotElsewhere", dot.person());
    }

    private void point(ArrayNode out, MapPoint at) {
        out.add(rounded(frame.rightMetres(at), MILLIMETRES));
        out.add(rounded(frame.forwardMetres(at), MILLIMETRES));
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
    }
}
