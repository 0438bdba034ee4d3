package org.cupwright.formats;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.outlines.CourseOutlines;
import org.cupwright.formats.outlines.GeoJsonFeatures;
import org.cupwright.formats.outlines.MapFeatures;
import org.cupwright.formats.outlines.OsmFeatures;
import org.cupwright.formats.outlines.ReadCourse;
import org.cupwright.formats.table.Column;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.Table;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.junit.jupiter.api.Test;

/** What is beyond the bounds is refused with its own sentence; what is just within them is read. */
class FileBoundsTest {
    private static Table table(String text) {
        return opened(() -> Table.of(InventedMap.bytes(text)));
    }

    private static MapFeatures geoJson(String text) {
        return opened(() -> GeoJsonFeatures.read(InventedMap.bytes(text), CourseOutlines::essential));
    }

    private static MapFeatures osm(InputStream in) {
        return opened(() -> OsmFeatures.read(in, CourseOutlines::essential));
    }

    private interface Opening<T> {
        T of() throws IOException;
    }

    private static <T> T opened(Opening<T> opening) {
        try {
            return opening.of();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Test
    void aTableOfTooManyLines() {
        String within = "a,b\n" + "\n".repeat(FileBounds.MOST_LINES - 2) + "1,2\n";
        assertThat(table(within).lines()).hasSize(1);
        Finding finding = InventedMap.troubleOf(() -> table(within + "\n"));
        assertThat(finding.kind()).isEqualTo(FindingKind.TOO_MANY_LINES);
        assertThat(finding.value()).isEqualTo(new Count(FileBounds.MOST_LINES));
    }

    @Test
    void aTableOfTooManyColumns() {
        String within = "a" + ",b".repeat(FileBounds.MOST_COLUMNS - 1);
        assertThat(table(within).names()).hasSize(FileBounds.MOST_COLUMNS);
        Finding finding = InventedMap.troubleOf(() -> table("# invented\n" + within + ",c\n1,2\n"));
        assertThat(finding.kind()).isEqualTo(FindingKind.TOO_MANY_COLUMNS);
        assertThat(finding.where()).isEqualTo(Where.line(2));
        assertThat(finding.value()).isEqualTo(new Count(FileBounds.MOST_COLUMNS + 1));
    }

    /** Of a name that is all separators a search for its unit tries every way to part it. */
    @Test
    void aColumnsNameThatIsNoNameIsNobodys() {
        Table table = table("date," + "(".repeat(60_000) + "\n2026-06-01,1\n");
        Layout layout = Layout.of(table, List.of(Column.day("date"), Column.number("rain")), Map.of());
        assertThat(layout.unused()).hasSize(1);
        assertThat(layout.found()).hasSize(1);
    }

    private static String line(int corners) {
        return "[" + "[-30.5,40],".repeat(corners - 1) + "[-30.499,40]]";
    }

    @Test
    void aShapeOfTooManyCorners() {
        String within = new InventedMap()
                .feature("LineString", line(FileBounds.MOST_CORNERS), "\"golf\":\"hole\"")
                .json();
        assertThat(geoJson(within).features()).hasSize(1);
        String beyond = new InventedMap()
                .feature("LineString", line(FileBounds.MOST_CORNERS + 1), "\"golf\":\"hole\",\"ref\":\"7\"")
                .json();
        Finding finding = InventedMap.troubleOf(() -> geoJson(beyond));
        assertThat(finding.kind()).isEqualTo(FindingKind.TOO_MANY_CORNERS);
        assertThat(finding.where()).isEqualTo(Where.feature(1, "golf=hole ref=7"));
        assertThat(finding.value()).isEqualTo(new Count(FileBounds.MOST_CORNERS + 1));
    }

    @Test
    void otherShapesOfTooManyCornersAreLeftOut() {
        MapFeatures read = geoJson(new InventedMap()
                .green(0, 0, 10, "")
                .feature("LineString", line(FileBounds.MOST_CORNERS + 1), "\"golf\":\"cartpath\"")
                .json());
        assertThat(read.features()).hasSize(1);
        assertThat(read.findings()).singleElement().extracting(Finding::kind).isEqualTo(FindingKind.FEATURE_LEFT_OUT);
    }

    @Test
    void aMapOfTooManyParts() {
        String values = "0,".repeat(FileBounds.MOST_JSON_PARTS);
        Finding finding = InventedMap.troubleOf(() -> geoJson("{\"type\":\"FeatureCollection\",\"other\":[" + values));
        assertThat(finding.kind()).isEqualTo(FindingKind.TOO_MANY_PARTS);
        assertThat(finding.value()).isEqualTo(new Count(FileBounds.MOST_JSON_PARTS));
    }

    @Test
    void aMapOfTooManyElements() {
        String elements = "<a/>".repeat(FileBounds.MOST_XML_PARTS);
        Finding finding = InventedMap.troubleOf(() -> osm(InventedMap.bytes("<osm>" + elements + "</osm>")));
        assertThat(finding.kind()).isEqualTo(FindingKind.TOO_MANY_PARTS);
        assertThat(finding.value()).isEqualTo(new Count(FileBounds.MOST_XML_PARTS));
    }

    @Test
    void elementsNestedTooDeeply() {
        Finding finding = InventedMap.troubleOf(() -> osm(InventedMap.bytes("<osm>" + "<a>".repeat(16))));
        assertThat(finding.kind()).isEqualTo(FindingKind.NESTED_TOO_DEEPLY);
        assertThat(osm(InventedMap.bytes("<osm>" + "<a>".repeat(15) + "</a>".repeat(15) + "</osm>"))
                        .features())
                .isEmpty();
    }

    private static ReadCourse named(String name) {
        return InventedMap.readCourse(
                new InventedMap()
                        .green(0, 0, 10, ",\"ref\":\"7\",\"loop\":\"" + name + "\"")
                        .json(),
                InventedMap.request());
    }

    @Test
    void aNameThatIsTooLong() {
        String within = "n".repeat(FileBounds.LONGEST_NAME);
        assertThat(named(within).course().holes()).hasSize(1);
        Finding finding = InventedMap.troubleOf(() -> named(within + "n"));
        assertThat(finding.kind()).isEqualTo(FindingKind.NAME_TOO_LONG);
        assertThat(finding.value()).isEqualTo(new Name("loop"));
    }

    @Test
    void whatNobodyAsksForMayBeLong() {
        String note = ",\"note\":\"" + "n".repeat(5000) + "\"";
        assertThat(geoJson(new InventedMap().green(0, 0, 10, note).json()).features())
                .hasSize(1);
    }
}
