package org.cupwright.app.maps;

import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.node.ObjectNode;

/**
 * Ground that people drew as GeoJSON (RFC 7946): WGS84, an area or a point each, with {@code kind} (good, bad, usual,
 * area, and then {@code area}, its number),
 * {@code id}, {@code hole}, and where known {@code reason}, {@code person} and {@code date}.
 */
public final class DrawnDocument {
    private final GeoJsonDocument document;

    /** @param epsg the course's frame */
    public DrawnDocument(int epsg) {
        this.document = new GeoJsonDocument(epsg);
    }

    public void add(String hole, DrawnItem item) {
        PersonsOpinion word = item.word();
        ObjectNode properties = document.add(item.place());
        properties.put("kind", EnumNames.lowerCamel(word.kind()));
        properties.put("id", item.id());
        word.area().ifPresent(area -> properties.put("area", area));
        word.reason().ifPresent(reason -> properties.put("reason", reason));
        word.person().ifPresent(person -> properties.put("person", person));
        word.date().ifPresent(date -> properties.put("date", date.toString()));
        properties.put("hole", hole);
    }

    public String text() {
        return document.text();
    }
}
