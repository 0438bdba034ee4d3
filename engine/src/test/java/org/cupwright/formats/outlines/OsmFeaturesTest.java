package org.cupwright.formats.outlines;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.InventedMap;
import org.cupwright.message.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** All map data here is invented: a square green of about 22 × 17 m in the open Atlantic. */
class OsmFeaturesTest {
    private static final String NODES = """
            <node id="1" lon="-30.5" lat="40"/>
            <node id="2" lon="-30.4998" lat="40"/>
            <node id="3" lon="-30.4998" lat="40.0002"/>
            <node id="4" lon="-30.5" lat="40.0002"/>
            <node id="5" lon="-30.4999" lat="39.998"/>
            <node id="6" lon="-30.4999" lat="40.0001"/>
            <node id="7" lon="-30.49995" lat="40.00005"/>
            <node id="8" lon="-30.49985" lat="40.00005"/>
            <node id="9" lon="-30.4999" lat="40.00015"/>
            """;
    private static final String GREEN = """
            <way id="11"><nd ref="1"/><nd ref="2"/><nd ref="3"/><nd ref="4"/><nd ref="1"/>
              <tag k="golf" v="green"/></way>
            """;

    private static ReadCourse read(String elements) {
        return readText("<?xml version='1.0' encoding='UTF-8'?><osm version=\"0.6\">" + elements + "</osm>");
    }

    private static ReadCourse readText(String text) {
        try {
            MapFeatures map = OsmFeatures.read(InventedMap.bytes(text), CourseOutlines::essential);
            return CourseOutlines.read(map, InventedMap.request());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void readsAGreenWithItsHoleLine() {
        ReadCourse read = read(NODES + GREEN + """
                <way id="12"><nd ref="5"/><nd ref="6"/><tag k="golf" v="hole"/>
                  <tag k="ref" v="3"/><tag k="par" v="3"/></way>
                <way id="13"><nd ref="1"/><nd ref="5"/><tag k="highway" v="path"/></way>
                """);
        Hole hole = read.course().find("3").orElseThrow();
        assertThat(hole.par()).hasValue(3);
        assertThat(hole.lineOfPlay()).isPresent();
        assertThat(hole.green().areaSquareMetres()).isBetween(370.0, 390.0);
        assertThat(read.findings()).isEmpty();
    }

    @Test
    void readsAMultipolygonWhoseOuterRingIsTwoWays() {
        ReadCourse read = read(NODES + """
                <way id="21"><nd ref="1"/><nd ref="2"/><nd ref="3"/></way>
                <way id="22"><nd ref="3"/><nd ref="4"/><nd ref="1"/></way>
                <way id="23"><nd ref="7"/><nd ref="8"/><nd ref="9"/><nd ref="7"/></way>
                <relation id="31"><member type="way" ref="21" role="outer"/><member type="way" ref="22" role="outer"/>
                <member type="way" ref="23" role="inner"/><member type="node" ref="6" role="label"/>
                <tag k="type" v="multipolygon"/><tag k="golf" v="green"/><tag k="ref" v="4"/></relation>
                """);
        Hole hole = read.course().find("4").orElseThrow();
        assertThat(hole.green().polygon().getNumInteriorRing()).isEqualTo(1);
        assertThat(hole.green().areaSquareMetres()).isBetween(325.0, 345.0);
    }

    @Test
    void leavesOutWhatAnEditorDeleted() {
        ReadCourse read = read(NODES + GREEN + GREEN.replace("<way id=\"11\">", "<way id=\"14\" action=\"delete\">"));
        assertThat(read.course().holes()).hasSize(1);
    }

    @Test
    void namesTheMissingNodeOfAGreen() {
        Finding finding = InventedMap.troubleOf(() -> read(NODES + GREEN.replace("ref=\"3\"", "ref=\"99\"")));
        assertThat(finding.kind()).isEqualTo(FindingKind.PART_MISSING);
        assertThat(finding.where()).isEqualTo(Where.feature(1, "golf=green @id=way/11"));
        assertThat(finding.value()).isEqualTo(new Message.Name("node/99"));
    }

    @Test
    void tellsAnOpenGreenAndLeavesOutAnOpenBunker() {
        String open = GREEN.replace("<nd ref=\"4\"/><nd ref=\"1\"/>", "<nd ref=\"4\"/>");
        assertThat(InventedMap.troubleOf(() -> read(NODES + open)).kind()).isEqualTo(FindingKind.RING_OPEN);
        String bunker = open.replace("green", "bunker").replace("id=\"11\"", "id=\"15\"");
        assertThat(read(NODES + GREEN + bunker).findings())
                .extracting(Finding::kind)
                .contains(FindingKind.FEATURE_LEFT_OUT);
    }

    /** Its members' kinds are not told, so no way of the map is its edge. */
    @Test
    void tellsAGreenOfNoPartsAndLeavesOutABunkerOfNone() {
        String green = """
                <relation id="31"><member ref="11" role="outer"/>
                <tag k="type" v="multipolygon"/><tag k="golf" v="green"/></relation>
                """;
        Finding finding = InventedMap.troubleOf(() -> read(NODES + green));
        assertThat(finding.kind()).isEqualTo(FindingKind.RING_TOO_SHORT);
        assertThat(finding.where()).isEqualTo(Where.feature(1, "golf=green @id=relation/31"));
        assertThat(read(NODES + GREEN + green.replace("green", "bunker")).findings())
                .extracting(Finding::kind)
                .contains(FindingKind.FEATURE_LEFT_OUT);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "<osm><node id='1' lon='1' lat='2'/>", "<html></html>", "{\"type\":\"FeatureCollection\"}"})
    void saysWhenItIsNoMap(String text) {
        assertThat(InventedMap.troubleOf(() -> readText(text)).kind()).isEqualTo(FindingKind.NOT_READABLE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "", "west", "Infinity", "40d", "0x1p3"})
    void tellsACoordinateThatIsNoNumber(String lon) {
        Finding finding = InventedMap.troubleOf(() -> read("<node id=\"1\" lon=\"" + lon + "\" lat=\"40\"/>"));
        assertThat(finding.kind()).isEqualTo(FindingKind.NOT_A_NUMBER);
    }

    @Test
    void reachesNoOtherFile() {
        String text = "<!DOCTYPE osm [<!ENTITY secret SYSTEM \"file:///etc/hostname\">]><osm>" + NODES
                + GREEN.replace("v=\"green\"", "v=\"green\"/><tag k=\"name\" v=\"&secret;\"") + "</osm>";
        assertThat(InventedMap.troubleOf(() -> readText(text)).kind()).isEqualTo(FindingKind.NOT_READABLE);
    }

    @Test
    void refusesHugeNesting() {
        assertThat(InventedMap.troubleOf(() -> read("<a>".repeat(10_000))).kind())
                .isEqualTo(FindingKind.NESTED_TOO_DEEPLY);
    }
}
