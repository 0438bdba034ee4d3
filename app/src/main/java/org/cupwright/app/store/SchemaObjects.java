package org.cupwright.app.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The tables and indexes of a data file, each by its name and how it was made, and whether all are there. */
final class SchemaObjects {
    private SchemaObjects() {}

    /** Those that a freshly made file has and this one, of the same format, has not or has otherwise. */
    static List<String> missing(Connection connection) throws SQLException {
        try (Connection fresh = EmptyDatabase.open()) {
            Map<String, String> found = in(connection);
            return in(fresh).entrySet().stream()
                    .filter(object -> !object.getValue().equals(found.get(object.getKey())))
                    .map(Map.Entry::getKey)
                    .toList();
        }
    }

    /** What the database makes by itself has no statement, and comes with its table. */
    private static Map<String, String> in(Connection connection) {
        Map<String, String> made = new TreeMap<>();
        new Sql(connection)
                .each(
                        row -> made.put(row.getString(1), row.getString(2)),
                        "SELECT type || ' ' || name, sql FROM sqlite_schema WHERE sql IS NOT NULL");
        return made;
    }
}
