package org.cupwright.app.desk.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.entry.SeeToOdd;
import org.cupwright.app.desk.first.Notice;
import org.cupwright.app.desk.paper.ShowDay;
import org.cupwright.app.desk.turf.ShowTurf;
import org.cupwright.app.office.MadeVisit;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On which days something odd stands, in the logbook, before everything else, and in what turf wants. */
class OddThingsTest {
    private static final LocalDate TODAY = MadeVisit.TODAY;
    private static final LocalDate SEEN_ON = TODAY.minusDays(2);

    @TempDir
    private Path path;

    private Session session;

    private List<LocalDate> days(Predicate<LocalDate> stands) {
        List<LocalDate> days = new ArrayList<>();
        for (LocalDate day = TODAY.minusDays(4); !day.isAfter(TODAY.plusDays(2)); day = day.plusDays(1)) {
            if (stands.test(day)) {
                days.add(day);
            }
        }
        return days;
    }

    private boolean inLogbook(LocalDate day) {
        return !new SeeToOdd(session).unseen(day).things().isEmpty();
    }

    private boolean first(LocalDate day) {
        return new ShowDay(session)
                .withoutPlan(DayQuestion.of(day)).first().before().stream()
                        .anyMatch(notice -> notice.kind() == Notice.Kind.ODD_NOW);
    }

    private boolean inTurf(LocalDate day) {
        return !new ShowTurf(session).of(DayQuestion.of(day)).odd().isEmpty();
    }

    @Test
    void standsOnItsDayAndOnTodayUntilSomebodyHasSeenToIt() throws IOException {
        Path data = MadeVisit.course(path.resolve("data"));
        InProcess.Result entered = new InProcess(data)
                .run(("log add something-odd --hole 2 --set severity=now --set text=burst --person Ida --date "
                                + SEEN_ON + " --course " + MadeVisit.COURSE)
                        .split(" "));
        assertThat(entered.err()).isEmpty();
        try (SqliteFolder folder = new SqliteFolder(data, InProcess.CLOCK)) {
            session = MadeVisit.to(folder, Role.CHANGER).session();
            assertThat(days(this::inLogbook)).containsExactly(SEEN_ON, TODAY);
            assertThat(days(this::first)).containsExactly(SEEN_ON, TODAY);
            assertThat(days(this::inTurf)).containsExactly(SEEN_ON, TODAY);
            OddThings.Thing thing = new SeeToOdd(session).unseen(TODAY).things().get(0);
            new SeeToOdd(session).seen(thing.fact().id().toString());
            assertThat(days(this::inLogbook)).isEmpty();
            assertThat(days(this::first)).isEmpty();
            assertThat(days(this::inTurf)).isEmpty();
        }
    }
}
