package org.cupwright.app.desk.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.app.desk.entry.EntryDesk.NOW;
import static org.cupwright.app.desk.entry.EntryDesk.TODAY;
import static org.cupwright.app.desk.entry.EntryDesk.YESTERDAY;
import static org.cupwright.app.desk.entry.EntryDesk.problem;
import static org.cupwright.app.desk.entry.EntryDesk.refused;
import static org.cupwright.app.desk.entry.EntryDesk.says;
import static org.cupwright.app.desk.entry.MadeEntries.CUT;
import static org.cupwright.app.desk.entry.MadeEntries.NOTE;
import static org.cupwright.app.desk.entry.MadeEntries.entry;
import static org.cupwright.app.desk.entry.MadeEntries.holes;
import static org.cupwright.app.desk.entry.MadeEntries.sure;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.session.Role;
import org.cupwright.cupchange.Payload;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When an entry is said to have happened, on the invented morning of {@link EntryDesk}. */
class RecordMomentTest {
    @TempDir
    private Path path;

    private EntryDesk desk;
    private RecordFact record;

    @BeforeEach
    void open() {
        desk = new EntryDesk(path);
        record = new RecordFact(desk.session);
    }

    private static Entry on(LocalDate day, Payload payload, String... holes) {
        return new Entry(List.of(holes), false, Optional.of(day), says(payload), Optional.empty(), false);
    }

    @Test
    void anEntryOfAnotherDayIsOfItsMorningAndAfterWhatIsEnteredThen() {
        // five in the morning, ten hours ahead
        Instant morning = Instant.parse("2026-06-19T19:00:00Z");
        assertThat(happened(on(YESTERDAY, NOTE))).isEqualTo(morning);
        assertThat(happened(on(YESTERDAY, NOTE))).isEqualTo(morning.plusSeconds(1));
        assertThat(happened(on(YESTERDAY, CUT, "1"))).isEqualTo(morning.plusSeconds(2));
        assertThat(happened(on(TODAY, NOTE))).isEqualTo(NOW);
    }

    @Test
    void theMorningLastsAnHour() {
        desk.known(1, "2026-06-19T20:00:01Z", "", NOTE);
        assertThat(happened(on(YESTERDAY, NOTE))).isEqualTo(Instant.parse("2026-06-19T19:00:00Z"));
        desk.known(2, "2026-06-19T20:00:00Z", "", NOTE);
        assertThat(happened(on(YESTERDAY, NOTE))).isEqualTo(Instant.parse("2026-06-19T20:00:01Z"));
    }

    private Instant happened(Entry entry) {
        return record.record(entry).kept().get(0).happenedAt();
    }

    @Test
    void whoSaysWhenIsBelieved() {
        Instant said = Instant.parse("2026-06-20T21:15:00Z");
        assertThat(happened(entry(occasion -> new Says.Said(NOTE, Optional.of(said), List.of()))))
                .isEqualTo(said);
    }

    @Test
    void entriesOfTimeToComeAreAskedAboutWithTheNewest() {
        desk.known(1, "2026-06-24T00:00:00Z", "", NOTE);
        desk.known(2, "2026-06-23T00:00:00Z", "", NOTE);
        Problem problem = problem(() -> record.record(entry(says(NOTE))));
        // the 24th at ten in the morning there
        assertThat(problem.what())
                .isEqualTo(Message.of(
                        "problem.log.clockBehind",
                        new Day(LocalDate.of(2026, 6, 24)),
                        new Name("Ole"),
                        new Day(TODAY)));
        assertThat(problem.where()).containsExactly(Message.of("where.place", new Name("noteToNext")));
        assertThat(holes(record.record(sure(NOTE)))).containsExactly("");
    }

    @Test
    void clocksMayDifferByTenMinutesAndWhatIsForetoldIsNoClock() {
        desk.known(1, NOW.plus(Duration.ofMinutes(10)).toString(), "", NOTE);
        desk.known(2, "2026-06-24T00:00:00Z", "2026-06-20T20:00:00Z", "", NOTE);
        assertThat(holes(record.record(entry(says(NOTE))))).containsExactly("");
        desk.known(3, NOW.plus(Duration.ofMinutes(10)).plusMillis(1).toString(), "", NOTE);
        assertThat(refused(() -> record.record(entry(says(NOTE))))).isEqualTo("problem.log.clockBehind");
    }

    @Test
    void theInventedCoursesDaysHaveNothingToDoWithTheClock(@TempDir Path other) {
        EntryDesk demo = new EntryDesk(other, DemoCourse.ID, Role.CHANGER);
        demo.known(1, "2026-06-24T00:00:00Z", "", NOTE);
        new RecordFact(demo.session).record(entry(says(NOTE)));
        assertThat(demo.kept()).hasSize(2);
    }
}
