package org.cupwright.app.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.KeptPhone;
import org.cupwright.app.storage.KeptPin;
import org.cupwright.app.storage.PhoneStore;

record SqlPhones(Sql sql) implements PhoneStore {
    private static final String PHONE = "phone";
    private static final String PIN = "pin";
    private static final String WRONG = "wrong_pin";

    @Override
    public List<KeptPhone> all() {
        return sql.checked(PhoneRows::phone, PHONE, "ORDER BY id");
    }

    @Override
    public Optional<KeptPhone> find(UUID id) {
        return sql.checked(PhoneRows::phone, PHONE, "WHERE phone = ?", id.toString()).stream()
                .findFirst();
    }

    @Override
    public void add(KeptPhone phone) {
        sql.add(PHONE, PhoneRows.row(phone));
    }

    @Override
    public void replace(KeptPhone phone) {
        sql.replace(PHONE, "phone", PhoneRows.row(phone));
    }

    @Override
    public void end(UUID id) {
        sql.change("DELETE FROM wrong_pin WHERE phone = ?", id.toString());
        sql.change("DELETE FROM phone WHERE phone = ?", id.toString());
    }

    @Override
    public List<KeptPin> pins() {
        return sql.checked(PhoneRows::pin, PIN, "ORDER BY id");
    }

    @Override
    public Optional<KeptPin> pin(UUID account) {
        return sql.checked(PhoneRows::pin, PIN, "WHERE account = ?", account.toString()).stream()
                .findFirst();
    }

    @Override
    public void set(KeptPin pin) {
        if (pin(pin.account()).isPresent()) {
            sql.replace(PIN, "account", PhoneRows.row(pin));
        } else {
            sql.add(PIN, PhoneRows.row(pin));
        }
    }

    @Override
    public int wrong(UUID phone, UUID account, Instant now) {
        sql.add(WRONG, PhoneRows.wrong(phone, account, now));
        return (int) sql.number("SELECT count(*) FROM wrong_pin WHERE phone = ?", phone.toString());
    }

    @Override
    public void right(UUID phone, UUID account) {
        sql.change("DELETE FROM wrong_pin WHERE phone = ? AND account = ?", phone.toString(), account.toString());
    }

    /** Somebody's role, password or name is another one: what was opened before counts no more. */
    void changed(KeptPerson person) {
        String account = person.id().toString();
        sql.change("DELETE FROM phone WHERE account = ?", account);
        if (!person.active()) {
            sql.change("DELETE FROM pin WHERE account = ?", account);
            sql.change("DELETE FROM wrong_pin WHERE account = ?", account);
        }
    }
}
