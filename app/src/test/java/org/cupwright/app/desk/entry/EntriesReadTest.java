package org.cupwright.app.desk.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.app.desk.entry.EntryDesk.NOW;
import static org.cupwright.app.desk.entry.EntryDesk.TODAY;
import static org.cupwright.app.desk.entry.EntryDesk.YESTERDAY;
import static org.cupwright.app.desk.entry.EntryDesk.refused;
import static org.cupwright.app.desk.entry.EntryDesk.says;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.desk.log.MadePhoto;
import org.cupwright.app.desk.log.PhotoReading;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.storage.Writes;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.CrewNote.NoteToNext;
import org.cupwright.cupchange.CrewNote.OddSeen;
import org.cupwright.cupchange.CrewNote.Severity;
import org.cupwright.cupchange.CrewNote.SomethingOdd;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.message.Message;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Entries listed, corrected, withdrawn and seen to, on the invented morning of {@link EntryDesk}. */
class EntriesReadTest {
    private static final Payload NOTE = new NoteToNext("an invented note");
    private static final Payload BETTER = new NoteToNext("a better note");
    private static final Payload CUT = CupChanged.asPlanned(new MapPoint(5, 6));
    private static final Payload OFF = CupChanged.asPlanned(new MapPoint(50, 6));
    private static final Optional<String> ANY = Optional.empty();

    @TempDir
    private Path path;

    private EntryDesk desk;
    private ListFacts list;
    private CorrectFact correct;
    private SeeToOdd odd;

    @BeforeEach
    void open() {
        desk = new EntryDesk(path);
        list = new ListFacts(desk.session);
        correct = new CorrectFact(desk.session);
        odd = new SeeToOdd(desk.session);
    }

    private static Payload something(Optional<String> photo) {
        return new SomethingOdd(Severity.SOON, "an invented ring", photo);
    }

    private CorrectFact.Change change(Fact fact, Optional<String> hole, Optional<Says> says, boolean sure) {
        return new CorrectFact.Change(fact.id().toString(), hole, says, sure);
    }

    @Test
    void aWeekIsListedWhereNobodySaysMore() {
        // midnight there is 14:00 UTC of the day before
        desk.known(1, "2026-06-14T13:59:59Z", "", NOTE);
        Fact first = desk.known(2, "2026-06-14T14:00:00Z", "", NOTE);
        Fact last = desk.known(3, "2026-06-21T13:59:59Z", "", NOTE);
        desk.known(4, "2026-06-21T14:00:00Z", "", NOTE);
        ListFacts.Answer answer = list.of(Optional.empty(), Optional.empty(), ANY, ANY);
        assertThat(ids(answer)).containsExactly(first.id(), last.id());
        assertThat(answer.from()).isEqualTo(LocalDate.of(2026, 6, 15));
        assertThat(answer.to()).isEqualTo(TODAY);
        assertThat(answer.course().id()).isEqualTo("made");
        assertThat(answer.corrected()).isEmpty();
    }

    private static List<UUID> ids(ListFacts.Answer answer) {
        return answer.facts().stream().map(Fact::id).toList();
    }

    @Test
    void daysHolesAndKindsAreWhatIsListed() {
        Fact one = desk.known(1, "2026-06-19T20:00:00Z", "1", CUT);
        Fact two = desk.known(2, "2026-06-19T21:00:00Z", "2", CUT);
        Fact note = desk.known(3, "2026-06-20T20:00:00Z", "1", NOTE);
        Optional<LocalDate> yesterday = Optional.of(YESTERDAY);
        assertThat(ids(list.of(yesterday, yesterday, ANY, ANY))).containsExactly(one.id(), two.id());
        assertThat(ids(list.of(yesterday, Optional.empty(), Optional.of("1"), ANY)))
                .containsExactly(one.id(), note.id());
        assertThat(ids(list.of(yesterday, Optional.empty(), ANY, Optional.of("noteToNext"))))
                .containsExactly(note.id());
        assertThat(refused(() -> list.of(yesterday, yesterday, Optional.of("19"), ANY)))
                .isEqualTo("problem.unknownHole");
        assertThat(refused(() -> list.of(Optional.of(TODAY), yesterday, ANY, ANY)))
                .isEqualTo("problem.log.backwards");
    }

