package org.cupwright.app.store.sqlite;

import java.util.List;
import java.util.stream.Collectors;
import org.cupwright.app.store.Dialect;

/** As SQLite says it. */
final class SqliteDialect implements Dialect {
    @Override
    public String unlessThere(String uniqueColumn) {
        return " ON CONFLICT (" + uniqueColumn + ") DO NOTHING";
    }

    @Override
    public String textIn(String column, String... path) {
        return "json_extract(" + column + ", '$." + String.join(".", path) + "')";
    }

    @Override
    public String eachText(String tableName) {
        return "json_each(?) AS " + tableName;
    }

    /** For ids and the like: texts in which nothing has to be escaped. */
    @Override
    public Object argument(List<String> texts) {
        return texts.stream().collect(Collectors.joining("\",\"", "[\"", "\"]"));
    }

    @Override
    public String joinAfter() {
        return " CROSS JOIN ";
    }

    @Override
    public String passingIndex(String column) {
        return column + " || ''";
    }
}
