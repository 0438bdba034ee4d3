package org.cupwright.app.office.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
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

/** What pages seek: by people with no patience at all, which is what a slow machine makes of everybody. */
class SearchesTest {
    private static final Way WAY = new Way("/there?date=2026-06-20", "/here");
    private static final String TITLE = "Invented search";

    @TempDir
    private Path data;

    private final CountDownLatch goOn = new CountDownLatch(1);
    private final AtomicInteger begun = new AtomicInteger();
    private SqliteFolder folder;
    private Works works;
    private Searches searches;

    @BeforeEach
    void anOffice() {
        folder = new SqliteFolder(data, MadeOffice.CLOCK);
        works = new Works(MadeOffice.house(data, MadeOffice.CLOCK), Duration.ZERO);
        searches = new Searches(works);
    }

    @AfterEach
    void closed() {
        goOn.countDown();
        works.close();
        folder.close();
    }

    private Sought<Integer> asks(String name) {
        Visit visit = MadeOffice.visit(folder, MadeOffice.CLOCK, name, Role.READER, MadeOffice.TODAY);
        return searches.sought(visit, TITLE, WAY, this::seek);
    }

    private int seek(Session session, Progress progress) {
        int number = begun.incrementAndGet();
        try {
            assertThat(goOn.await(30, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
        progress.checkStopped();
        return number;
    }

    private static void ended(Sought<Integer> sought) {
        assertThat(sought.goesOn().orElseThrow().await(Duration.ofSeconds(30))).isPresent();
    }

    @Test
    void whoAsksAgainHasWhatWasFoundMeanwhile() {
        Sought<Integer> first = asks("Ida");
        assertThat(first.found()).isEmpty();
        assertThat(asks("Ida").goesOn()).as("the same work").isEqualTo(first.goesOn());
        assertThat(asks("Noor").goesOn()).as("somebody else's").isNotEqualTo(first.goesOn());
        goOn.countDown();
        ended(first);
        Sought<Integer> found = asks("Ida");
        assertThat(found.found()).contains(1);
        assertThat(found.goesOn()).isEmpty();
        assertThat(asks("Ida").found()).as("it is handed out once").isEmpty();
    }

    @Test
    void whatWasStoppedIsBegunAnewForWhoAsksAgain() {
        Sought<Integer> first = asks("Ida");
        first.goesOn().orElseThrow().stop();
        Sought<Integer> again = asks("Ida");
        assertThat(again.goesOn()).isPresent().isNotEqualTo(first.goesOn());
        goOn.countDown();
        ended(again);
        assertThat(asks("Ida").found()).isPresent();
    }

    /** What was found of a course that is another by now answers nobody. */
    @Test
    void whatWasFoundOfSomethingOlderIsSoughtAnew() throws IOException {
        Sought<Integer> first = asks("Ida");
        goOn.countDown();
        ended(first);
        MadeOffice.course(data, 1);
        Sought<Integer> later = asks("Ida");
        assertThat(later.found()).isEmpty();
        ended(later);
        assertThat(asks("Ida").found()).contains(2);
    }

    @Test
    void whatCannotBeFoundIsTold() {
        Visit visit = MadeOffice.visit(folder, MadeOffice.CLOCK, "Ida", Role.READER, MadeOffice.TODAY);
        Seeking<String> fails = (session, progress) -> {
            seek(session, progress);
            throw Problem.of("files.none", "request", "");
        };
        Sought<String> sought = searches.sought(visit, TITLE, WAY, fails);
        goOn.countDown();
        assertThat(sought.goesOn().orElseThrow().await(Duration.ofSeconds(30))).isPresent();
        assertThatThrownBy(() -> searches.sought(visit, TITLE, WAY, fails)).isInstanceOf(Problem.class);
    }
}
