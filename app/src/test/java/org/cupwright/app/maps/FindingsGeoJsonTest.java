package org.cupwright.app.maps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.green.field.GreenField;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.message.Message.Area;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Length;
import org.cupwright.testing.Shapes;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class FindingsGeoJsonTest {
    private static final Hole HOLE = Hole.of("7", Shapes.rectangle(500_000, 4_400_000, 500_020, 4_400_020));

    @Test
    void eachFindingIsWhatItIsAbout() {
        GroundFinding whole =
                new GroundFinding(Finding.of(FindingKind.NO_SURVEY, Where.hole("7"), new Count(0)), Optional.empty());
        MapPoint place = new MapPoint(500_010, 4_400_010);
        GroundFinding point = new GroundFinding(
                Finding.of(FindingKind.READING_OFF_GREEN, Where.hole("7"), new Length(1.234))
                        .at(place),
                Optional.empty());
        GroundFinding part = new GroundFinding(
                Finding.of(FindingKind.PART_NOT_SURVEYED, Where.hole("7"), new Area(50))
                        .at(place),
                Optional.of(new GreenField(HOLE.green(), at -> at.east() - 500_000)
                        .allAbove(10)
                        .shape()));
        FindingsGeoJson document = new FindingsGeoJson(
                32626,
                Map.of("course", "made"),
                Texts.find("en", Door.COMMANDS, UnitSystem.METRIC, 0.914).orElseThrow());
        document.add(HOLE, List.of(whole, point, part));
        JsonNode features = JsonMapper.shared().readTree(document.text()).path("features");

        assertThat(shown(features, 0)).isEqualTo("1 green Polygon");
        assertThat(shown(features, 1)).isEqualTo("2 point Point");
        assertThat(shown(features, 2)).isEqualTo("3 part MultiPolygon");
        JsonNode longitude =
                features.path(1).path("geometry").path("coordinates").path(0);
        assertThat(longitude.asDouble()).as("27° west and 10 m").isBetween(-27.0, -26.999);
        assertThat(features.path(1).path("properties").path("amount").asDouble())
                .isEqualTo(1.23);
        assertThat(features.path(1).path("properties").path("unit").asString()).isEqualTo("m");
    }

    private static String shown(JsonNode features, int i) {
        JsonNode feature = features.path(i);
        JsonNode properties = feature.path("properties");
        return properties.path("number").asInt() + " "
                + properties.path("covers").asString() + " "
                + feature.path("geometry").path("type").asString();
    }
}
