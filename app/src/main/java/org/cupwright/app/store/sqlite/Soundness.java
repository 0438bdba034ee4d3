package org.cupwright.app.store.sqlite;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.storage.upkeep.FolderReport.Damage;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;

/** All that can be found wrong with a data file, or a backup of one. */
final class Soundness {
    private Soundness() {}

    /** What the database finds, what is otherwise than this program makes it, and every row that is damaged. */
    static List<Damage> damages(Connection connection, Path file) throws SQLException {
        List<Damage> damages = new ArrayList<>();
        for (String said : Snapshot.damage(connection)) {
            damages.add(damage(Message.of("check.integrity", new Name(said)), file));
        }
        int format = Database.pragma(connection, "user_version");
        List<String> different = EmptyDatabase.differences(connection, format);
        different.forEach(object -> damages.add(damage(Message.of("check.schema", new Name(object)), file)));
        if (different.stream().noneMatch(object -> object.startsWith("table "))) {
            damages.addAll(new FolderContents(connection).unreadable());
        }
        return damages;
    }

    static Damage damage(Message what, Path file) {
        return new Damage(what, Message.of("where.place", new Name(file.toString())), Message.of("try.store.damaged"));
    }

    /** Refuses a backup in which anything at all is damaged. */
    static void refuseDamaged(Database backup) throws SQLException {
        try (Connection connection = backup.openToRead()) {
            for (Damage damage : damages(connection, backup.file())) {
                throw StoreProblems.backupDamaged(backup.file(), damage);
            }
        }
    }
}
