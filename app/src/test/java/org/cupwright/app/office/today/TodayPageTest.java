package org.cupwright.app.office.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.paper.ShowDay;
import org.cupwright.app.office.MadeVisit;
import org.cupwright.app.office.work.Works;
import org.cupwright.app.session.Role;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.visit.OfficeHouse;
import org.cupwright.app.visit.Visit;
import org.cupwright.app.visit.access.Routes;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.ui.ConcurrentModel;
import org.springframework.ui.Model;

/** What the page of today says of what was done, and what one that stands open is told of what others do. */
class TodayPageTest {
    private static final Duration LONG = Duration.ofMinutes(5);

    @TempDir
    private Path path;

    private Path data;
    private Visit visit;

    @BeforeEach
    void open() throws IOException {
        data = MadeVisit.course(path.resolve("data"));
        visit = MadeVisit.to(new SqliteFolder(data, InProcess.CLOCK), Role.SUPERINTENDENT);
    }

    private void type(Object... command) {
        InProcess.Result done = new InProcess(data).run(command);
        assertThat(done.status()).as(done.err()).isZero();
    }

    private DayView.Plan plan() {
        ShowDay.Answer answer = new ShowDay(visit.session()).of(visit.question(), Progress.unheard());
        return new DayView(visit).of(answer).plan().orElseThrow();
    }

    @Test
    void namesTheHolesThatAreNotAsPlanned() {
        type("plan");
        type("publish", "--yes");
        assertThat(plan().done()).isEqualTo(new DoneView.Done("0 of 3 cut", 0, 3));
        type("log", "add", "cup-changed", "--hole", "1", "--as-planned", "--person", "Ida");
        type("log", "add", "cup-changed", "--hole", "2", "--on", "12", "--side", "L5", "--person", "Ida");
        assertThat(plan().done()).isEqualTo(new DoneView.Done("2 of 3 cut · hole 2 elsewhere than planned", 2, 3));
        type("log", "add", "left-in-old-hole", "--hole", "3", "--person", "Ida");
        assertThat(plan().done())
                .isEqualTo(new DoneView.Done(
                        "2 of 3 cut · hole 2 elsewhere than planned · hole 3 left where it was", 3, 3));
    }

    /** A hole that stays where it was is nearer to itself than any old hole may be: that is no reason to warn. */
    @Test
    void aHoleThatWasLeftIsNotHeldAgainstItself() {
        type("log", "add", "cup-changed", "--hole", "3", "--on", "12", "--side", "L5", "--date", "2026-06-19");
        type("plan");
        type("publish", "--yes");
        type("log", "add", "left-in-old-hole", "--hole", "3", "--person", "Ida");
        DayView.Row third = plan().parts().get(0).rows().get(2);
        assertThat(third.done()).isEqualTo("left");
        assertThat(third.paces()).isEqualTo("12 on · 5 from left");
        assertThat(third.verdict() + third.says()).isEmpty();
        assertThat(third.notices()).isEmpty();
        type("log", "add", "cup-changed", "--hole", "2", "--on", "1", "--side", "L5", "--person", "Ida");
        DayView.Row second = plan().parts().get(0).rows().get(1);
        assertThat(second.says()).isEqualTo("do not cut");
        assertThat(second.notice().orElseThrow()).startsWith("Against a rule: ");
    }

    /** What is asked for stays when the day is planned anew; that the others move is said before. */
    @Test
    void asksBeforeADraftIsLostThatSomebodyChanged() {
        type("plan");
        assertThat(plan().byHand()).isEmpty();
        type("plan", "--hole", "2", "--on", "12", "--side", "L5");
        assertThat(plan().byHand().orElseThrow()).contains("What was asked for hole 2 stays;");
    }

    private static List<String> rows(DayView.Plan plan) {
        return plan.parts().stream()
                .flatMap(part -> part.rows().stream())
                .map(DayView.Row::id)
                .toList();
    }

