package org.cupwright.formats.outlines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.InventedMap;
import org.cupwright.formats.Projection;
import org.cupwright.message.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GeoJsonFeaturesTest {
    private static Finding trouble(String json) {
        return InventedMap.troubleOf(() -> InventedMap.readCourse(json, InventedMap.request()));
    }

    private static Finding troubleOfGreen(String coordinates) {
        return trouble(new InventedMap()
                .feature("Polygon", coordinates, "\"golf\":\"green\",\"ref\":\"7\"")
                .json());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  \n", "null"})
    void saysWhenThereIsNothing(String text) {
        assertThat(trouble(text).kind()).isEqualTo(FindingKind.EMPTY_FILE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"{", "{\"type\":\"FeatureCollection\",\"features\":[", "<osm/>", "[1,2]", "{}", "\u0000\u0001"})
    void saysWhenItIsNoGeoJson(String text) {
        assertThat(trouble(text).kind()).isEqualTo(FindingKind.NOT_READABLE);
    }

    @Test
    void saysWhereTheTextBreaksOff() {
        Finding finding = trouble("{\"type\":\"FeatureCollection\",\n\"features\":[}");
        assertThat(finding.where()).isEqualTo(Where.lineAndColumn(2, 13));
    }

    @Test
    void refusesHugeNesting() {
        assertThat(trouble("[".repeat(100_000)).kind()).isEqualTo(FindingKind.NESTED_TOO_DEEPLY);
        String deep = "{\"type\":\"FeatureCollection\",\"features\":[{\"properties\":" + "{\"a\":".repeat(50) + "1"
                + "}".repeat(50) + "}]}";
        assertThat(trouble(deep).kind()).isEqualTo(FindingKind.NESTED_TOO_DEEPLY);
    }

    @Test
    void refusesWhatFollowsAfterTheEnd() {
        String map = new InventedMap().green(0, 0, 10, "").json();
        assertThat(trouble(map + "{}").kind()).isEqualTo(FindingKind.NOT_READABLE);
    }

    @Test
    void aPlaceThatIsNowhereOnEarthIsRefused() {
        String ring = "[[[0,0],[1.7e308,0],[1.7e308,1.7e308],[0,1.7e308],[0,0]]]";
        String map = new InventedMap()
                .feature("Polygon", ring, "\"golf\":\"green\"")
                .json()
                .replaceFirst("\\{", "{\"crs\":{\"properties\":{\"name\":\"EPSG:32625\"}},");
        assertThat(trouble(map).kind()).isEqualTo(FindingKind.OUTSIDE_FRAME);
    }

    @Test
    void ofALongWordForAShapeItsBeginningIsTold() {
        String map = new InventedMap()
                .feature("P".repeat(3000), "[]", "\"golf\":\"green\"")
                .json();
        assertThat(trouble(map).value()).isEqualTo(new Message.Name("P".repeat(59) + "…"));
    }

    @Test
    void aNumberBeyondAllIsTakenAsItIsWritten() {
        String map =
                new InventedMap().green(0, 0, 10, ",\"ref\":" + "9".repeat(400)).json();
        assertThat(trouble(map).kind()).isEqualTo(FindingKind.NAME_TOO_LONG);
    }

    @Test
    void tellsAnOpenRingWithItsEnds() {
        Finding finding = troubleOfGreen("[[[-30.5,40],[-30.499,40],[-30.499,40.001],[-30.5,40.001]]]");
        assertThat(finding.kind()).isEqualTo(FindingKind.RING_OPEN);
        assertThat(finding.where()).isEqualTo(Where.feature(1, "golf=green ref=7"));
        assertThat(finding.value()).isEqualTo(new Message.Name("(-30.5, 40.0) ≠ (-30.5, 40.001)"));
    }

    @Test
    void tellsARingOfTooFewPoints() {
        Finding finding = troubleOfGreen("[[[-30.5,40],[-30.499,40],[-30.5,40]]]");
        assertThat(finding.kind()).isEqualTo(FindingKind.RING_TOO_SHORT);
        assertThat(finding.value()).isEqualTo(new Message.Count(3));
    }

    @ParameterizedTest
    @ValueSource(strings = {"[null,40]", "[\"NaN\",40]", "[1e999,40]", "[]", "7", "[[1,2],3]"})
    void tellsAPositionThatIsNoNumber(String position) {
        Finding finding = troubleOfGreen("[[" + position + ",[-30.499,40],[-30.499,40.001],[-30.5,40]]]");
        assertThat(finding.kind()).isEqualTo(FindingKind.NOT_A_NUMBER);
    }

    @Test
    void refusesABareNaN() {
        assertThat(troubleOfGreen("[[[NaN,40],[-30.499,40],[-30.499,40.001],[-30.5,40]]]")
                        .kind())
                .isEqualTo(FindingKind.NOT_READABLE);
    }

    @Test
    void tellsWhereAnOutlineCrossesItself() {
        Finding finding = troubleOfGreen("[[[-30.5,40],[-30.4998,40.0002],[-30.4998,40],[-30.5,40.0002],[-30.5,40]]]");
        assertThat(finding.kind()).isEqualTo(FindingKind.OUTLINE_CROSSES_ITSELF);
        MapPoint crossing = Projection.between(CoordinateFrame.of(4326), CoordinateFrame.of(32625))
                .toCourse(-30.4999, 40.0001);
        assertThat(finding.place().orElseThrow().distanceMetres(crossing)).isLessThan(0.01);
    }

    @Test
    void tellsDegreesThatAreNoDegrees() {
        assertThat(troubleOfGreen("[[[484819,6632768],[484830,6632768],[484830,6632780],[484819,6632768]]]")
                        .kind())
                .isEqualTo(FindingKind.OUTSIDE_FRAME);
    }

    @Test
    void saysWhenThereIsNoGreen() {
        assertThat(trouble("{\"type\":\"FeatureCollection\",\"features\":[]}").kind())
                .isEqualTo(FindingKind.NO_GREENS);
        assertThat(trouble(new InventedMap()
                                .area(0, 0, 9, "\"golf\":\"bunker\"")
                                .json())
                        .kind())
                .isEqualTo(FindingKind.NO_GREENS);
    }

    @ParameterizedTest
    @CsvSource({
        "EPSG:32625, 32625",
        "urn:ogc:def:crs:EPSG::32625, 32625",
        "urn:ogc:def:crs:EPSG:6.9:32625, 32625",
        "urn:ogc:def:crs:OGC:1.3:CRS84, 4326"
    })
    void honoursTheOlderCrsMember(String name, int epsg) throws Exception {
        String json = "{\"type\":\"FeatureCollection\",\"crs\":{\"type\":\"name\",\"properties\":{\"name\":\"" + name
                + "\"}},\"features\":[]}";
        assertThat(GeoJsonFeatures.read(InventedMap.bytes(json), tags -> false)
                        .frame()
                        .epsg())
                .isEqualTo(epsg);
    }

    @Test
    void readsOutlinesGivenInMetres() {
        String json =
                "{\"type\":\"FeatureCollection\",\"crs\":{\"properties\":{\"name\":\"EPSG:32625\"}},\"features\":["
                        + "{\"type\":\"Feature\",\"properties\":{\"golf\":\"green\",\"ref\":1.0},"
                        + "\"geometry\":{\"type\":\"Polygon\","
                        + "\"coordinates\":[[[500000,4400000,12],[500020,4400000,12],"
                        + "[500020,4400030],[500000,4400000]]]}}]}";
        ReadCourse read = InventedMap.readCourse(json, InventedMap.request());
        assertThat(read.course().find("1").orElseThrow().green().areaSquareMetres())
                .isCloseTo(300, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(strings = {"EPSG:999999", "urn:ogc:def:crs:EPSG::12", "local grid", ""})
    void saysWhichFrameItDoesNotKnow(String name) {
        String json =
                "{\"type\":\"FeatureCollection\",\"crs\":{\"properties\":{\"name\":\"" + name + "\"}},\"features\":[]}";
        assertThat(trouble(json).kind()).isEqualTo(FindingKind.UNKNOWN_FRAME);
    }

    @Test
    void readsOneFeatureWithAByteOrderMark() {
        String json =
                "\uFEFF{\"type\":\"Feature\",\"properties\":null,\"geometry\":{\"type\":\"Polygon\",\"coordinates\":["
                        + InventedMap.ring(0, 0, 12) + "]}}";
        assertThat(InventedMap.readCourse(json, InventedMap.request()).course().holes())
                .hasSize(1);
    }
}
