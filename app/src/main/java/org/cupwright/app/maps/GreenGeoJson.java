package org.cupwright.app.maps;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.node.ObjectNode;

/**
 * A judged green as GeoJSON (RFC 7946): WGS84, longitude before latitude, outer rings anticlockwise.
 *
 * <p>A feature collection whose features say by their property {@code kind} what they are:
 *
 * <ul>
 *   <li>{@code outline}: the green;
 * <li>{@code ground}: all ground of one {@code verdict} (pass, caution, fail, notSurveyed) and one {@code rule}, the
 * one that decides (null where nothing stands against a hole), with {@code areaSquareMetres}. It is made of the squares
 * of 0.25 m about the spots that were judged, cut at the green's edge; together these features cover the green but for
 * slivers along the edge;
 *   <li>{@code best}: a spot to begin with, the best first;
 *   <li>{@code position}: the spot that was asked about;
 * <li>{@code drawn}: ground that people drew, with what they say of it as {@code word} (good, bad, usual), its {@code
 * id}, and where known {@code reason}, {@code person}, {@code said} (the day).
 * </ul>
 *
 * docs/schemas/assess-green-geojson.schema.json holds the shape.
 *
 * @param judgement the green
 * @param epsg the course's frame
 * @param about properties that every feature carries: course, date
 */
public record GreenGeoJson(GreenJudgement judgement, int epsg, Map<String, String> about) {
    /** The document, with the spot that was asked about, if one was. */
    public String document(Optional<Judgement> asked) {
        GeoJsonDocument document = new GeoJsonDocument(epsg);
        properties("outline", document.add(judgement.green().hole().green().polygon()))
                .put("areaSquareMetres", GeoJsonDocument.rounded(judgement.areaSquareMetres()));
        new JudgedGround(judgement)
                .areas()
                .forEach((said, area) -> properties("ground", document.add(area))
                        .put("verdict", EnumNames.lowerCamel(said.verdict()))
                        .put("rule", said.rule().map(RuleId::id).orElse(null))
                        .put("areaSquareMetres", GeoJsonDocument.rounded(area.getArea())));
        judgement.best().forEach(best -> add("best", best, document));
        asked.ifPresent(spot -> add("position", spot, document));
        judgement
                .green()
                .drawn()
                .forEach(item -> properties("drawn", document.add(item.place()))
                        .put("id", item.id())
                        .put("word", EnumNames.lowerCamel(item.word().kind()))
                        .put("reason", item.word().reason().orElse(null))
                        .put("person", item.word().person().orElse(null))
                        .put("said", item.word().date().map(LocalDate::toString).orElse(null)));
        return document.text();
    }

    private void add(String kind, Judgement spot, GeoJsonDocument document) {
        properties(kind, document.add(GeoJsonDocument.point(spot.position())))
                .put("verdict", EnumNames.lowerCamel(spot.verdict()))
                .put("rule", spot.deciding().map(RuleId::id).orElse(null));
    }

    private ObjectNode properties(String kind, ObjectNode properties) {
        properties.put("kind", kind);
        properties.put("hole", judgement.green().hole().id());
        about.forEach(properties::put);
        return properties;
    }
}
