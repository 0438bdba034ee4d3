package org.cupwright.app.store;

import java.time.Clock;
import java.util.Optional;

/** A table of documents, of each course every version that there ever was; the newest counts. */
record CourseDocuments(Sql sql, Clock clock, String table) {
    <T> Optional<T> newest(String courseId, Sql.Row<T> reader) {
        return sql.checked(reader, table, "WHERE course = ? ORDER BY id DESC LIMIT 1", courseId).stream()
                .findFirst();
    }

    <T> Optional<T> newest(String courseId, Class<T> type) {
        return newest(courseId, row -> Documents.read(row.getString("document"), type));
    }

    /** The newest of those that are older than the one of a number. */
    <T> Optional<T> before(String courseId, long number, Sql.Row<T> reader) {
        return sql
                .checked(reader, table, "WHERE course = ? AND id < ? ORDER BY id DESC LIMIT 1", courseId, number)
                .stream()
                .findFirst();
    }

    void add(String courseId, Object value) {
        sql.add(
                table,
                new CheckedRow()
                        .with("course", courseId)
                        .with("recorded_at", clock.instant().toString())
                        .with("document", Documents.write(value)));
    }
}
