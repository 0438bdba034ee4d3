package org.cupwright.app.maps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.testing.DrawnShapes;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Documents of shapes on the equator at three degrees east, where UTM zone 31 has its middle: 500 000 m, 0 m. */
class GeoJsonByHandTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private static JsonNode feature(Geometry shape) {
        GeoJsonDocument document = new GeoJsonDocument(32631);
        document.add(shape).put("hole", "7");
        JsonNode collection = JsonMapper.shared().readTree(document.text());
        assertThat(collection.path("type").asString()).isEqualTo("FeatureCollection");
        assertThat(collection.path("features").size()).isEqualTo(1);
        JsonNode feature = collection.path("features").path(0);
        assertThat(feature.path("type").asString()).isEqualTo("Feature");
        assertThat(feature.path("properties").path("hole").asString()).isEqualTo("7");
        return feature.path("geometry");
    }

    /** Twice the area a ring encloses, positive where it runs anticlockwise. */
    private static double turn(JsonNode ring) {
        double sum = 0;
        for (int i = 0; i + 1 < ring.size(); i++) {
            JsonNode one = ring.path(i);
            JsonNode next = ring.path(i + 1);
            sum += (one.path(0).asDouble() - 3) * next.path(1).asDouble()
                    - (next.path(0).asDouble() - 3) * one.path(1).asDouble();
        }
        return sum;
    }

    @Test
    void aPointHasLongitudeThenLatitudeToAMillimetre() {
        JsonNode point = feature(GeoJsonDocument.point(new MapPoint(500_000, 1000)));
        assertThat(point.path("type").asString()).isEqualTo("Point");
        assertThat(point.path("coordinates").path(0).asDouble()).isCloseTo(3, within(1e-8));
        // a degree of latitude is 110.574 km at the equator, the zone's scale 0.9996 (recalled)
        assertThat(point.path("coordinates").path(1).asDouble()).isCloseTo(1 / (110.574 * 0.9996), within(1e-6));
        assertThat(point.path("coordinates").path(1).asString()).matches("0\\.\\d{8}");
    }

    @Test
    void outerRingsRunAnticlockwiseAndInnerOnesClockwiseHoweverTheyWereDrawn() {
        LinearRing outer =
                Shapes.area(500_000, 0, 500_100, 0, 500_100, 100, 500_000, 100).getExteriorRing();
        LinearRing inner =
                Shapes.area(500_040, 40, 500_060, 40, 500_060, 60, 500_040, 60).getExteriorRing();
        for (Polygon polygon : new Polygon[] {
            FACTORY.createPolygon(outer, new LinearRing[] {inner}),
            FACTORY.createPolygon(outer.reverse(), new LinearRing[] {inner.reverse()})
        }) {
            JsonNode drawn = feature(polygon);
            assertThat(drawn.path("type").asString()).isEqualTo("Polygon");
            assertThat(drawn.path("coordinates").size()).isEqualTo(2);
            assertThat(drawn.path("coordinates").path(0).size()).isEqualTo(5);
            assertThat(turn(drawn.path("coordinates").path(0))).isPositive();
            assertThat(turn(drawn.path("coordinates").path(1))).isNegative();
        }
    }

    @Test
    void severalPolygonsStandTogether() {
        Polygon one = Shapes.area(500_000, 0, 500_010, 0, 500_010, 10, 500_000, 10);
        Polygon other = Shapes.area(500_020, 0, 500_030, 0, 500_030, 10, 500_020, 10);
        JsonNode both = feature(FACTORY.createMultiPolygon(new Polygon[] {one, other}));
        assertThat(both.path("type").asString()).isEqualTo("MultiPolygon");
        assertThat(both.path("coordinates").size()).isEqualTo(2);
        assertThat(both.path("coordinates").path(1).path(0).size()).isEqualTo(5);
    }

    @Test
    void amountsAreRoundedToHundredths() {
        assertThat(GeoJsonDocument.rounded(1.237)).isEqualTo(1.24);
        assertThat(GeoJsonDocument.rounded(-0.004)).isEqualTo(-0.0);
    }

    @Test
    void drawnGroundSaysWhatIsKnownOfIt() {
        DrawnDocument document = new DrawnDocument(32631);
        document.add("7", DrawnShapes.usual(500_000, 10));
        PersonsOpinion bare = new PersonsOpinion(Kind.BAD, Optional.of("wet"), Optional.empty(), Optional.empty());
        document.add("8", new DrawnItem("b1", bare, Shapes.area(500_000, 0, 500_010, 0, 500_010, 10)));
        JsonNode features = JsonMapper.shared().readTree(document.text()).path("features");
        assertThat(features.path(0).path("properties").toString())
                .isEqualTo("{\"kind\":\"usual\",\"id\":\"made-usual\",\"person\":\"Invented Person\","
                        + "\"date\":\"2026-05-31\",\"hole\":\"7\"}");
        assertThat(features.path(1).path("properties").toString())
                .isEqualTo("{\"kind\":\"bad\",\"id\":\"b1\",\"reason\":\"wet\",\"hole\":\"8\"}");
    }
}
