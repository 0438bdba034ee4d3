package org.cupwright.app.maps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;
import org.cupwright.green.Green;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.LevelSpotsGround;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.policy.EnumNames;
import org.cupwright.policy.Policy;
import org.cupwright.units.GreenSpeed;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class GreenGeoJsonTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final DemoCourse demo = new DemoCourse(1);
    private final Hole hole = demo.course().find("10").orElseThrow();
    private final int epsg = demo.course().frame().epsg();
    private final GreenJudge judge = new GreenJudge(
            new Green(hole, new LevelSpotsGround(List.of(), Policy.defaults())),
            new DayConditions(new GreenSpeed(10), false, false, GroundOnDay.clear(DemoCourse.TODAY)),
            Policy.defaults());
    private final GreenJudgement judgement = judge.judgeGreen();
    private final Judgement asked = judge.judge(hole.green().centroid());
    private final String text = new GreenGeoJson(judgement, epsg, Map.of("course", "made", "date", "2026-06-20"))
            .document(Optional.of(asked));
    private final JsonNode document = JsonMapper.shared().readTree(text);

    private List<JsonNode> features(String kind) {
        List<JsonNode> found = new ArrayList<>();
        for (JsonNode feature : document.path("features")) {
            if (feature.path("properties").path("kind").asString().equals(kind)) {
                found.add(feature);
            }
        }
        return found;
    }

    @Test
    void keepsItsShape() throws IOException {
        String schema = Files.readString(Path.of("../docs/schemas/assess-green-geojson.schema.json"));
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(schema, InputFormat.JSON)
                        .validate(text, InputFormat.JSON))
                .isEmpty();
        assertThat(features("outline")).hasSize(1);
        assertThat(features("position")).hasSize(1);
        assertThat(features("best")).hasSize(judgement.best().size());
    }

    @Test
    void ringsRunAsTheStandardAsks() {
        for (JsonNode feature : features("ground")) {
            for (JsonNode polygon : feature.path("geometry").path("coordinates")) {
                for (int ring = 0; ring < polygon.size(); ring++) {
                    assertThat(Orientation.isCCW(ring(polygon.path(ring)))).isEqualTo(ring == 0);
                }
            }
        }
    }

    @Test
    void areasAddUpToTheGreen() {
        double sum = features("ground").stream()
                .mapToDouble(feature ->
                        feature.path("properties").path("areaSquareMetres").asDouble())
                .sum();
        assertThat(sum).isCloseTo(judgement.areaSquareMetres(), within(0.01 * judgement.areaSquareMetres()));
    }

    @Test
    void everySpotLiesInTheAreaThatSaysWhatWasJudged() {
        Projection back = Projection.between(CoordinateFrame.of(CoordinateFrame.WGS84), CoordinateFrame.of(epsg));
        List<Geometry> areas = features("ground").stream()
                .map(feature -> back.apply(polygons(feature.path("geometry").path("coordinates"))))
                .toList();
        int checked = 0;
        for (int cell = 0; cell < judgement.lattice().size(); cell += 7) {
            if (judgement.findVerdict(cell).isEmpty()) {
                continue;
            }
            Coordinate spot = judgement.lattice().spot(cell).toCoordinate();
            for (int i = 0; i < areas.size(); i++) {
                JsonNode said = features("ground").get(i).path("properties");
                boolean here = areas.get(i).distance(FACTORY.createPoint(spot)) < 0.01;
                boolean wanted = said.path("verdict")
                                .asString()
                                .equals(EnumNames.lowerCamel(
                                        judgement.findVerdict(cell).orElseThrow()))
                        && said.path("rule")
                                .asString("")
                                .equals(judgement
                                        .findDeciding(cell)
                                        .map(RuleId::id)
                                        .orElse(""));
                assertThat(here).as("spot %s, %s", spot, said).isEqualTo(wanted);
            }
            checked++;
        }
        assertThat(checked).isGreaterThan(500);
    }

    @Test
    void theCellAndTheSpotNameTheSameRule() {
        for (int cell = 0; cell < judgement.lattice().size(); cell += 31) {
            if (judgement.findVerdict(cell).isPresent()) {
                Judgement spot = judge.judge(judgement.lattice().spot(cell));
                assertThat(judgement.findDeciding(cell)).isEqualTo(spot.deciding());
                for (RuleId rule : RuleId.values()) {
                    assertThat(judgement.findOutcome(cell, rule))
                            .contains(spot.rule(rule).outcome());
                }
            }
        }
    }

    private static Coordinate[] ring(JsonNode positions) {
        List<Coordinate> ring = new ArrayList<>();
        positions.forEach(position -> ring.add(
                new Coordinate(position.path(0).asDouble(), position.path(1).asDouble())));
        return ring.toArray(Coordinate[]::new);
    }

    private static Geometry polygons(JsonNode coordinates) {
        List<Polygon> polygons = new ArrayList<>();
        for (JsonNode polygon : coordinates) {
            org.locationtech.jts.geom.LinearRing[] holes = new org.locationtech.jts.geom.LinearRing[polygon.size() - 1];
            for (int i = 1; i < polygon.size(); i++) {
                holes[i - 1] = FACTORY.createLinearRing(ring(polygon.path(i)));
            }
            polygons.add(FACTORY.createPolygon(FACTORY.createLinearRing(ring(polygon.path(0))), holes));
        }
        return FACTORY.createMultiPolygon(polygons.toArray(Polygon[]::new));
    }
}
