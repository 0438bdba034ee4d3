package org.cupwright.app.field.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.assertj.core.data.Offset;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.course.Outline;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.Side;
import org.cupwright.settingout.TapeFix;
import org.cupwright.settingout.TapesDoNotMeet;
import org.cupwright.settingout.TwoTapes;
import org.cupwright.units.Heading;
import org.cupwright.units.Paces;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;

/** What the office works out of where a spot lies, held to the cases that the changer's page is held to as well. */
class SharedCasesTest {
    private static final Offset<Double> MILLIMETRE = within(0.001);
    private static final GeometryFactory SHAPES = new GeometryFactory();

    @Test
    void lengthsInPaces() throws IOException {
        List<Case> cases = Case.read("paces.txt");
        assertThat(cases).hasSizeGreaterThan(400);
        for (Case one : cases) {
            assertThat(Paces.roundedToHalf(one.number("metres"), one.number("pace")))
                    .as("%s", one)
                    .isEqualTo(one.number("half"));
            assertThat(Paces.roundedDownToHalf(one.number("metres"), one.number("pace")))
                    .as("%s", one)
                    .isEqualTo(one.number("down"));
        }
    }

    @Test
    void placesOnGreens() throws IOException {
        GreenFrame frame = null;
        int points = 0;
        for (Case one : Case.read("places.txt")) {
            if (one.word().equals("green")) {
                frame = frame(one);
                near(frame, one.rings("map")[0][0], one.rings("local")[0][0]);
                continue;
            }
            near(frame, one.point("map"), one.point("local"));
            PlaceOnGreen place = frame.place(at(one.point("map")));
            assertThat(place.onMetres()).as("%s", one).isCloseTo(one.number("on"), MILLIMETRE);
            assertThat(place.fromBackMetres()).as("%s", one).isCloseTo(one.number("back"), MILLIMETRE);
            assertThat(place.side()).as("%s", one).isEqualTo(one.text("side").equals("L") ? Side.LEFT : Side.RIGHT);
            assertThat(place.sideMetres()).as("%s", one).isCloseTo(one.number("from"), MILLIMETRE);
            points++;
        }
        assertThat(points).isGreaterThan(400);
    }

    private static GreenFrame frame(Case green) {
        Outline outline = outline(green.rings("map"));
        Mark front = new Mark(Mark.Kind.FRONT_MARK, "front", at(green.point("mark")));
        Hole hole = new Hole(
                "1",
                outline,
                Optional.of(LineOfPlay.towards(outline, new Heading(green.number("heading")))),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                List.of(),
                List.of(),
                green.text("on").equals("mark") ? List.of(front) : List.of(),
                List.of());
        return GreenFrame.of(
                        hole,
                        green.text("on").equals("chord") ? OnConvention.ALONG_CHORD : OnConvention.SQUARED_OFF_FRONT)
                .orElseThrow();
    }

    private static void near(GreenFrame frame, double[] map, double[] local) {
        assertThat(frame.rightMetres(at(map))).isCloseTo(local[0], MILLIMETRE);
        assertThat(frame.forwardMetres(at(map))).isCloseTo(local[1], MILLIMETRE);
    }

    @Test
    void theBestTwoTapes() throws IOException {
        List<Case> cases = Case.read("tapes.txt");
        assertThat(cases.stream().filter(one -> one.text("pair").equals("none")).count())
                .isGreaterThan(80);
        assertThat(cases.stream().filter(one -> one.has("axis")).count()).isGreaterThan(200);
        for (Case one : cases) {
            List<Mark> marks = new ArrayList<>();
            for (double[] mark : one.points("marks")) {
                marks.add(new Mark(Mark.Kind.SURVEYED_MARK, "" + marks.size(), onMap(mark)));
            }
            Optional<TapeFix> best = TwoTapes.findBest(onMap(one.point("at")), marks);
            assertThat(best.isPresent()).as("%s", one).isEqualTo(one.has("axis"));
            best.ifPresent(fix -> assertFix(fix, one));
        }
    }

