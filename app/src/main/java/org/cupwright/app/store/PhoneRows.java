package org.cupwright.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.storage.KeptPhone;
import org.cupwright.app.storage.KeptPin;

/** Rows of phones and of the digits that are typed there, and the values in them. */
public final class PhoneRows {
    private PhoneRows() {}

    /** A row of {@code phone}. */
    public static KeptPhone phone(ResultSet row) throws SQLException {
        return new KeptPhone(
                UUID.fromString(row.getString("phone")),
                Optional.ofNullable(row.getString("account")).map(UUID::fromString),
                row.getString("token_hash"),
                row.getString("token_before"),
                Instant.parse(row.getString("made_at")),
                Instant.parse(row.getString("seen_at")),
                Instant.parse(row.getString("until")));
    }

    static CheckedRow row(KeptPhone phone) {
        return new CheckedRow()
                .with("phone", phone.id().toString())
                .with("account", phone.account().map(UUID::toString).orElse(null))
                .with("token_hash", phone.hash())
                .with("token_before", phone.before())
                .with("made_at", phone.madeAt().toString())
                .with("seen_at", phone.seenAt().toString())
                .with("until", phone.until().toString());
    }

    /** A row of {@code pin}. */
    public static KeptPin pin(ResultSet row) throws SQLException {
        return new KeptPin(
                UUID.fromString(row.getString("account")),
                row.getString("hash"),
                Instant.parse(row.getString("set_at")));
    }

    static CheckedRow row(KeptPin pin) {
        return new CheckedRow()
                .with("account", pin.account().toString())
                .with("hash", pin.hash())
                .with("set_at", pin.setAt().toString());
    }

    /** When a row of {@code wrong_pin} was written. */
    public static Instant wrong(ResultSet row) throws SQLException {
        UUID.fromString(row.getString("phone"));
        UUID.fromString(row.getString("account"));
        return Instant.parse(row.getString("typed_at"));
    }

    static CheckedRow wrong(UUID phone, UUID account, Instant now) {
        return new CheckedRow()
                .with("phone", phone.toString())
                .with("account", account.toString())
                .with("typed_at", now.toString());
    }
}
