package org.cupwright.app.maps;

import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Ground that people drew as GeoJSON (RFC 7946): WGS84, an area or a point each, with {@code kind} (good, bad, usual), {@code id},
 * {@code hole}, and where known {@code reason}, {@code person} and {@code date}.
 */
public final class DrawnDocument {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final GeoJsonGeometry shapes;
    private final ArrayNode features = NODES.arrayNode();

    /** @param epsg the course's frame */
    public DrawnDocument(int epsg) {
        this.shapes = new GeoJsonGeometry(
                Projection.between(CoordinateFrame.of(epsg), CoordinateFrame.of(CoordinateFrame.WGS84)));
    }

    public void add(String hole, DrawnItem item) {
        ObjectNode properties = properties(item);
        properties.put("hole", hole);
        ObjectNode feature = NODES.objectNode();
        feature.put("type", "Feature");
        feature.set("geometry", shapes.of(item.place()));
        feature.set("properties", properties);
        features.add(feature);
    }

    private static ObjectNode properties(DrawnItem item) {
        PersonsOpinion word = item.word();
        ObjectNode properties = NODES.objectNode();
        properties.put("kind", EnumNames.lowerCamel(word.kind()));
        properties.put("id", item.id());
        word.reason().ifPresent(reason -> properties.put("reason", reason));
        word.person().ifPresent(person -> properties.put("person", person));
        word.date().ifPresent(date -> properties.put("date", date.toString()));
        return properties;
    }

    public String text() {
        ObjectNode collection = NODES.objectNode();
        collection.put("type", "FeatureCollection");
        collection.set("features", features);
        return JsonMapper.shared().writerWithDefaultPrettyPrinter().writeValueAsString(collection) + "\n";
    }
}
