package org.cupwright.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Optional;
import org.cupwright.app.desk.GreenSurvey;
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
        // a missing number reads as 0, which no cell and no σ can be
        SurveyPoints points = PointBlob.read(
                row.getBytes("points"),
                row.getInt("point_count"),
                row.getDouble("cell_metres"),
                row.getDouble("sigma_metres"));
        return new GreenSurvey(
                row.getString("hole"), points, row.getInt("epsg"), row.getString("unit"), row.getString("source"));
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
                survey.epsg(),
                survey.unit(),
                orNull(points.gridCellMetres()),
                orNull(points.givenSigmaMetres()),
                survey.source(),
                points.count(),
                PointBlob.write(points));
    }

    private static Double orNull(java.util.OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
