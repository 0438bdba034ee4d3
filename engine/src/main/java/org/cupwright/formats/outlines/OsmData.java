package org.cupwright.formats.outlines;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/**
 * The elements of an OpenStreetMap file as they stand in it.
 *
 * @param nodes longitude and latitude by id
 * @param ways by id
 * @param relations in the order of the file
 */
record OsmData(Map<Long, Coordinate> nodes, Map<Long, Way> ways, List<Relation> relations) {
    /** A line or ring through nodes. */
    record Way(long id, List<Long> nodes, Map<String, String> tags) {}

    /** A group of ways; of the roles, "inner" matters. */
    record Relation(long id, List<Member> members, Map<String, String> tags) {}

    /** A way's part in a relation. */
    record Member(long way, String role) {}

    /** Tags with the element's own name added, so that findings can name it. */
    static Map<String, String> named(String element, long id, Map<String, String> tags) {
        Map<String, String> named = new LinkedHashMap<>(tags);
        named.put("@id", element + "/" + id);
        return named;
    }
}