    @Test
    void everyRowHasAnIdOfItsOwn() {
        type("plan");
        assertThat(rows(plan())).doesNotHaveDuplicates().hasSize(3);
    }

    /** Who and by when is told where there is something to tell; rows stand as the holes are gone to. */
    @Test
    void rowsSayWhoAndByWhen() {
        type("plan");
        assertThat(plan().round().says()).isEmpty();
        assertThat(plan().round().line("1")).isEmpty();
        assertThat(plan().round().form().orElseThrow().people()).hasSize(2);
        type("round", "--start", "twoTees", "--first", "7:00", "--give", "2=Ash", "--person", "Robin");
        RoundView.Told round = plan().round();
        assertThat(round.says()).contains("From two tees, first groups at 07:00. Ash: 2. Nobody has 1, 3.");
        assertThat(round.line("2")).isEqualTo("Ash · by 07:04");
        assertThat(round.line("3")).isEqualTo("nobody · by 06:50");
        assertThat(rows(plan()).stream().map(row -> row.replace("row-", "")).toList())
                .containsExactly("1", "0", "2");
        assertThat(round.form().orElseThrow().people().get(0)).isEqualTo(new RoundView.Line("Ash", "2"));
        visit = MadeVisit.to(new SqliteFolder(data, InProcess.CLOCK), Role.CHANGER);
        assertThat(plan().round().form()).as("of whoever may not plan").isEmpty();
    }

    /** As long as nothing came, nothing is sent; then the rows; and of another plan only that it is another. */
    @Test
    void aPageThatStandsOpenIsToldWhatOthersDid() {
        type("plan");
        Live before = Live.of(visit);
        assertThat(before.isToday()).isTrue();
        assertThat(asked(before)).isEqualTo("nothing");
        type("log", "add", "cup-changed", "--hole", "1", "--as-planned", "--person", "Robin");
        assertThat(asked(before)).isEqualTo("today-live :: rows");
        assertThat(asked(Live.of(visit))).isEqualTo("nothing");
        type("round", "--give", "1=Ash", "--person", "Robin");
        assertThat(asked(before)).isEqualTo("today-live :: anotherRound");
        assertThat(asked(Live.of(visit))).isEqualTo("nothing");
        type("plan", "--hole", "2", "--on", "12", "--side", "L5");
        assertThat(asked(before)).isEqualTo("today-live :: another");
    }

    @Test
    void otherDaysStayAsTheyAre() {
        LocalDate tomorrow = MadeVisit.TODAY.plusDays(1);
        Visit other = new Visit(
                visit.session(),
                visit.texts(),
                visit.today(),
                tomorrow,
                visit.courses(),
                visit.courseName(),
                visit.version());
        assertThat(Live.of(other).isToday()).isFalse();
        assertThat(answer(other, 0, 0, "")).isEqualTo("nothing");
    }

    private String asked(Live live) {
        return answer(visit, live.plan(), live.round(), live.as());
    }

    private String answer(Visit who, long seen, long seenRound, String as) {
        OfficeHouse house =
                new OfficeHouse(() -> new SqliteFolder(data, InProcess.CLOCK), InProcess.CLOCK, "made", false);
        try (AwaitedDays days = new AwaitedDays(house, LONG);
                Works works = new Works(house, LONG)) {
            Model model = new ConcurrentModel();
            Optional<String> part = new TodayController(days, works).meanwhile(who, seen, seenRound, as, model);
            assertThat(model.containsAttribute("day")).isEqualTo(part.equals(Optional.of("today-live :: rows")));
            return part.orElse("nothing");
        }
    }

    @Test
    void whoeverMayLookIsToldWhatOthersDid() {
        assertThat(Routes.ALL.stream()
                        .filter(route -> route.pattern().equals("/now"))
                        .flatMap(route -> route.roles().stream()))
                .containsExactlyInAnyOrder(Role.values());
    }
}