    @Test
    void whatHappenedAtOnceIsListedAsItWasWrittenDownThenInRoundOrder() {
        String once = "2026-06-20T20:00:00Z";
        Fact later = desk.known(1, once, "2026-06-20T20:05:00Z", "1", CUT);
        Fact three = desk.known(2, once, "3", CUT);
        Fact two = desk.known(3, once, "2", CUT);
        Fact whole = desk.known(4, once, "", NOTE);
        Fact again = desk.known(5, once, "2", NOTE);
        assertThat(ids(list.of(Optional.empty(), Optional.empty(), ANY, ANY)))
                .containsExactly(whole.id(), two.id(), again.id(), three.id(), later.id());
    }

    @Test
    void correctedEntriesAreListedAsTheyCount() {
        Fact cut = desk.known(9, "2026-06-20T20:00:00Z", "1", CUT);
        Fact note = desk.known(8, "2026-06-20T20:00:00Z", "", NOTE);
        correct.correct(change(cut, Optional.of("2"), Optional.empty(), false));
        correct.correct(change(note, ANY, Optional.of(says(BETTER)), false));
        ListFacts.Answer answer = list.of(Optional.empty(), Optional.empty(), ANY, ANY);
        assertThat(answer.facts()).extracting(Fact::payload).containsExactly(BETTER, CUT);
        assertThat(answer.facts()).extracting(Fact::hole).containsExactly(Optional.empty(), Optional.of("2"));
        assertThat(answer.corrected()).containsExactly(note.id(), cut.id());
    }

