package org.cupwright.app.office.today;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.desk.paper.ShowDay;
import org.cupwright.app.office.MadeVisit;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.visit.OfficeHouse;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who asks for a day that takes long is told so, and has it as it stands once it is there. */
class AwaitedDaysTest {
    @TempDir
    private Path path;

    private Path data;
    private Visit visit;

    @BeforeEach
    void open() throws IOException {
        data = MadeVisit.course(path.resolve("data"));
        visit = MadeVisit.to(new SqliteFolder(data, InProcess.CLOCK), Role.SUPERINTENDENT);
    }

    /** Its first folder is given out when the latch is open; the others at once. */
    private OfficeHouse house(CountDownLatch opened) {
        return new OfficeHouse(
                () -> {
                    DataFolder folder = new SqliteFolder(data, InProcess.CLOCK);
                    try {
                        opened.await();
                    } catch (InterruptedException ended) {
                        Thread.currentThread().interrupt();
                    }
                    return folder;
                },
                InProcess.CLOCK,
                "made",
                false);
    }

    private static ShowDay.Answer awaited(AwaitedDays days, Visit visit) {
        Optional<ShowDay.Answer> answer = Optional.empty();
        while (answer.isEmpty()) {
            answer = days.of(visit).answer();
        }
        return answer.get();
    }

    @Test
    void whatComesAtOnceIsThereAtOnce() {
        try (AwaitedDays days = new AwaitedDays(house(new CountDownLatch(0)), Duration.ofMinutes(5))) {
            assertThat(days.of(visit).answer())
                    .hasValueSatisfying(day -> assertThat(day.paper()).isEmpty());
            assertThat(new InProcess(data).run("plan").status()).isZero();
            AwaitedDays.Outcome planned = days.of(visit);
            assertThat(planned.answer())
                    .hasValueSatisfying(day -> assertThat(day.paper()).isPresent());
            assertThat(planned.step().done()).isEqualTo(3);
        }
    }

    /** What began before somebody planned does not hide the plan. */
    @Test
    void whatTakesLongIsToldAndThenShownAsItStands() {
        CountDownLatch opened = new CountDownLatch(1);
        try (AwaitedDays days = new AwaitedDays(house(opened), Duration.ofMillis(20))) {
            AwaitedDays.Outcome first = days.of(visit);
            assertThat(first.answer()).isEmpty();
            assertThat(first.step().all()).isZero();
            assertThat(new InProcess(data).run("plan").status()).isZero();
            assertThat(days.of(visit).answer()).isEmpty();
            opened.countDown();
            assertThat(awaited(days, visit).paper()).isPresent();
        }
    }

    @Test
    void whatKeepsItFromBeingShownIsTold() {
        OfficeHouse shut = new OfficeHouse(
                () -> {
                    throw Problem.of("files.none", "request", "");
                },
                InProcess.CLOCK,
                "made",
                false);
        try (AwaitedDays days = new AwaitedDays(shut, Duration.ofMinutes(5))) {
            assertThatExceptionOfType(Problem.class)
                    .isThrownBy(() -> days.of(visit))
                    .satisfies(told -> assertThat(told.what().key()).isEqualTo("problem.files.none"));
        }
    }
}
