package org.cupwright.app.store;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import org.cupwright.app.storage.Versions;
import org.cupwright.app.storage.Versions.Part;

/** Finds the newest rows of a course, each by an index. */
final class SqlVersions {
    private final Sql sql;

    SqlVersions(Sql sql) {
        this.sql = sql;
    }

    Versions of(String courseId, LocalDate day) {
        Map<Part, Long> newest = new EnumMap<>(Part.class);
        newest.put(Part.COURSE, newest("course_version WHERE course = ?", courseId));
        newest.put(Part.SURVEYS, newest("survey_version WHERE course = ?", courseId));
        newest.put(Part.LEVELS, newest("levels_version WHERE course = ?", courseId));
        newest.put(Part.DRAWN, newest("drawn_version WHERE course = ?", courseId));
        newest.put(Part.POLICY, newest("policy_change WHERE course IN ('', ?)", courseId));
        newest.put(Part.PLAN, newest("plan_version WHERE course = ? AND day = ?", courseId, day.toString()));
        newest.put(Part.LOGBOOK, newest("fact"));
        return new Versions(newest);
    }

    private long newest(String rows, Object... arguments) {
        String query = "SELECT coalesce(max(rowid), 0) FROM " + rows;
        return sql.find(row -> row.getLong(1), query, arguments).orElseThrow();
    }
}
