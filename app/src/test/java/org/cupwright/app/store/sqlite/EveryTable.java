package org.cupwright.app.store.sqlite;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.GreenSurvey.Origin;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.CheckedRow;
import org.cupwright.app.store.Sql;
import org.cupwright.course.Course;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.green.SurveyPoints;
import org.cupwright.policy.PolicyChange;

/** An invented data folder with something in most tables, all of its rows in full, and a bit of it turned over. */
public final class EveryTable {
    /** What a newer program writes down beside the number of its format. */
    public static final String NEWER_MIGRATION = "INSERT INTO flyway_schema_history VALUES"
            + " (99, '99', 'invented', 'SQL', 'V99__invented.sql', 1, '', '2030-01-01', 1, 1)";

    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T05:00:00Z"), ZoneOffset.UTC);
    private static final int FACTS = 400;

    private EveryTable() {}

    /** Makes the folder, and a backup of it. */
    public static void make(Path data, Path backup) {
        try (SqliteFolder folder = new SqliteFolder(data, CLOCK)) {
            Writes.to(folder, stores -> {
                Course demo = new DemoCourse(1).course();
                stores.courses().add(demo);
                stores.courses().add(new Course(MadeFacts.COURSE, "Invented", demo.frame(), demo.holes()));
                MadeFacts.sequence(new Random(7), FACTS).forEach(stores.facts()::add);
                stores.photos().add(Photo.kept(new byte[9000]));
                LocalDate day = LocalDate.of(2026, 6, 20);
                stores.policies().add("made", new PolicyChange(day, "desk.units", "imperial"));
                stores.policies().add("", new PolicyChange(day, "desk.units", "metric"));
                double[] some = new Random(3).doubles(500).toArray();
                SurveyPoints points = SurveyPoints.scattered(some, some, some);
                PeopleRowsMade.fill(stores);
                stores.surveys().add("made", new GreenSurvey("1", points, new Origin(32626, "m", "made.csv")));
            });
            folder.upkeep().backup(backup, false);
        }
    }

    /** Every row of every table in full, and the migrations that are written down. */
    public static List<String> rows(Path file) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            Sql sql = new Sql(connection);
            List<String> all = sql.texts("SELECT version || script || checksum || success FROM flyway_schema_history");
            FolderContents.NUMBERED.forEach((table, key) -> all.addAll(sql.list(
                    row -> table + " " + CheckedRow.at(row).columns().toString().replaceAll("\\[B@[0-9a-f]+", "")
                            + CheckedRow.at(row).sum(),
                    "SELECT * FROM " + table + " ORDER BY " + key)));
            return all;
        }
    }

    /** The same bytes with one bit turned over. */
    public static byte[] flipped(byte[] whole, Random random) {
        byte[] bytes = whole.clone();
        int at = random.nextInt(bytes.length * Byte.SIZE);
        bytes[at / Byte.SIZE] ^= (byte) (1 << at % Byte.SIZE);
        return bytes;
    }
}
