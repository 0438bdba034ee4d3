package org.cupwright.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.app.desk.GreenSurvey;
import org.cupwright.app.desk.GreenSurvey.Origin;
import org.cupwright.app.desk.SurveyStore;
import org.cupwright.green.SurveyPoints;

final class SqlSurveys implements SurveyStore {
    private final Sql sql;
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

    private static GreenSurvey survey(ResultSet row) throws SQLException {
        return new GreenSurvey(
                row.getString("hole"),
                PointBlob.read(row.getBytes("points"), row.getInt("point_count")),
                optional(row, "cell_metres"),
                optional(row, "sigma_metres"),
                new Origin(row.getInt("epsg"), row.getString("unit"), row.getString("source")));
    }

    private static OptionalDouble optional(ResultSet row, String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
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
                orNull(survey.gridCellMetres()),
                orNull(survey.sigmaMetres()),
                survey.origin().file(),
                points.size(),
                PointBlob.write(points));
    }

    private static Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
