package org.cupwright.app.store;

import java.time.Clock;
import java.util.Optional;

/** A table of documents, of each course every version that there ever was; the newest counts. */
record CourseDocuments(Sql sql, Clock clock, String table) {
    Optional<String> newest(String courseId) {
        String query = "SELECT document FROM " + table + " WHERE course = ? ORDER BY id DESC LIMIT 1";
        return sql.texts(query, courseId).stream().findFirst();
    }

    <T> Optional<T> newest(String courseId, Class<T> type) {
        return newest(courseId).map(document -> Documents.read(document, type));
    }

    void add(String courseId, Object value) {
        sql.change(
                "INSERT INTO " + table + " (course, recorded_at, document) VALUES (?, ?, ?)",
                courseId,
                clock.instant().toString(),
                Documents.write(value));
    }
}
