package org.cupwright.app.store.sqlite;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.storage.AuditLine.About;
import org.cupwright.app.storage.AuditLine.Who;
import org.cupwright.app.storage.KeptCode;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.KeptPhone;
import org.cupwright.app.storage.KeptPin;
import org.cupwright.app.storage.Stores;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Translated;

/** Invented rows of people, codes and the audit trail. */
final class PeopleRowsMade {
    static final Instant THEN = Instant.parse("2026-06-20T04:00:00.25Z");
    static final KeptPerson IDA = person(1, "Ida Ås", "superintendent");
    static final KeptPerson BO = person(2, "Bo", "changer");
    static final KeptCode OPEN =
            new KeptCode("ab12", Optional.of("Kim"), "reader", THEN, THEN.plusSeconds(60), Optional.empty());
    static final KeptCode USED = new KeptCode(
            "cd34", Optional.empty(), "superintendent", THEN, THEN.plusSeconds(60), Optional.of(THEN.plusSeconds(5)));
    static final KeptPhone OWN = new KeptPhone(
            new UUID(8, 1), Optional.of(BO.id()), "sum one", "", THEN, THEN.plusSeconds(3), THEN.plusSeconds(90));
    static final KeptPhone SHARED =
            new KeptPhone(new UUID(8, 2), Optional.empty(), "sum two", "sum three", THEN, THEN, THEN.plusSeconds(90));
    static final KeptPin PIN = new KeptPin(BO.id(), "invented hash 3", THEN);
    static final AuditLine ROLE_LINE = new AuditLine(
            THEN,
            new Who(Optional.of(IDA.id()), IDA.name()),
            AuditKind.ROLE_CHANGED,
            new About("", new Name("Bo"), Optional.of(BO.id())),
            Optional.of(new Translated("people.role.reader")),
            Optional.of(new Translated("people.role.changer")));
    static final AuditLine PLAN_LINE = new AuditLine(
            THEN.plusSeconds(9),
            new Who(Optional.empty(), "made user"),
            AuditKind.PLAN_PUBLISHED,
            new About("made", new Day(LocalDate.of(2026, 6, 20))),
            Optional.empty(),
            Optional.empty());

    private PeopleRowsMade() {}

    private static KeptPerson person(int number, String name, String role) {
        return new KeptPerson(new UUID(7, number), name, role, true, "invented hash " + number, THEN, THEN);
    }

    static void fill(Stores stores) {
        stores.people().add(IDA);
        stores.people().add(BO);
        stores.people().add(OPEN);
        stores.people().add(USED);
        stores.phones().add(OWN);
        stores.phones().add(SHARED);
        stores.phones().set(PIN);
        stores.phones().wrong(SHARED.id(), BO.id(), THEN);
        stores.audit().add(ROLE_LINE);
        stores.audit().add(PLAN_LINE);
    }
}
