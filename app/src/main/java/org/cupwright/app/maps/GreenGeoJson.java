package org.cupwright.app.maps;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.cupwright.green.DrawnItem;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.policy.EnumNames;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A judged green as GeoJSON (RFC 7946): WGS84, longitude before latitude, outer rings anticlockwise.
 *
 * <p>A feature collection whose features say by their property {@code kind} what they are:
 *
 * <ul>
 *   <li>{@code outline}: the green;
 *   <li>{@code ground}: all ground of one {@code verdict} (pass, caution, fail, notSurveyed) and one {@code rule}, the one that
 *       decides (null where nothing stands against a hole), with {@code areaSquareMetres}. It is made of the squares of 0.25 m
 *       about the spots that were judged, cut at the green's edge; together these features cover the green but for slivers along
 *       the edge;
 *   <li>{@code best}: a spot to begin with, the best first;
 *   <li>{@code position}: the spot that was asked about;
 *   <li>{@code drawn}: ground that people drew, with what they say of it as {@code word} (good, bad, usual), its {@code id}, and
 *       where known {@code reason}, {@code person}, {@code said} (the day).
 * </ul>
 *
 * docs/schemas/assess-green-geojson.schema.json holds the shape.
 */
public final class GreenGeoJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final GreenJudgement judgement;
    private final Map<String, String> about;
    private final int epsg;

    /**
     * @param judgement the green
     * @param epsg the course's frame
     * @param about properties that every feature carries: course, date
     */
    public GreenGeoJson(GreenJudgement judgement, int epsg, Map<String, String> about) {
        this.judgement = judgement;
        this.about = about;
        this.epsg = epsg;
    }

    /** The document, with the spot that was asked about, if one was. */
    public String document(Optional<Judgement> asked) {
        GeoJsonDocument document = new GeoJsonDocument(epsg);
        ObjectNode outline = properties("outline");
        outline.put("areaSquareMetres", GeoJsonDocument.rounded(judgement.areaSquareMetres()));
        document.add(judgement.green().hole().green().polygon(), outline);
        new JudgedGround(judgement).areas().forEach((said, area) -> document.add(area, ground(said, area)));
        judgement.best().forEach(best -> document.add(point(best), spot("best", best)));
        asked.ifPresent(spot -> document.add(point(spot), spot("position", spot)));
        judgement.green().drawn().forEach(item -> document.add(item.place(), drawn(item)));
        return document.text();
    }

    private ObjectNode ground(JudgedGround.Said said, Geometry area) {
        ObjectNode properties = properties("ground");
        properties.put("verdict", EnumNames.lowerCamel(said.verdict()));
        properties.put("rule", said.rule().map(RuleId::id).orElse(null));
        properties.put("areaSquareMetres", GeoJsonDocument.rounded(area.getArea()));
        return properties;
    }

    private ObjectNode spot(String kind, Judgement spot) {
        ObjectNode properties = properties(kind);
        properties.put("verdict", EnumNames.lowerCamel(spot.verdict()));
        properties.put("rule", spot.deciding().map(RuleId::id).orElse(null));
        return properties;
    }

    private static Geometry point(Judgement spot) {
        return new GeometryFactory().createPoint(spot.position().toCoordinate());
    }

    private ObjectNode drawn(DrawnItem item) {
        ObjectNode properties = properties("drawn");
        properties.put("id", item.id());
        properties.put("word", EnumNames.lowerCamel(item.word().kind()));
        properties.put("reason", item.word().reason().orElse(null));
        properties.put("person", item.word().person().orElse(null));
        properties.put("said", item.word().date().map(LocalDate::toString).orElse(null));
        return properties;
    }

    private ObjectNode properties(String kind) {
        ObjectNode properties = NODES.objectNode();
        properties.put("kind", kind);
        properties.put("hole", judgement.green().hole().id());
        about.forEach(properties::put);
        return properties;
    }
}
