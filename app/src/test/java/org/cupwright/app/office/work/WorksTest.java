package org.cupwright.app.office.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.office.MadeOffice;
import org.cupwright.app.office.work.Piece.Way;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorksTest {
    private static final Way WAY = new Way("/there?date=2026-06-20", "/here");

    @TempDir
    private Path data;

    private final Later clock = new Later();
    private final CountDownLatch goOn = new CountDownLatch(1);
    private SqliteFolder folder;
    private Works works;

    /** A clock that is put forward by hand. */
    private static final class Later extends Clock {
        private volatile Instant now = Instant.parse("2026-06-20T05:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    @BeforeEach
    void anOffice() {
        folder = new SqliteFolder(data, clock);
        works = new Works(MadeOffice.house(data, clock));
    }

    @AfterEach
    void closed() {
        goOn.countDown();
        works.close();
        folder.close();
    }

    private Visit visit(String name, Role role) {
        return MadeOffice.visit(folder, clock, name, role, MadeOffice.TODAY);
    }

    private Piece begin(LongWork work) {
        return works.begin(visit("Ida", Role.OFFICIAL), "Invented work", WAY, work);
    }

    private static Lines said(String words) {
        return new Lines(MadeOffice.TEXTS).line(words);
    }

    /** Waits until it has ended. */
    private static Piece ended(Piece piece) throws InterruptedException {
        for (int i = 0; piece.outcome().isEmpty(); i++) {
            assertThat(i).as("it does not end").isLessThan(6000);
            Thread.sleep(5);
        }
        return piece;
    }

    private Lines waits(Session session, Progress progress) {
        progress.begin("greens", 4);
        progress.oneMore();
        await(goOn);
        progress.oneMore();
        return said("done");
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(30, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }

    private WorkView.Page page(Piece piece) {
        return new WorkView(MadeOffice.TEXTS).of(piece, works.before(piece));
    }

    private static void awaitStep(Piece piece) throws InterruptedException {
        for (int i = 0; piece.step().isEmpty() || piece.step().get().done() == 0; i++) {
            assertThat(i).as("it does not begin").isLessThan(6000);
            Thread.sleep(5);
        }
    }

    @Test
    void tellsHowFarItHasComeAndThenWhatItCameTo() throws InterruptedException {
        Piece piece = begin(this::waits);
        awaitStep(piece);
        WorkView.Page page = page(piece);
        assertThat(page.says()).isEqualTo("1 of 4 greens judged …");
        assertThat(page.done()).isEqualTo(1);
        assertThat(page.all()).isEqualTo(4);
        assertThat(page.goesOn()).isTrue();
        goOn.countDown();
        assertThat(ended(piece).answer().orElseThrow().all().get(0).said()).containsExactly("done");
        assertThat(piece.next()).isEqualTo("/there?date=2026-06-20&work=" + piece.id());
        assertThat(page(piece).goesOn()).isFalse();
        assertThat(page(piece).told()).isEmpty();
    }

    @Test
    void tooLittleMemoryIsNoDefect() throws InterruptedException {
        Piece piece = ended(begin((session, progress) -> {
            throw new OutOfMemoryError("invented");
        }));
        assertThat(piece.outcome().orElseThrow().reference()).isEmpty();
        assertThat(page(piece).told().orElseThrow().what()).contains("too little memory");
    }

    @Test
    void worksInAFolderOfItsOwnForWhoeverBeganIt() throws InterruptedException {
        List<Session> sessions = new ArrayList<>();
        ended(begin((session, progress) -> {
            sessions.add(session);
            session.read(stores -> stores.courses().ids());
            return said("");
        }));
        assertThat(sessions.get(0).folder()).isNotSameAs(folder);
        assertThat(sessions.get(0).person().name()).isEqualTo("Ida");
        assertThat(sessions.get(0).person().role()).isEqualTo(Role.OFFICIAL);
    }

    @Test
    void oneIsDoneAtATimeAndTheOthersWait() throws InterruptedException {
        List<String> order = new ArrayList<>();
        Piece first = begin((session, progress) -> {
            await(goOn);
            order.add("first");
            return said("");
        });
        Piece second = begin((session, progress) -> said("" + order.add("second")));
        Piece third = begin((session, progress) -> said("" + order.add("third")));
        assertThat(page(second).says()).isEqualTo("One piece of work is done first …");
        assertThat(page(third).says()).isEqualTo("2 pieces of work are done first …");
        goOn.countDown();
        ended(third);
        assertThat(order).containsExactly("first", "second", "third");
        assertThat(first.answer()).isPresent();
    }

    @Test
    void tooManyAreNotBegun() {
        for (int i = 0; i <= Hands.Way.ONE_BY_ONE.most(); i++) {
            begin(this::waits);
        }
        assertThatThrownBy(() -> begin(this::waits))
                .isInstanceOf(Problem.class)
                .hasMessageContaining("problem.tooMuchWork");
    }

    @Test
    void stoppedItSaysThatNothingWasKept() throws InterruptedException {
        Piece piece = begin(this::waits);
        awaitStep(piece);
        piece.stop();
        assertThat(page(piece).says()).isEqualTo("It is being stopped …");
        goOn.countDown();
        assertThat(page(ended(piece)).told().orElseThrow().what())
                .isEqualTo("Stopped before it was done; nothing was changed by it.");
        assertThat(piece.answer()).isEmpty();
    }

    @Test
    void whatWaitsIsNotBegunOnceItIsStopped() throws InterruptedException {
        begin(this::waits);
        List<String> begun = new ArrayList<>();
        Piece second = begin((session, progress) -> said("" + begun.add("second")));
        second.stop();
        goOn.countDown();
        assertThat(ended(second)
                        .outcome()
                        .orElseThrow()
                        .problem()
                        .orElseThrow()
                        .what()
                        .key())
                .isEqualTo("problem.stopped");
        assertThat(begun).isEmpty();
    }

    @Test
    void closingStopsWhatGoesOn() throws InterruptedException {
        Piece piece = begin((session, progress) -> {
            while (true) {
                progress.checkStopped();
                Thread.onSpinWait();
            }
        });
        works.close();
        assertThat(ended(piece).outcome().orElseThrow().problem()).isPresent();
    }

    @Test
    void aFailureOfOursIsToldByItsNumberInTheLog() throws InterruptedException {
        Piece piece = begin((session, progress) -> {
            throw new IllegalStateException("invented");
        });
        String reference = piece.id().toString().substring(0, 8);
        assertThat(page(ended(piece)).told().orElseThrow().tryThis()).contains(reference);
    }

    @Test
    void onlyWhoeverBeganItSeesItAndWhoAnswersForTheGreens() throws InterruptedException {
        UUID id = ended(begin((session, progress) -> said(""))).id();
        assertThat(works.find(id, MadeOffice.person("Ida", Role.OFFICIAL)).id()).isEqualTo(id);
        assertThat(works.find(id, MadeOffice.person("Sam", Role.SUPERINTENDENT)).id())
                .isEqualTo(id);
        assertThatThrownBy(() -> works.find(id, MadeOffice.person("Ash", Role.OFFICIAL)))
                .isInstanceOf(Problem.class)
                .hasMessageContaining("problem.notAllowed");
    }

    @Test
    void isKeptForAnHour() throws InterruptedException {
        UUID id = ended(begin((session, progress) -> said(""))).id();
        clock.now = clock.now.plus(Duration.ofMinutes(59));
        assertThat(works.find(id, MadeOffice.person("Ida", Role.OFFICIAL)).id()).isEqualTo(id);
        clock.now = clock.now.plus(Duration.ofMinutes(2));
        assertThatThrownBy(() -> works.find(id, MadeOffice.person("Ida", Role.OFFICIAL)))
                .isInstanceOf(Problem.class)
                .hasMessageContaining("problem.noSuchWork");
    }

    private String soon(Works some, LongWork work) {
        return some.soon(visit("Ida", Role.OFFICIAL), "Invented work", WAY, work);
    }

    @Test
    void whatTakesAMomentIsDoneInTheRequest() {
        assertThat(soon(works, (session, progress) -> said("done"))).isEqualTo(WAY.done());
        Problem wrong = Problem.of("noSuchWork", "date", "invented");
        assertThatThrownBy(() -> soon(works, (session, progress) -> {
                    throw wrong;
                }))
                .isSameAs(wrong);
    }

    /** Long work that is done at the same time does not keep it waiting. */
    @Test
    void whatTakesLongerHasAPageOfItsOwn() throws InterruptedException {
        try (Works hasty = new Works(MadeOffice.house(data, clock), Duration.ofMillis(20))) {
            Visit ida = visit("Ida", Role.OFFICIAL);
            Piece longer = hasty.begin(ida, "Invented work", WAY, this::waits);
            String address = soon(hasty, this::waits);
            assertThat(address).startsWith("/work/");
            Piece piece = hasty.find(
                    UUID.fromString(address.substring("/work/".length())),
                    ida.session().person());
            awaitStep(piece);
            assertThat(hasty.before(piece)).isZero();
            goOn.countDown();
            assertThat(ended(piece).next()).isEqualTo(WAY.done() + "&work=" + piece.id());
            ended(longer);
        }
    }
}
