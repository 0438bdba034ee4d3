package org.cupwright.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.GreenSurvey.Origin;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.app.storage.SurveyStore;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.green.SurveyPoints;

final class SqlSurveys implements SurveyStore {
    private final Sql sql;
    private final Documents documents = new Documents();
    private final Clock clock;

    SqlSurveys(Sql sql, Clock clock) {
        this.sql = sql;
        this.clock = clock;
    }

    @Override
    public Optional<GreenSurvey> find(String courseId, String holeId) {
        return sql.find(
                SqlSurveys::survey,
                "SELECT hole, points, point_count, cell_metres, sigma_metres, epsg, unit, source"
                        + " FROM survey_version WHERE course = ? AND hole = ? ORDER BY id DESC LIMIT 1",
                courseId,
                holeId);
    }

    @Override
    public List<SurveyVersion> versions(String courseId, String holeId) {
        List<SurveyVersion> rows = sql.list(
                SqlSurveys::version,
                "SELECT recorded_at, epsg, unit, source, point_count FROM survey_version WHERE course = ? AND hole = ?"
                        + " ORDER BY id",
                courseId,
                holeId);
        return IntStream.range(0, rows.size())
                .mapToObj(i -> new SurveyVersion(
                        i + 1,
                        rows.get(i).recordedAt(),
                        rows.get(i).origin(),
                        rows.get(i).points()))
                .toList();
    }

    private static SurveyVersion version(ResultSet row) throws SQLException {
        return new SurveyVersion(
                0, Instant.parse(row.getString("recorded_at")), origin(row), row.getInt("point_count"));
    }

    @Override
    public Optional<GreenSurvey> find(String courseId, String holeId, SurveyVersion version) {
        return sql.find(
                SqlSurveys::survey,
                "SELECT hole, points, point_count, cell_metres, sigma_metres, epsg, unit, source"
                        + " FROM survey_version WHERE course = ? AND hole = ? ORDER BY id LIMIT 1 OFFSET ?",
                courseId,
                holeId,
                version.number() - 1);
    }

    private static Origin origin(ResultSet row) throws SQLException {
        return new Origin(row.getInt("epsg"), row.getString("unit"), row.getString("source"));
    }

    private static GreenSurvey survey(ResultSet row) throws SQLException {
        SurveyPoints points = PointBlob.read(
                row.getBytes("points"),
                row.getInt("point_count"),
                orNotANumber(row, "cell_metres"),
                orNotANumber(row, "sigma_metres"));
        return new GreenSurvey(row.getString("hole"), points, origin(row));
    }

    private static double orNotANumber(ResultSet row, String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? Double.NaN : value;
    }

    @Override
    public Set<String> surveyed(String courseId) {
        return new TreeSet<>(sql.list(
                row -> row.getString(1), "SELECT DISTINCT hole FROM survey_version WHERE course = ?", courseId));
    }

    @Override
    public LevelSpots levels(String courseId) {
        return sql.find(
                        row -> row.getString(1),
                        "SELECT document FROM levels_version WHERE course = ? ORDER BY id DESC LIMIT 1",
                        courseId)
                .map(document -> documents.read(document, LevelSpots.class))
                .orElse(LevelSpots.none());
    }

    /** A level spots document and when it was kept. */
    private record Kept(Instant recordedAt, String document) {}

    @Override
    public LevelSpots levelsBefore(String courseId, Instant moment) {
        List<Kept> newestFirst = sql.list(
                row -> new Kept(Instant.parse(row.getString("recorded_at")), row.getString("document")),
                "SELECT recorded_at, document FROM levels_version WHERE course = ? ORDER BY id DESC",
                courseId);
        return newestFirst.stream()
                .filter(kept -> kept.recordedAt().isBefore(moment))
                .findFirst()
                .map(kept -> documents.read(kept.document(), LevelSpots.class))
                .orElse(LevelSpots.none());
    }

    @Override
    public void addLevels(String courseId, LevelSpots spots) {
        sql.run(
                "INSERT INTO levels_version (course, recorded_at, document) VALUES (?, ?, ?)",
                courseId,
                clock.instant().toString(),
                documents.write(spots));
    }

    @Override
    public void add(String courseId, GreenSurvey survey) {
        SurveyPoints points = survey.points();
        sql.run(
                "INSERT INTO survey_version (course, hole, recorded_at, epsg, unit, cell_metres, sigma_metres, source,"
                        + " point_count, points) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                courseId,
                survey.hole(),
                clock.instant().toString(),
                survey.origin().epsg(),
                survey.origin().unit(),
                orNull(points.gridCellMetres()),
                orNull(points.givenSigmaMetres()),
                survey.origin().file(),
                points.count(),
                PointBlob.write(points));
    }

    private static Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
