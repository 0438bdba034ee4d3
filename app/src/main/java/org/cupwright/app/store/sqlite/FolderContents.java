package org.cupwright.app.store.sqlite;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.cupwright.app.storage.DamagedRow;
import org.cupwright.app.storage.DayRound;
import org.cupwright.app.storage.DrawnOnCourse;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.app.storage.json.UnreadableFact;
import org.cupwright.app.storage.upkeep.FolderCounts;
import org.cupwright.app.storage.upkeep.FolderReport.Damage;
import org.cupwright.app.store.CheckedRow;
import org.cupwright.app.store.Documents;
import org.cupwright.app.store.PeopleRows;
import org.cupwright.app.store.PhoneRows;
import org.cupwright.app.store.PointBlob;
import org.cupwright.app.store.Sql;
import org.cupwright.app.store.SqlTraining;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Fact;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Said;

/** All rows of a data file: how many there are, and whether each can still be read. */
final class FolderContents {
    private final Sql sql;
    private final Set<String> tables;
    private final boolean summed;

    FolderContents(Connection connection) {
        this.sql = new Sql(connection);
        this.tables = new TreeSet<>(sql.texts("SELECT name FROM sqlite_schema WHERE type = 'table'"));
        this.summed = Database.pragma(connection, "user_version") >= Upgrade.SUMS;
    }

    static boolean anythingIn(Database database) throws SQLException {
        try (Connection connection = database.openToRead()) {
            return new FolderContents(connection).holdsAnything();
        }
    }

    /** Of every table of ours, the column by which its rows are numbered. */
    static final SortedMap<String, String> NUMBERED = new TreeMap<>(Map.ofEntries(
            Map.entry("course_version", "id"),
            Map.entry("levels_version", "id"),
            Map.entry("drawn_version", "id"),
            Map.entry("set_up_version", "id"),
            Map.entry("plan_version", "id"),
            Map.entry("round_version", "id"),
            Map.entry("policy_change", "id"),
            Map.entry("survey_version", "id"),
            Map.entry("fact", "received"),
            Map.entry("photo", "id"),
            Map.entry("person", "id"),
            Map.entry("sign_in_code", "id"),
            Map.entry("phone", "id"),
            Map.entry("pin", "id"),
            Map.entry("wrong_pin", "id"),
            Map.entry("audit", "id"),
            Map.entry("training", "id")));

    private boolean holdsAnything() {
        return tables.stream()
                .filter(table -> !table.startsWith("sqlite_") && !table.startsWith("flyway_"))
                .anyMatch(table -> count(table, "*") > 0);
    }

    FolderCounts counts() {
        return new FolderCounts(
                count("course_version", "DISTINCT course"),
                count("survey_version", "*"),
                count("plan_version", "DISTINCT course || ' ' || day"),
                count("fact", "*"),
                count("photo", "*"),
                photosMissing());
    }

    /** Entries that came without their photo, as a logbook that is imported does. */
    private long photosMissing() {
        return tables.contains("photo")
                ? sql.number("SELECT count(*) FROM (SELECT CASE WHEN json_valid(document)"
                        + " THEN json_extract(document, '$.payload.photo') END AS hash"
                        + " FROM fact WHERE kind = 'somethingOdd')"
                        + " WHERE hash IS NOT NULL AND hash NOT IN (SELECT hash FROM photo)")
                : 0;
    }

    private long count(String table, String what) {
        return tables.contains(table) ? sql.number("SELECT count(" + what + ") FROM \"" + table + "\"") : 0;
    }

    /** Reads a row with everything in it; throws what it throws when it cannot be read. */
    private interface Reading {
        void of(ResultSet row) throws SQLException;
    }

    /** The rows that cannot be read as what they should be. */
    List<Damage> unreadable() {
        List<Damage> found = new ArrayList<>();
        look("course_version", row -> Documents.read(row.getString("document"), Course.class), found);
        look("levels_version", row -> Documents.read(row.getString("document"), LevelSpots.class), found);
        look("drawn_version", row -> Documents.read(row.getString("document"), DrawnOnCourse.class), found);
        look("set_up_version", row -> Documents.read(row.getString("document"), SettingUp.class), found);
        look("plan_version", row -> Documents.read(row.getString("document"), StoredPlan.class), found);
        look("round_version", row -> Documents.read(row.getString("document"), DayRound.class), found);
        look("policy_change", row -> LocalDate.parse(row.getString("effective")), found);
        look("survey_version", FolderContents::points, found);
        look("fact", FolderContents::fact, found);
        look("photo", FolderContents::photo, found);
        look("person", PeopleRows::person, found);
        look("sign_in_code", PeopleRows::code, found);
        look("phone", PhoneRows::phone, found);
        look("pin", PhoneRows::pin, found);
        look("wrong_pin", PhoneRows::wrong, found);
        look("audit", PeopleRows::audit, found);
        look("training", SqlTraining::record, found);
        return found;
    }

    private void look(String table, Reading reading, List<Damage> found) {
        if (tables.contains(table)) {
            String key = NUMBERED.get(table);
            sql.each(row -> found.addAll(damage(table, row.getLong(key), row, reading)), "SELECT * FROM " + table);
        }
    }

    private List<Damage> damage(String table, long key, ResultSet row, Reading reading) throws SQLException {
        try {
            if (!isAsWritten(row)) {
                return List.of(damage(table, key, Message.of("check.unreadable", new Said(Message.of("row.changed")))));
            }
            reading.of(row);
            return List.of();
        } catch (RuntimeException broken) {
            return List.of(damage(table, key, Message.of("check.unreadable", why(broken))));
        }
    }

    private static Damage damage(String table, long key, Message what) {
        return new Damage(what, new DamagedRow(table, key).where(), Message.of("try.store.row"));
    }

    /** Rows of formats before the sums have none. */
    private boolean isAsWritten(ResultSet row) throws SQLException {
        return !summed
                || row.getObject(CheckedRow.SUM) != null
                        && row.getLong(CheckedRow.SUM) == CheckedRow.at(row).sum();
    }

    private static Message.Argument why(RuntimeException broken) {
        return broken instanceof UnreadableFact fact ? fact.why() : new Name(Documents.why(broken));
    }

    private static void points(ResultSet row) throws SQLException {
        PointBlob.read(row.getBytes("points"), row.getInt("point_count"), Double.NaN, Double.NaN);
    }

    private static void photo(ResultSet row) throws SQLException {
        if (!Photo.kept(row.getBytes("content")).hash().equals(row.getString("hash"))) {
            throw new IllegalStateException("the photo is not the one that was kept: its content has another hash");
        }
    }

    /** A fact's columns are there for asking; they must say what the fact says. */
    private static void fact(ResultSet row) throws SQLException {
        Fact fact = FactJson.read(row.getString("document"));
        boolean same = fact.id().toString().equals(row.getString("id"))
                && fact.course().equals(row.getString("course"))
                && fact.hole().equals(java.util.Optional.ofNullable(row.getString("hole")))
                && fact.payload().kind().equals(row.getString("kind"))
                && fact.happenedAt().toEpochMilli() == row.getLong("happened_millis");
        if (!same) {
            throw new IllegalStateException("its columns and its document disagree");
        }
    }
}
