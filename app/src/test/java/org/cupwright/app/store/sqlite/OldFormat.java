package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationVersion;

/** A data folder as the first version left it: format 1, with an invented course and a plan in it. */
public final class OldFormat {
    public static final String COURSE = "made";
    public static final String DAY = "2026-06-20";

    private OldFormat() {}

    public static Path make(Path folder) throws SQLException, IOException {
        Files.createDirectories(folder);
        Path file = folder.resolve("cupwright.db");
        Flyway.configure()
                .dataSource("jdbc:sqlite:" + file, "", "")
                .locations("classpath:db/migration/sqlite")
                .target(MigrationVersion.fromVersion("1"))
                .load()
                .migrate();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            run(
                    connection,
                    "INSERT INTO course_version (course, recorded_at, document) VALUES (?, ?, ?)",
                    COURSE,
                    "2026-06-19T05:00:00Z",
                    resource("course-format-1.json"));
            run(
                    connection,
                    "INSERT INTO plan_version (course, day, recorded_at, state, policy_version, engine_version,"
                            + " document) VALUES (?, ?, ?, 'draft', 0, '0.1', ?)",
                    COURSE,
                    DAY,
                    "2026-06-20T05:00:00Z",
                    resource("plan-format-1.json"));
        }
        return file;
    }

    private static void run(Connection connection, String text, String... arguments) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(text)) {
            for (int i = 0; i < arguments.length; i++) {
                statement.setString(i + 1, arguments[i]);
            }
            statement.executeUpdate();
        }
    }

    private static String resource(String name) throws IOException {
        try (InputStream stream = OldFormat.class.getResourceAsStream("/org/cupwright/app/store/" + name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
