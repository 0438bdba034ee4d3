package org.cupwright.app.maps;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.message.Amount;
import org.locationtech.jts.geom.Geometry;
import tools.jackson.databind.node.ObjectNode;

/**
 * What is doubtful about greens as GeoJSON: one feature a finding.
 *
 * <p>Its geometry is what it is about, told by the property {@code covers}: {@code part} of a green, a single {@code
 * point}, or the whole {@code green}. {@code number} counts a green's findings, the worst being 1.
 * docs/schemas/findings-geojson.schema.json holds the shape.
 */
public final class FindingsGeoJson {
    private final GeoJsonDocument document;
    private final Map<String, String> about;
    private final Texts texts;

    /**
     * @param epsg the course's frame
     * @param about properties that every feature carries: course
     */
    public FindingsGeoJson(int epsg, Map<String, String> about, Texts texts) {
        this.document = new GeoJsonDocument(epsg);
        this.about = about;
        this.texts = texts;
    }

    /** Adds the findings about one green, the worst first. */
    public void add(Hole hole, List<GroundFinding> findings) {
        int number = 1;
        for (GroundFinding found : findings) {
            add(hole, found, number++);
        }
    }

    public String text() {
        return document.text();
    }

    private void add(Hole hole, GroundFinding found, int number) {
        Finding finding = found.finding();
        Optional<Geometry> place = finding.place().map(GeoJsonDocument::point);
        String whole = place.isPresent() ? "point" : "green";
        Geometry shape = found.area()
                .<Geometry>map(area -> area)
                .or(() -> place)
                .orElse(hole.green().polygon());
        ObjectNode properties = document.add(shape);
        properties.put("kind", finding.kind().jsonName());
        properties.put("hole", hole.id());
        about.forEach(properties::put);
        properties.put("number", number);
        properties.put("covers", found.area().isPresent() ? "part" : whole);
        properties.put("value", texts.show(finding.value()));
        Amount.of(finding.value()).ifPresent(amount -> {
            properties.put("amount", GeoJsonDocument.rounded(amount.number()));
            properties.put("unit", amount.unit().isEmpty() ? null : amount.unit());
        });
        properties.put("says", texts.say(finding.says()));
        properties.put("tryThis", texts.say(finding.tryThis()));
    }
}
