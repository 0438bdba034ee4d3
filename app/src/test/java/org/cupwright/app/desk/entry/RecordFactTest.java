package org.cupwright.app.desk.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.app.desk.entry.EntryDesk.NOW;
import static org.cupwright.app.desk.entry.EntryDesk.SPOT;
import static org.cupwright.app.desk.entry.EntryDesk.TODAY;
import static org.cupwright.app.desk.entry.EntryDesk.problem;
import static org.cupwright.app.desk.entry.EntryDesk.refused;
import static org.cupwright.app.desk.entry.EntryDesk.says;
import static org.cupwright.app.desk.entry.MadeEntries.AS_PLANNED;
import static org.cupwright.app.desk.entry.MadeEntries.CUT;
import static org.cupwright.app.desk.entry.MadeEntries.LEFT;
import static org.cupwright.app.desk.entry.MadeEntries.NOTE;
import static org.cupwright.app.desk.entry.MadeEntries.asPlanned;
import static org.cupwright.app.desk.entry.MadeEntries.entry;
import static org.cupwright.app.desk.entry.MadeEntries.holes;
import static org.cupwright.app.desk.entry.MadeEntries.sure;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.Photo;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.CrewNote.StopSet;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of an entry, on the invented morning of {@link EntryDesk}. */
class RecordFactTest {
    @TempDir
    private Path path;

    private EntryDesk desk;
    private RecordFact record;

    @BeforeEach
    void open() {
        desk = new EntryDesk(path);
        record = new RecordFact(desk.session);
    }

    @Test
    void anEntryOfTheWholeCourseIsOneFactOfNow() {
        RecordFact.Answer answer = record.record(entry(says(NOTE)));
        Fact expected = new Fact(
                new UUID(7, 1),
                Fact.CURRENT_VERSION,
                NOW,
                NOW,
                Optional.empty(),
                "Ida",
                "made",
                Optional.empty(),
                NOTE);
        assertThat(answer.kept()).containsExactly(expected);
        assertThat(desk.kept()).containsExactly(expected);
        assertThat(answer.remarks()).isEmpty();
        assertThat(answer.course().id()).isEqualTo("made");
        assertThat(answer.policy()).isNotNull();
    }

    @Test
    void anEntryOfSeveralHolesIsAFactForEachAndSaysARemarkOnce() {
        Message remark = Message.of("an.invented.remark");
        Says remarking = occasion -> new Says.Said(CUT, Optional.empty(), List.of(remark));
        RecordFact.Answer answer = record.record(entry(remarking, "3", "1"));
        assertThat(holes(answer)).containsExactly("3", "1");
        assertThat(answer.remarks()).containsExactly(remark);
        assertThat(holes(record.record(entry(says(NOTE), "all")))).containsExactly("1", "2", "3");
        assertThat(desk.kept()).hasSize(5);
    }

    @Test
    void lookingKeepsNothing() {
        assertThat(holes(record.look(entry(says(CUT), "2")))).containsExactly("2");
        assertThat(desk.kept()).isEmpty();
    }

    @Test
    void allAsPlannedAreThosePlannedOfWhichNobodySaidAnythingYet() {
        assertThat(refused(() -> record.record(asPlanned("1")))).isEqualTo("problem.noPlan");
        desk.planned("1", "3");
        RecordFact.Answer first = record.record(asPlanned("1"));
        assertThat(first.kept().get(0).payload()).isEqualTo(CupChanged.asPlanned(SPOT));
        assertThat(holes(record.record(asPlanned("all")))).containsExactly("3");
        Problem none = problem(() -> record.record(asPlanned("all")));
        assertThat(none.what()).isEqualTo(Message.of("problem.log.allEntered", new Day(TODAY)));
        assertThat(desk.kept()).hasSize(2);
    }

    @Test
    void thePlanIsKnownToAnEntryThatIsNotAsPlannedToo() {
        desk.planned("1");
        record.record(entry(AS_PLANNED, "1"));
        assertThat(desk.kept()).extracting(Fact::payload).containsExactly(CupChanged.asPlanned(SPOT));
    }

    @Test
    void whatNeedsAHoleIsRefusedWithoutOne() {
        Problem problem = problem(() -> record.record(entry(says(CUT))));
        assertThat(problem.what()).isEqualTo(Message.of("problem.log.needsHole", new Name("cup-changed")));
        assertThat(refused(() -> record.record(entry(says(CUT), "19")))).isEqualTo("problem.unknownHole");
        assertThat(desk.kept()).isEmpty();
    }

