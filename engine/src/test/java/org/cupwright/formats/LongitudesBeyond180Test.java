package org.cupwright.formats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cupwright.formats.InventedMap.troubleOf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.cupwright.course.Course;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.formats.items.DrawnGeoJson;
import org.cupwright.formats.items.GroundFile;
import org.cupwright.formats.outlines.CourseOutlines;
import org.cupwright.formats.outlines.OsmFeatures;
import org.cupwright.formats.points.PointCollector;
import org.cupwright.formats.points.PointRequest;
import org.cupwright.formats.points.PointsCsv;
import org.cupwright.message.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Longitudes counted from 0 to 360 degrees are refused, whichever reader meets them; the invented course lies at 30.5
 * degrees west, which is 329.5 degrees in such files.
 */
class LongitudesBeyond180Test {
    private static final CoordinateFrame DEGREES = CoordinateFrame.of(CoordinateFrame.WGS84);

    private static final Pattern LONGITUDE = Pattern.compile("\\[(-30\\.[0-9]+)");

    /** Any file read by one of the readers. */
    private interface Reading<T> {
        T read() throws IOException;
    }

    private static <T> T read(Reading<T> reading) {
        try {
            return reading.read();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Course course() {
        return new InventedMap().green(0, 0, 12, ",\"ref\":\"1\"").read().course();
    }

    private static void assertRefused(Finding finding) {
        assertThat(finding.kind()).isEqualTo(FindingKind.LONGITUDE_BEYOND_180);
        assertThat(finding.value())
                .isInstanceOfSatisfying(
                        Message.Name.class,
                        name -> assertThat(name.text()).startsWith("329.5").contains(", 40.0"));
    }

    private static String turned(String json) {
        return LONGITUDE
                .matcher(json)
                .replaceAll(found -> String.format(Locale.ROOT, "[%.8f", 360 + Double.parseDouble(found.group(1))));
    }

    @Test
    void theMiddleOfAZoneIsReachedFromTheRightSideAlone() {
        Projection toZone29 = Projection.between(DEGREES, CoordinateFrame.of(32629)); // its middle is 9 degrees west
        assertThat(toZone29.apply(-9, 40).getX()).isCloseTo(500_000, within(1e-6));
        Finding finding = troubleOf(() -> toZone29.apply(351, 40));
        assertThat(finding.kind()).isEqualTo(FindingKind.LONGITUDE_BEYOND_180);
        assertThat(finding.value()).isEqualTo(new Message.Name("351.0, 40.0"));
        assertThat(finding.tryThis()).isEqualTo(Message.of("survey.longitudeBeyond180.try"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {180.000_001, -180.000_001, 360, -360})
    void beyond180DegreesTheAdviceIsToTurnThem(double longitude) {
        Projection stays = Projection.between(DEGREES, DEGREES);
        assertThat(troubleOf(() -> stays.apply(longitude, 90)).kind()).isEqualTo(FindingKind.LONGITUDE_BEYOND_180);
        assertThat(troubleOf(() -> stays.apply(longitude, 90.5)).kind()).isEqualTo(FindingKind.OUTSIDE_FRAME);
    }

    @ParameterizedTest
    @ValueSource(doubles = {180, -180})
    void at180DegreesTheyAreTaken(double longitude) {
        assertThat(Projection.between(DEGREES, DEGREES).apply(longitude, -17).getX())
                .isEqualTo(longitude);
    }

    @Test
    void metresGoFartherThan180() {
        Projection toDegrees = Projection.between(CoordinateFrame.of(32629), DEGREES);
        assertThat(toDegrees.apply(500_000, 200).getX()).isCloseTo(-9, within(1e-9));
    }

    @Test
    void aCourseOnThe180thMeridianHasAFrame() {
        assertThat(FrameForMeasuring.fits(CoordinateFrame.of(32701), -180, -17)).isTrue();
        assertThat(FrameForMeasuring.fits(CoordinateFrame.of(32760), 180, -17)).isTrue();
    }

    @Test
    void aMapOfGreensIsRefused() {
        String map = turned(new InventedMap().green(0, 0, 12, "").json());
        assertRefused(troubleOf(() -> InventedMap.readCourse(map, InventedMap.request())));
    }

    @Test
    void aMapOfOpenStreetMapIsRefused() {
        String map = """
                <osm version="0.6">
                <node id="1" lat="40.0000" lon="329.5000"/>
                <node id="2" lat="40.0000" lon="329.5002"/>
                <node id="3" lat="40.0002" lon="329.5002"/>
                <way id="9"><nd ref="1"/><nd ref="2"/><nd ref="3"/><nd ref="1"/><tag k="golf" v="green"/></way>
                </osm>""";
        assertRefused(troubleOf(() -> read(() -> CourseOutlines.read(
                OsmFeatures.read(InventedMap.bytes(map), CourseOutlines::essential), InventedMap.request()))));
    }

    @Test
    void aSurveyIsRefused() {
        PointCollector points =
                new PointCollector(course(), PointRequest.asTheCourse().in(DEGREES));
        assertRefused(troubleOf(() -> read(() -> {
            PointsCsv.read(InventedMap.bytes("lon,lat,z\n329.5,40.0,7\n"), Optional.empty(), points);
            return points.finish();
        })));
    }

    @Test
    void groundIsLeftOutAndTold() {
        String plug = turned(new InventedMap()
                .feature("Point", InventedMap.position(0, 0), "\"kind\":\"plug\"")
                .json());
        assertThat(read(() -> GroundFile.read(InventedMap.bytes(plug), course()))
                        .findings())
                .singleElement()
                .satisfies(LongitudesBeyond180Test::assertRefused);
    }

    @Test
    void drawnGroundIsLeftOutAndTold() {
        String usual = turned(new InventedMap()
                .feature("Point", InventedMap.position(0, 0), "\"kind\":\"usual\"")
                .json());
        assertThat(read(() -> DrawnGeoJson.read(InventedMap.bytes(usual), course(), 0.9))
                        .findings())
                .singleElement()
                .satisfies(LongitudesBeyond180Test::assertRefused);
    }
}
