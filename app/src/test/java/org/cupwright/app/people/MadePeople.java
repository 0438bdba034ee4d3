package org.cupwright.app.people;

import java.nio.file.Path;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.texts.Door;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;

/** An office with invented people, at a time that is set by hand. */
final class MadePeople implements AutoCloseable {
    static final String PASSWORD = "three invented words";
    static final String OTHER = "four other invented words";
    static final String ADDRESS = "192.0.2.7";
    static final Instant START = Instant.parse("2026-06-20T05:00:00Z");
    private static final int LEAST_COST = 4;

    final SetClock clock = new SetClock();
    final SqliteFolder folder;
    final SecureRandom random = seeded();
    final Passwords passwords = new Passwords(random, LEAST_COST);
    final SlowDown slowDown = new SlowDown(clock);
    private final AtomicLong ids = new AtomicLong(1);

    MadePeople(Path files) {
        folder = new SqliteFolder(files, clock);
    }

    /** Repeatable: a generator that is given its seed before it is asked has no other. */
    private static SecureRandom seeded() {
        try {
            SecureRandom random = SecureRandom.getInstance("SHA1PRNG");
            random.setSeed(20260620);
            return random;
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }

    TakeCode taking() {
        return new TakeCode(folder, clock, this::id, passwords);
    }

    private UUID id() {
        return new UUID(0xabcdL << 48, ids.getAndIncrement());
    }

    SignIn signIn() {
        return new SignIn(folder, clock, passwords, slowDown);
    }

    FirstSuperintendent first() {
        return new FirstSuperintendent(folder, clock, random);
    }

    /** The first superintendent, Ida. */
    Account ida() {
        return taking().take(first().code().orElseThrow().code(), "Ida", PASSWORD);
    }

    Session session(Person person) {
        return new Session(
                folder,
                person,
                new CourseChoice(Optional.empty()),
                clock,
                this::id,
                new Speech(Door.COMMANDS, "en", UnitSystem.METRIC, Paces.STANDARD_METRES));
    }

    List<AuditLine> audit() {
        return folder.read(stores -> stores.audit().between(Instant.EPOCH, START.plus(Duration.ofDays(999))));
    }

    List<AuditKind> done() {
        return audit().stream().map(AuditLine::what).toList();
    }

    static LocalDate day() {
        return LocalDate.ofInstant(START, ZoneOffset.UTC);
    }

    @Override
    public void close() {
        folder.close();
    }

    /** Stands still until it is put on. */
    static final class SetClock extends Clock {
        private volatile Instant now = START;

        void advance(Duration by) {
            now = now.plus(by);
        }

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException();
        }
    }
}