    @Test
    void aHoleIsCutTwiceADayOnlyIfThePersonIsSure() {
        desk.known(1, "2026-06-20T20:00:00Z", "1", CUT);
        Problem problem = problem(() -> record.record(entry(says(CUT), "1")));
        assertThat(problem.what()).isEqualTo(Message.of("problem.log.again", new Name("1"), new Name("Ole")));
        assertThat(holes(record.record(entry(says(CUT), "2")))).containsExactly("2");
        assertThat(holes(record.record(sure(CUT, "1")))).containsExactly("1");
        assertThat(holes(record.record(entry(says(NOTE), "1")))).containsExactly("1");
    }

    @Test
    void aHoleThatWasLeftAfterAllCorrectsItsCut() {
        Fact cut = desk.known(1, "2026-06-20T20:00:00Z", "1", CUT);
        Problem problem = problem(() -> record.record(entry(says(LEFT), "1")));
        assertThat(problem.what()).isEqualTo(Message.of("problem.log.leftInstead", new Name("1"), new Name("Ole")));
        RecordFact.Answer answer = record.record(sure(LEFT, "1"));
        assertThat(answer.remarks()).containsExactly(Message.of("log.leftInstead", new Name("1"), new Name("Ole")));
        assertThat(answer.kept())
                .extracting(Fact::id, Fact::happenedAt, Fact::payload)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(cut.id(), cut.happenedAt(), LEFT));
        assertThat(desk.kept())
                .filteredOn(fact -> !fact.equals(cut))
                .containsExactly(new Fact(
                        new UUID(7, 1),
                        Fact.CURRENT_VERSION,
                        cut.happenedAt(),
                        NOW,
                        Optional.empty(),
                        "Ida",
                        "made",
                        Optional.of("1"),
                        Correction.to(cut.id(), LEFT)));
    }

    @Test
    void aHoleLeftTwiceIsAsked() {
        desk.known(1, "2026-06-20T20:00:00Z", "1", LEFT);
        assertThat(refused(() -> record.record(entry(says(LEFT), "1")))).isEqualTo("problem.log.again");
        record.record(sure(LEFT, "1"));
        assertThat(desk.kept()).extracting(Fact::payload).containsExactly(LEFT, LEFT);
    }

    @Test
    void whatLooksWrongIsAskedAboutUnlessThePersonIsSure() {
        Payload off = CupChanged.asPlanned(new MapPoint(50, 6));
        Problem problem = problem(() -> record.record(entry(says(off), "1")));
        assertThat(problem.what().key()).isEqualTo("fact.offTheGreen");
        assertThat(problem.where()).containsExactly(Message.of("where.place", new Name("1, cup-changed")));
        Problem ofCourse = problem(() -> record.record(entry(says(new StopSet("old one", 5)))));
        assertThat(ofCourse.where()).containsExactly(Message.of("where.place", new Name("stop-set")));
        assertThat(desk.kept()).isEmpty();
        record.record(sure(off, "1"));
        assertThat(desk.kept()).hasSize(1);
    }

    @Test
    void aStopThatIsSetOtherwiseIsRemarkedAtOnce() {
        desk.known(1, "2026-06-18T20:00:00Z", "", new StopSet("old one", 125));
        assertThat(record.record(entry(says(new StopSet("new one", 127)))).remarks())
                .isEmpty();
        assertThat(record.record(entry(says(new StopSet("old one", 127)))).remarks())
                .extracting(Message::key)
                .containsExactly("signal.stopDiffers");
    }

    @Test
    void aPhotoIsKeptWithIt() {
        Photo photo = Photo.kept("no photo, but bytes".getBytes(StandardCharsets.UTF_8));
        record.record(new Entry(List.of(), false, Optional.empty(), says(NOTE), Optional.of(photo), false));
        assertThat(desk.folder.<Boolean>read(
                        stores -> stores.photos().find(photo.hash()).isPresent()))
                .isTrue();
    }

    @Test
    void whoMayOnlyReadRecordsNothing(@TempDir Path other) {
        EntryDesk reading = new EntryDesk(other, "made", Role.READER);
        assertThat(refused(() -> new RecordFact(reading.session).record(entry(says(NOTE)))))
                .isEqualTo("problem.notAllowed");
    }
}
