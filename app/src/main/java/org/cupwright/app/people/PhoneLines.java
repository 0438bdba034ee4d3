package org.cupwright.app.people;

import java.time.Clock;
import java.util.Optional;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.storage.AuditLine.About;
import org.cupwright.app.storage.AuditLine.Who;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.message.Message.Name;

/** Lines of the audit trail about phones. */
final class PhoneLines {
    static final Who NOBODY = new Who(Optional.empty(), "");

    private PhoneLines() {}

    /** What somebody did on a phone of the own, or with a PIN. */
    static AuditLine of(Clock clock, KeptPerson person, AuditKind what) {
        return line(clock, new Who(Optional.of(person.id()), person.name()), about(person), what);
    }

    static AuditLine ofShared(Clock clock, Who by, AuditKind what) {
        return line(clock, by, new About("", new Name("")), what);
    }

    private static AuditLine line(Clock clock, Who by, About about, AuditKind what) {
        return new AuditLine(clock.instant(), by, what, about, Optional.empty(), Optional.empty());
    }

    static About about(KeptPerson person) {
        return new About("", new Name(person.name()), Optional.of(person.id()));
    }
}
