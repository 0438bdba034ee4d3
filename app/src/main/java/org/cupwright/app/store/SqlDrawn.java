package org.cupwright.app.store;

import java.time.Clock;
import org.cupwright.app.storage.DrawnOnCourse;
import org.cupwright.app.storage.DrawnStore;

final class SqlDrawn implements DrawnStore {
    private final Sql sql;
    private final Documents documents = new Documents();
    private final Clock clock;

    SqlDrawn(Sql sql, Clock clock) {
        this.sql = sql;
        this.clock = clock;
    }

    @Override
    public DrawnOnCourse of(String courseId) {
        return sql.find(
                        row -> row.getString(1),
                        "SELECT document FROM drawn_version WHERE course = ? ORDER BY id DESC LIMIT 1",
                        courseId)
                .map(document -> documents.read(document, DrawnOnCourse.class))
                .orElse(DrawnOnCourse.none());
    }

    @Override
    public void add(String courseId, DrawnOnCourse all) {
        sql.run(
                "INSERT INTO drawn_version (course, recorded_at, document) VALUES (?, ?, ?)",
                courseId,
                clock.instant().toString(),
                documents.write(all));
    }
}
