package org.cupwright.app.desk.entry;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.storage.DayRain;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.texts.Door;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.green.RestsOn;
import org.cupwright.holelocation.Difficulty;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Verdict;
import org.cupwright.message.Problem;
import org.cupwright.rotation.Scheme;
import org.cupwright.rotation.Totals;
import org.cupwright.rotation.counting.Parts;
import org.cupwright.testing.Shapes;
import org.cupwright.units.UnitSystem;

/** An invented course of three greens, ten hours ahead of UTC, where it is half past nine on the 21st of June. */
final class EntryDesk {
    static final Instant NOW = Instant.parse("2026-06-20T23:30:00Z");
    static final LocalDate TODAY = LocalDate.of(2026, 6, 21);
    static final LocalDate YESTERDAY = TODAY.minusDays(1);
    static final MapPoint SPOT = new MapPoint(12, 14);

    private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);
    private static final ZoneId ZONE = ZoneId.of("Etc/GMT-10");

    final SqliteFolder folder;
    final Session session;
    private final String course;

    EntryDesk(Path path) {
        this(path, "made", Role.CHANGER);
    }

    EntryDesk(Path path, String course, Role role) {
        this.course = course;
        AtomicInteger ids = new AtomicInteger();
        folder = new SqliteFolder(path, CLOCK);
        session = new Session(
                folder,
                new Person("Ida", role),
                new CourseChoice(Optional.empty()),
                CLOCK,
                () -> new UUID(7, ids.incrementAndGet()),
                new Speech(Door.COMMANDS, "en", UnitSystem.METRIC, 0.914));
        List<Hole> holes = Stream.of("1", "2", "3")
                .map(hole -> Hole.of(hole, Shapes.rectangle(0, 0, 20, 30)))
                .toList();
        Writes.to(
                folder,
                stores -> stores.courses().add(new Course(course, "Invented", new CourseFrame(32633, ZONE), holes)));
    }

    /** Keeps a fact that somebody else recorded when it happened. */
    Fact known(int id, String when, String hole, Payload payload) {
        return known(id, when, when, hole, payload);
    }

    Fact known(int id, String happened, String recorded, String hole, Payload payload) {
        Fact fact = new Fact(
                new UUID(1, id),
                Fact.CURRENT_VERSION,
                Instant.parse(happened),
                Instant.parse(recorded),
                Optional.empty(),
                "Ole",
                course,
                hole.isEmpty() ? Optional.empty() : Optional.of(hole),
                payload);
        Writes.to(folder, stores -> stores.facts().add(fact));
        return fact;
    }

    /** Keeps a plan of today that has some holes at {@link #SPOT}. */
    void planned(String... holes) {
        Judgement judgement = new Judgement(
                SPOT, Verdict.PASS, RestsOn.OUTLINE, List.of(), Set.of(), Difficulty.unknown(), Optional.empty());
        JudgedPosition position = new JudgedPosition(judgement, Optional.empty(), OptionalDouble.empty());
        List<StoredHole> planned = Stream.of(holes)
                .map(hole -> new StoredHole(
                        hole,
                        position,
                        false,
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        Optional.empty()))
                .toList();
        Parts none = new Parts(0, 0, 0);
        StoredPlan plan = new StoredPlan(
                course,
                TODAY,
                StoredPlan.State.DRAFT,
                new StoredPlan.Basis(1, DaySpeed.of(10, DaySpeed.From.SAID), DayRain.NONE, 0, "made", Scheme.FREE),
                planned,
                new Totals(planned.size(), none, none, none),
                Map.of(),
                Map.of(),
                List.of(),
                List.of());
        Writes.to(folder, stores -> stores.plans().add(plan));
    }

    /** All that is kept, as it was recorded but for when the store received it. */
    List<Fact> kept() {
        return folder.read(stores -> stores.facts().all(course)).stream()
                .map(fact -> new Fact(
                        fact.id(),
                        fact.version(),
                        fact.happenedAt(),
                        fact.recordedAtDevice(),
                        Optional.empty(),
                        fact.person(),
                        fact.course(),
                        fact.hole(),
                        fact.payload()))
                .toList();
    }

    static Says says(Payload payload) {
        return occasion -> new Says.Said(payload, Optional.empty(), List.of());
    }

    /** The problem that keeps something from being done. */
    static Problem problem(Supplier<?> work) {
        return catchThrowableOfType(Problem.class, work::get);
    }

    /** Its key. */
    static String refused(Supplier<?> work) {
        return problem(work).what().key();
    }
}
