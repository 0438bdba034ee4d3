package org.cupwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.DayRain;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.storage.DrawnOnCourse;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.LevelReading;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Documents of format 1, written when it was new, are still read, and are written the same again. */
class DocumentsTest {
    private static String resource(String name) throws IOException {
        try (InputStream stream = DocumentsTest.class.getResourceAsStream(name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private void assertWrittenTheSame(JsonNode first, Object read) {
        assertThat(JsonMapper.shared().readTree(Documents.write(read))).isEqualTo(first);
    }

    /** The document with the lists that came after it was written. */
    private static JsonNode withLaterLists(String course) {
        JsonNode document = JsonMapper.shared().readTree(course);
        document.path("holes").forEach(hole -> ((ObjectNode) hole).putArray("walkOffs"));
        ((ObjectNode) document).putArray("loops");
        return document;
    }

    /** The document with what people say of its spots and ask for, of which nobody knew yet when it was written. */
    private static JsonNode withoutWords(String plan) {
        JsonNode document = JsonMapper.shared().readTree(plan);
        ((ObjectNode) document.path("basis"))
                .putNull("speedFrom")
                .putNull("rainFrom")
                .putNull("scheme");
        document.findParents("restsOn").forEach(judgement -> ((ObjectNode) judgement).putNull("word"));
        document.path("holes")
                .forEach(hole ->
                        ((ObjectNode) hole).putNull("askedBy").putNull("since").putNull("area"));
        ((ObjectNode) document).putArray("asked");
        ((ObjectNode) document).putNull("change");
        return document;
    }

    @Test
    void drawnGroundIsReadAsItWasWritten() {
        PersonsOpinion word = new PersonsOpinion(
                PersonsOpinion.Kind.BAD, Optional.of("wet"), Optional.empty(), Optional.of(LocalDate.of(2026, 5, 31)));
        PersonsOpinion usual = new PersonsOpinion(
                PersonsOpinion.Kind.USUAL, Optional.empty(), Optional.of("Invented"), Optional.empty());
        MapPoint at = new MapPoint(500012.25, 4400009.5);
        DrawnOnCourse drawn = new DrawnOnCourse(List.of(
                new DrawnOnCourse.Kept(List.of("2", "11"), new DrawnItem("2-bad-1", word, DrawnItem.disc(at, 2))),
                new DrawnOnCourse.Kept(List.of("1"), new DrawnItem("1-usual-1", usual, DrawnItem.spot(at)))));
        assertThat(Documents.read(Documents.write(drawn), DrawnOnCourse.class)).isEqualTo(drawn);
    }

    @Test
    void placesKeepTheirFormToTheByte() throws ParseException {
        String rings =
                "[[[0.0,0.0],[9.5,1.0E-5],[9.5,500007.312],[0.0,0.0]],[[1.0,0.5],[2.0,0.5],[2.0,0.75],[1.0,0.5]]]";
        Geometry polygon = new WKTReader()
                .read("POLYGON ((0 0, 9.5 0.00001, 9.5 500007.312, 0 0), (1 0.5, 2 0.5, 2 0.75, 1 0.5))");
        assertThat(Documents.write(polygon)).isEqualTo(rings);
        assertThat(Documents.write(new Outline((Polygon) polygon))).isEqualTo(rings);
        assertThat(Documents.write(new WKTReader().read("POINT (500007.312 -0.25)")))
                .isEqualTo("[500007.312,-0.25]");
        assertThat(Documents.read(rings, Outline.class).polygon().equalsExact(polygon))
                .isTrue();
        assertThat(Documents.read(rings, Polygon.class).equalsExact(polygon)).isTrue();
    }

    @Test
    void aCourseOfFormat1IsRead() throws IOException {
        String text = resource("course-format-1.json");
        Course course = Documents.read(text, Course.class);
        Hole hole = course.find("1").orElseThrow();
        assertThat(hole.green().areaSquareMetres()).isEqualTo(484);
        assertThat(hole.lineOfPlay().orElseThrow().atGreen().degrees()).isZero();
        assertThat(hole.par()).hasValue(4);
        assertThat(hole.walkOffs()).isEmpty();
        assertWrittenTheSame(withLaterLists(text), course);
    }

    @Test
    void readingsFromBeforePersonAndDayWereKeptAreRead() {
        LevelSpots spots = Documents.read("""
                {"byHole":{"7":[{"place":{"east":12.5,"north":30.0},
                  "gradientEast":0.01,"gradientNorth":-0.02,"standardError":0.001}]}}
                """, LevelSpots.class);
        assertThat(spots.of("7"))
                .containsExactly(new LevelReading(
                        new MapPoint(12.5, 30), 0.01, -0.02, 0.001, Optional.empty(), Optional.empty()));
    }

    @Test
    void aPlanOfFormat1IsRead() throws IOException {
        String text = resource("plan-format-1.json");
        StoredPlan plan = Documents.read(text, StoredPlan.class);
        StoredHole hole = plan.find("1").orElseThrow();
        assertThat(plan.basis().daySpeed()).isEqualTo(DaySpeed.of(10, DaySpeed.From.NOT_KEPT));
        assertThat(plan.basis().dayRain()).isEqualTo(DayRain.NONE);
        assertThat(hole.position().judgement().rule(RuleId.EDGE).outcome()).isEqualTo(Outcome.PASS);
        assertThat(hole.position().judgement().rule(RuleId.LEVEL).value()).isEmpty();
        assertThat(hole.reasons()).isNotEmpty();
        assertThat(hole.position().judgement().word()).isEmpty();
        assertWrittenTheSame(withoutWords(text), plan);
    }

    @Test
    void aDamagedDocumentIsADefectThatNamesIt() {
        assertThatThrownBy(() -> Documents.read("{\"id\":", Course.class))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("Course");
    }
}