    private static void assertFix(TapeFix fix, Case one) {
        assertThat(fix.first().mark().name() + "," + fix.second().mark().name())
                .as("%s", one)
                .isEqualTo(one.text("pair"));
        assertThat(fix.first().metres()).as("%s", one).isCloseTo(one.point("read")[0], MILLIMETRE);
        assertThat(fix.second().metres()).as("%s", one).isCloseTo(one.point("read")[1], MILLIMETRE);
        assertThat(fix.angleDegrees()).as("%s", one).isCloseTo(one.number("angle"), within(0.01));
        assertThat(fix.error().semiMajorMetres()).as("%s", one).isCloseTo(one.number("longer"), within(5e-5));
        assertThat(fix.error().semiMinorMetres()).as("%s", one).isCloseTo(one.number("shorter"), within(5e-5));
        double turned = Math.abs(fix.error().majorAxisDegrees() - one.number("axis"));
        assertThat(Math.min(turned, 180 - turned)).as("%s", one).isLessThan(0.05);
    }

    @Test
    void whereTapesMeet() throws IOException {
        List<Case> cases = Case.read("meetings.txt");
        assertThat(cases).hasSizeGreaterThan(400);
        for (Case one : cases) {
            Mark first = new Mark(Mark.Kind.SURVEYED_MARK, "A", onMap(one.point("first")));
            Mark second = new Mark(Mark.Kind.SURVEYED_MARK, "B", onMap(one.point("second")));
            Outline green = outline(Arrays.stream(one.rings("green"))
                    .map(ring -> Arrays.stream(ring)
                            .map(corner -> new double[] {
                                onMap(corner).east(), onMap(corner).north()
                            })
                            .toArray(double[][]::new))
                    .toArray(double[][][]::new));
            Optional<MapPoint> met = meet(first, one.number("r"), second, one.number("s"), green);
            assertThat(met.isEmpty()).as("%s", one).isEqualTo(one.text("at").equals("none"));
            met.ifPresent(at -> assertThat(at.distanceMetres(onMap(one.point("at"))))
                    .as("%s", one)
                    .isLessThan(0.001));
        }
    }

    private static Optional<MapPoint> meet(Mark first, double r, Mark second, double s, Outline green) {
        try {
            return Optional.of(TwoTapes.fix(first, r, second, s, green).at());
        } catch (TapesDoNotMeet nowhere) {
            return Optional.empty();
        }
    }

    @Test
    void wherePhonesAre() throws IOException {
        GreenFrame frame = null;
        Projection projection = null;
        int phones = 0;
        for (Case one : Case.read("phones.txt")) {
            if (one.word().equals("green")) {
                frame = SquareGreen.of(one);
                projection = Projection.between(
                        CoordinateFrame.of(CoordinateFrame.WGS84), CoordinateFrame.of((int) one.number("epsg")));
                continue;
            }
            MapPoint at = projection.toCourse(one.number("lon"), one.number("lat"));
            assertThat(frame.rightMetres(at)).as("%s", one).isCloseTo(one.point("at")[0], MILLIMETRE);
            assertThat(frame.forwardMetres(at)).as("%s", one).isCloseTo(one.point("at")[1], MILLIMETRE);
            phones++;
        }
        assertThat(phones).isEqualTo(400);
    }

    private static Outline outline(double[][][] rings) {
        LinearRing[] all = Arrays.stream(rings).map(SharedCasesTest::ring).toArray(LinearRing[]::new);
        return new Outline(SHAPES.createPolygon(all[0], Arrays.copyOfRange(all, 1, all.length)));
    }

    private static LinearRing ring(double[][] corners) {
        Coordinate[] closed = new Coordinate[corners.length + 1];
        for (int i = 0; i < closed.length; i++) {
            closed[i] = new Coordinate(corners[i % corners.length][0], corners[i % corners.length][1]);
        }
        return SHAPES.createLinearRing(closed);
    }

    private static MapPoint at(double[] point) {
        return new MapPoint(point[0], point[1]);
    }

    /** Cases of tapes lie about 0, 0; a course does not. */
    private static MapPoint onMap(double[] point) {
        return new MapPoint(612_345.25 + point[0], 5_321_987.5 + point[1]);
    }
}