    @Test
    void aCorrectionIsKeptBesideItsEntry() {
        Fact note = desk.known(1, "2026-06-19T13:00:00Z", "", NOTE);
        List<Says.Occasion> asked = new ArrayList<>();
        Message remark = Message.of("an.invented.remark");
        Says says = occasion -> {
            asked.add(occasion);
            return new Says.Said(BETTER, Optional.empty(), List.of(remark));
        };
        CorrectFact.Answer answer = correct.correct(change(note, ANY, Optional.of(says), false));
        Fact correction = correction(1, note, Correction.to(note.id(), BETTER), NOW);
        assertThat(desk.kept()).containsExactlyInAnyOrder(note, correction);
        assertThat(answer.correction()).isEqualTo(correction.id());
        assertThat(answer.was().payload()).isEqualTo(NOTE);
        assertThat(answer.now()).map(Fact::payload).contains(BETTER);
        assertThat(answer.remarks()).containsExactly(remark);
        assertThat(answer.course().id()).isEqualTo("made");
        assertThat(asked)
                .extracting(Says.Occasion::day, Says.Occasion::was, Says.Occasion::hole)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(
                        LocalDate.of(2026, 6, 19), Optional.of(NOTE), Optional.<Hole>empty()));
    }

    private static Fact correction(int id, Fact of, Correction says, Instant recorded) {
        return new Fact(
                new UUID(7, id),
                Fact.CURRENT_VERSION,
                of.happenedAt(),
                recorded,
                Optional.empty(),
                "Ida",
                "made",
                Optional.empty(),
                says);
    }

    @Test
    void aCorrectionIsRecordedAfterTheOneBeforeItWhateverTheClockSays() {
        Fact note = desk.known(1, "2026-06-20T20:00:00Z", "", NOTE);
        Payload other = new NoteToNext("another");
        desk.known(2, "2026-06-20T20:00:00Z", "2026-06-21T06:00:00Z", "", Correction.to(note.id(), other));
        CorrectFact.Answer answer = correct.correct(change(note, ANY, Optional.of(says(BETTER)), false));
        assertThat(answer.was().payload()).isEqualTo(other);
        assertThat(desk.kept())
                .contains(correction(
                        1, note, Correction.to(note.id(), BETTER), Instant.parse("2026-06-21T06:00:00.001Z")));
    }

    @Test
    void aCorrectionThatLooksWrongIsAskedAboutAsOfTheHoleOfItsEntry() {
        Fact cut = desk.known(1, "2026-06-20T20:00:00Z", "1", CUT);
        Optional<Says> off = Optional.of(says(OFF));
        assertThat(refused(() -> correct.correct(change(cut, ANY, off, false)))).isEqualTo("fact.offTheGreen");
        assertThat(correct.correct(change(cut, ANY, off, true)).now().flatMap(Fact::hole))
                .contains("1");
        assertThat(refused(() -> correct.correct(change(cut, Optional.of("19"), off, true))))
                .isEqualTo("problem.unknownHole");
        assertThat(refused(() -> correct.correct(change(cut, ANY, Optional.empty(), true))))
                .isEqualTo("problem.log.nothingToCorrect");
    }

    @Test
    void anEntryThatIsWithdrawnIsGoneAndCannotBeNamedAgain() {
        Fact note = desk.known(1, "2026-06-20T20:00:00Z", "", NOTE);
        CorrectFact.Answer answer = correct.withdraw(note.id().toString());
        assertThat(answer.now()).isEmpty();
        assertThat(answer.remarks()).isEmpty();
        assertThat(desk.kept()).contains(correction(1, note, Correction.withdrawing(note.id()), NOW));
        assertThat(refused(() -> correct.withdraw(note.id().toString()))).isEqualTo("problem.log.withdrawn");
        assertThat(refused(() -> correct.withdraw("abc"))).isEqualTo("problem.log.unknownId");
    }

    @Test
    void somethingOddIsSeenNowOrJustAfterItHappened() {
        Fact ring = desk.known(1, "2026-06-20T20:00:00Z", "3", something(Optional.empty()));
        RecordFact.Answer answer = odd.seen(ring.id().toString());
        Fact seen = new Fact(
                new UUID(7, 1),
                Fact.CURRENT_VERSION,
                NOW,
                NOW,
                Optional.empty(),
                "Ida",
                "made",
                Optional.of("3"),
                new OddSeen(ring.id()));
        assertThat(answer.kept()).containsExactly(seen);
        assertThat(answer.remarks()).isEmpty();
        assertThat(answer.policy()).isNotNull();
        assertThat(desk.kept()).contains(seen);
        Fact toCome = desk.known(2, "2026-06-21T03:00:00Z", "", something(Optional.empty()));
        assertThat(odd.seen(toCome.id().toString()).kept())
                .extracting(Fact::happenedAt, Fact::recordedAtDevice)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(Instant.parse("2026-06-21T03:00:00.001Z"), NOW));
    }

    @Test
    void onlySomethingOddIsSeenTo() {
        Fact note = desk.known(1, "2026-06-20T20:00:00Z", "", NOTE);
        assertThat(refused(() -> odd.seen(note.id().toString()))).isEqualTo("problem.log.notOdd");
    }

    @Test
    void thePhotoOfSomethingOddIsFoundUnlessThereIsNoneOrItIsLost() throws IOException {
        Photo photo = Photo.kept(MadePhoto.png());
        Photo none = Photo.kept("no photo, but bytes".getBytes(StandardCharsets.UTF_8));
        Writes.to(desk.folder, stores -> {
            stores.photos().add(photo);
            stores.photos().add(none);
        });
        Fact with = desk.known(1, "2026-06-20T20:00:00Z", "", something(Optional.of(photo.hash())));
        Fact without = desk.known(2, "2026-06-20T20:00:00Z", "", something(Optional.empty()));
        Fact broken = desk.known(4, "2026-06-20T20:00:00Z", "", something(Optional.of(none.hash())));
        Fact lost = desk.known(3, "2026-06-20T20:00:00Z", "", something(Optional.of("0".repeat(64))));
        byte[] given = odd.photo(with.id().toString()).bytes();
        assertThat(MadePhoto.holds(given, MadePhoto.LATITUDE))
                .as("kept as it came, given out without where it was taken")
                .isFalse();
        assertThat(given).isEqualTo(PhotoReading.bare(photo).orElseThrow().bytes());
        assertThat(refused(() -> odd.photo(without.id().toString()))).isEqualTo("problem.log.noPhoto");
        assertThat(refused(() -> odd.photo(lost.id().toString()))).isEqualTo("problem.log.photoLost");
        assertThat(refused(() -> odd.photo(broken.id().toString()))).isEqualTo("problem.log.photoBroken");
    }
}
