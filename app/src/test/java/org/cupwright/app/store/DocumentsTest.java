package org.cupwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.cupwright.app.desk.StoredHole;
import org.cupwright.app.desk.StoredPlan;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Documents of format 1, written when it was new, are still read, and are written the same again. */
class DocumentsTest {
    private final Documents documents = new Documents();

    private static String resource(String name) throws IOException {
        try (InputStream stream = DocumentsTest.class.getResourceAsStream(name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private void assertWrittenTheSame(JsonNode first, Object read) {
        assertThat(JsonMapper.shared().readTree(documents.write(read))).isEqualTo(first);
    }

    /** The document with the lists that came after it was written. */
    private static JsonNode withWalkOffs(String course) {
        JsonNode document = JsonMapper.shared().readTree(course);
        document.path("holes").forEach(hole -> ((ObjectNode) hole).putArray("walkOffs"));
        return document;
    }

    @Test
    void aCourseOfFormat1IsRead() throws IOException {
        String text = resource("course-format-1.json");
        Course course = documents.read(text, Course.class);
        Hole hole = course.find("1").orElseThrow();
        assertThat(hole.green().areaSquareMetres()).isEqualTo(484);
        assertThat(hole.lineOfPlay().orElseThrow().atGreen().degrees()).isZero();
        assertThat(hole.par()).hasValue(4);
        assertThat(hole.walkOffs()).isEmpty();
        assertWrittenTheSame(withWalkOffs(text), course);
    }

    @Test
    void aPlanOfFormat1IsRead() throws IOException {
        String text = resource("plan-format-1.json");
        StoredPlan plan = documents.read(text, StoredPlan.class);
        StoredHole hole = plan.find("1").orElseThrow();
        assertThat(plan.basis().speedFeet()).isEqualTo(10);
        assertThat(hole.position().judgement().rule(RuleId.EDGE).outcome()).isEqualTo(Outcome.PASS);
        assertThat(hole.position().judgement().rule(RuleId.LEVEL).value()).isEmpty();
        assertThat(hole.reasons()).isNotEmpty();
        assertWrittenTheSame(JsonMapper.shared().readTree(text), plan);
    }

    @Test
    void aDamagedDocumentIsADefectThatNamesIt() {
        assertThatThrownBy(() -> documents.read("{\"id\":", Course.class))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("Course");
    }
}
