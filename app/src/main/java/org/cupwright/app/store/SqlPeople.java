package org.cupwright.app.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.storage.KeptCode;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.NameKey;
import org.cupwright.app.storage.PeopleStore;

record SqlPeople(Sql sql) implements PeopleStore {
    private static final String PERSON = "person";
    private static final String CODE = "sign_in_code";

    @Override
    public List<KeptPerson> all() {
        return people("ORDER BY id");
    }

    @Override
    public Optional<KeptPerson> find(UUID id) {
        return people("WHERE account = ?", id.toString()).stream().findFirst();
    }

    @Override
    public Optional<KeptPerson> named(String name) {
        return people("WHERE name_key = ?", NameKey.of(name)).stream().findFirst();
    }

    private List<KeptPerson> people(String which, Object... arguments) {
        return sql.checked(PeopleRows::person, PERSON, which, arguments);
    }

    @Override
    public void add(KeptPerson person) {
        sql.add(PERSON, PeopleRows.row(person));
    }

    @Override
    public void replace(KeptPerson person) {
        sql.replace(PERSON, "account", PeopleRows.row(person));
        new SqlPhones(sql).changed(person);
    }

    @Override
    public int erase(KeptPerson person, String neutral) {
        replace(person.called(neutral));
        return 1 + new SqlErasure(sql, person.name(), neutral).everywhere();
    }

    @Override
    public void add(KeptCode code) {
        sql.add(CODE, PeopleRows.row(code));
    }

    @Override
    public Optional<KeptCode> code(String hash) {
        return sql.checked(PeopleRows::code, CODE, "WHERE hash = ?", hash).stream()
                .findFirst();
    }

    @Override
    public List<KeptCode> openCodes(Instant now) {
        return sql.checked(PeopleRows::code, CODE, "WHERE used_at IS NULL ORDER BY id").stream()
                .filter(code -> code.isOpen(now))
                .toList();
    }

    @Override
    public void replace(KeptCode code) {
        sql.replace(CODE, "hash", PeopleRows.row(code));
    }
}
