package org.cupwright.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.storage.KeptCode;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.NameKey;
import org.cupwright.policy.EnumNames;

/** Rows of people, their codes and the audit trail, and the values in them. */
public final class PeopleRows {
    private PeopleRows() {}

    /** A row of {@code person}. */
    public static KeptPerson person(ResultSet row) throws SQLException {
        return new KeptPerson(
                UUID.fromString(row.getString("account")),
                row.getString("name"),
                row.getString("role"),
                row.getBoolean("active"),
                row.getString("password_hash"),
                Instant.parse(row.getString("made_at")),
                Instant.parse(row.getString("changed_at")));
    }

    static CheckedRow row(KeptPerson person) {
        return new CheckedRow()
                .with("account", person.id().toString())
                .with("name", person.name())
                .with("name_key", NameKey.of(person.name()))
                .with("role", person.role())
                .with("active", person.active() ? 1 : 0)
                .with("password_hash", person.passwordHash())
                .with("made_at", person.madeAt().toString())
                .with("changed_at", person.changedAt().toString());
    }

    /** A row of {@code sign_in_code}. */
    public static KeptCode code(ResultSet row) throws SQLException {
        return new KeptCode(
                row.getString("hash"),
                Optional.ofNullable(row.getString("name")),
                row.getString("role"),
                Instant.parse(row.getString("made_at")),
                Instant.parse(row.getString("until")),
                Optional.ofNullable(row.getString("used_at")).map(Instant::parse));
    }

    static CheckedRow row(KeptCode code) {
        return new CheckedRow()
                .with("hash", code.hash())
                .with("name", code.name().orElse(null))
                .with("role", code.role())
                .with("made_at", code.madeAt().toString())
                .with("until", code.until().toString())
                .with("used_at", code.usedAt().map(Instant::toString).orElse(null));
    }

    /** A row of {@code audit}: its columns are there for asking, and must say what its document says. */
    public static AuditLine audit(ResultSet row) throws SQLException {
        AuditLine line = Documents.read(row.getString("document"), AuditLine.class);
        boolean same = EnumNames.find(AuditKind.class, row.getString("kind")).equals(Optional.of(line.what()))
                && line.at().toEpochMilli() == row.getLong("at_millis")
                && line.about().course().equals(row.getString("course"));
        if (!same) {
            throw new IllegalStateException("its columns and its document disagree");
        }
        return line;
    }

    static CheckedRow row(AuditLine line) {
        return new CheckedRow()
                .with("at_millis", line.at().toEpochMilli())
                .with("kind", EnumNames.lowerCamel(line.what()))
                .with("course", line.about().course())
                .with("by_account", line.by().id().map(UUID::toString).orElse(null))
                .with("about_account", line.about().person().map(UUID::toString).orElse(null))
                .with("document", Documents.write(line));
    }
}
