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
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.GreenSurvey.Origin;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.app.storage.SurveyStore;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.green.SharedAmplitude;
import org.cupwright.green.SurveyKind;
import org.cupwright.green.SurveyPoints;
import org.cupwright.policy.EnumNames;

record SqlSurveys(Sql sql, Clock clock) implements SurveyStore {
    private static final String OF_GREEN = "WHERE course = ? AND hole = ? ORDER BY id";

    @Override
    public Optional<GreenSurvey> find(String courseId, String holeId) {
        return one(OF_GREEN + " DESC LIMIT 1", courseId, holeId);
    }

    @Override
    public List<SurveyVersion> versions(String courseId, String holeId) {
        return sql.list(
                row -> new SurveyVersion(
                        row.getRow(),
                        Instant.parse(row.getString(1)),
                        origin(row),
                        row.getInt("point_count"),
                        kind(row)),
                "SELECT recorded_at, epsg, unit, source, point_count, kind FROM survey_version"
                        + " WHERE course = ? AND hole = ?"
                        + " ORDER BY id",
                courseId,
                holeId);
    }

    @Override
    public Optional<GreenSurvey> find(String courseId, String holeId, SurveyVersion version) {
        return one(OF_GREEN + " LIMIT 1 OFFSET ?", courseId, holeId, version.number() - 1);
    }

    private Optional<GreenSurvey> one(String which, Object... arguments) {
        return sql.checked(SqlSurveys::survey, "survey_version", which, arguments).stream()
                .findFirst();
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
        SurveyPoints ofKind = kind(row).map(points::as).orElse(points);
        return new GreenSurvey(
                row.getString("hole"), measured(row).map(ofKind::sharing).orElse(ofKind), origin(row));
    }

    private static Optional<SurveyKind> kind(ResultSet row) throws SQLException {
        return Optional.ofNullable(row.getString("kind")).flatMap(name -> EnumNames.find(SurveyKind.class, name));
    }

    private static Optional<SharedAmplitude> measured(ResultSet row) throws SQLException {
        double sigma = orNotANumber(row, "shared_metres");
        double error = orNotANumber(row, "shared_error_metres");
        double length = orNotANumber(row, "shared_length_metres");
        return Double.isNaN(sigma + error + length)
                ? Optional.empty()
                : Optional.of(new SharedAmplitude(sigma, error, length));
    }

    private static double orNotANumber(ResultSet row, String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? Double.NaN : value;
    }

    @Override
    public Set<String> surveyed(String courseId) {
        return new TreeSet<>(sql.texts("SELECT DISTINCT hole FROM survey_version WHERE course = ?", courseId));
    }

    private CourseDocuments levels() {
        return new CourseDocuments(sql, clock, "levels_version");
    }

    @Override
    public LevelSpots levels(String courseId) {
        return levels().newest(courseId, LevelSpots.class).orElse(LevelSpots.none());
    }

    /** A level spots document and when it was kept. */
    private record Kept(Instant recordedAt, String document) {}

    @Override
    public LevelSpots levelsBefore(String courseId, Instant moment) {
        List<Kept> newestFirst = sql.checked(
                row -> new Kept(Instant.parse(row.getString("recorded_at")), row.getString("document")),
                "levels_version",
                "WHERE course = ? ORDER BY id DESC",
                courseId);
        return newestFirst.stream()
                .filter(kept -> kept.recordedAt().isBefore(moment))
                .findFirst()
                .map(kept -> Documents.read(kept.document(), LevelSpots.class))
                .orElse(LevelSpots.none());
    }

    @Override
    public void addLevels(String courseId, LevelSpots spots) {
        levels().add(courseId, spots);
    }

    @Override
    public void add(String courseId, GreenSurvey survey) {
        SurveyPoints points = survey.points();
        Optional<SharedAmplitude> measured = points.measured();
        sql.add(
                "survey_version",
                new CheckedRow()
                        .with("course", courseId)
                        .with("hole", survey.hole())
                        .with("recorded_at", clock.instant().toString())
                        .with("epsg", survey.origin().epsg())
                        .with("unit", survey.origin().unit())
                        .with("cell_metres", orNull(points.gridCellMetres()))
                        .with("sigma_metres", orNull(points.givenSigmaMetres()))
                        .with("source", survey.origin().file())
                        .with("kind", points.kind().map(EnumNames::lowerCamel).orElse(null))
                        .with(
                                "shared_metres",
                                measured.map(SharedAmplitude::sigmaMetres).orElse(null))
                        .with(
                                "shared_error_metres",
                                measured.map(SharedAmplitude::errorMetres).orElse(null))
                        .with(
                                "shared_length_metres",
                                measured.map(SharedAmplitude::lengthMetres).orElse(null))
                        .with("point_count", points.count())
                        .with("points", PointBlob.write(points)));
    }

    private static Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
