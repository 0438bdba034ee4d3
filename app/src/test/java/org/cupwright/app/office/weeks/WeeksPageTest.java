package org.cupwright.app.office.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.stream.IntStream;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.entry.Entry;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.TypedEntry;
import org.cupwright.app.desk.plan.ChangeWeeks;
import org.cupwright.app.desk.plan.PlanWeeks;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.desk.plan.PublishPlan.Step;
import org.cupwright.app.desk.plan.SeenPlans;
import org.cupwright.app.desk.plan.ShowWeeks;
import org.cupwright.app.desk.policy.ChangePolicy;
import org.cupwright.app.desk.policy.ChangePolicy.Wanted;
import org.cupwright.app.desk.policy.Settings;
import org.cupwright.app.office.MadeOffice;
import org.cupwright.app.office.frame.Paragraph;
import org.cupwright.app.office.work.Piece;
import org.cupwright.app.office.work.WorkController;
import org.cupwright.app.office.work.Works;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;

/** A planned fortnight on an invented course of three greens, its first day published. */
class WeeksPageTest {
    private static final LocalDate TODAY = MadeOffice.TODAY;
    private static final int DAYS = 14;

    @TempDir
    private static Path made;

    @TempDir
    private Path data;

    private SqliteFolder folder;
    private Works works;
    private WeeksWorkController working;

    @BeforeAll
    static void planFortnight() throws IOException {
        MadeOffice.course(made, 3);
        try (SqliteFolder planned = new SqliteFolder(made, MadeOffice.CLOCK)) {
            Visit ida = MadeOffice.visit(planned, MadeOffice.CLOCK, "Ida", Role.OFFICIAL, TODAY);
            new PlanWeeks(ida.session(), "made")
                    .plan(ida.question(), DAYS, 1, Optional.empty(), SeenPlans.NONE, Progress.unheard());
            new PublishPlan(ida.session()).take(Step.PUBLISH, Optional.of(TODAY), false);
        }
    }

    @BeforeEach
    void aCopy() throws IOException {
        Files.copy(made.resolve("cupwright.db"), data.resolve("cupwright.db"));
        folder = new SqliteFolder(data, MadeOffice.CLOCK);
        works = new Works(MadeOffice.house(data, MadeOffice.CLOCK));
        working = new WeeksWorkController(works);
    }

    @AfterEach
    void closed() {
        works.close();
        folder.close();
    }

    private Visit visit(String name, Role role) {
        return MadeOffice.visit(folder, MadeOffice.CLOCK, name, role, TODAY);
    }

    private Visit ida() {
        return visit("Ida", Role.OFFICIAL);
    }

    private WeeksView.Page page(Visit visit, String... wishes) {
        ShowWeeks.Answer answer = new ShowWeeks(visit.session()).of(visit.question());
        return new WeeksView(visit, answer, Wished.of(visit.date(), List.of(wishes))).page();
    }

    private CellView.Chosen cell(Visit visit, String cell) {
        ShowWeeks.Answer answer = new ShowWeeks(visit.session()).of(visit.question());
        return new CellView(visit, answer).of(cell).orElseThrow();
    }

    private static MultiValueMap<String, String> wishes(String... wishes) {
        MultiValueMap<String, String> asked = new LinkedMultiValueMap<>();
        List.of(wishes).forEach(wish -> asked.add("wish", wish));
        return asked;
    }

    private Piece ended(String address) throws InterruptedException {
        UUID id = UUID.fromString(address.substring("redirect:/work/".length()));
        Piece piece = works.find(id, MadeOffice.person("Ida", Role.OFFICIAL));
        for (int i = 0; piece.outcome().isEmpty(); i++) {
            assertThat(i).as("it does not end").isLessThan(12_000);
            Thread.sleep(5);
        }
        return piece;
    }

    private static String said(Piece piece) {
        return String.join(
                "\n",
                Paragraph.all(piece.answer().orElseThrow()).stream()
                        .map(Paragraph::whole)
                        .toList());
    }

    private List<StoredPlan> plans() {
        return folder.read(stores -> stores.plans().between(MadeOffice.COURSE, TODAY, TODAY.plusDays(100)));
    }

    private String spot(LocalDate day, String hole) {
        return cell(ida(), day + ":" + hole).where();
    }

    /** What is set about the desk or about paper changes no plan. */
    @Test
    void settingsAreSaidToHaveChangedWherePlansDependOnThem() {
        Visit sam = visit("Sam", Role.SUPERINTENDENT);
        ChangePolicy settings = new ChangePolicy(sam.session(), Settings.catalogue());
        settings.set(TODAY, List.of(new Wanted("desk.units", "imperial"), new Wanted("paper.size", "letter")));
        assertThat(page(ida()).since()).isEmpty();
        settings.set(TODAY, List.of(new Wanted("rotation.weight.evenDays", "150")));
        assertThat(page(ida()).since()).anyMatch(said -> said.contains("settings were changed"));
    }

    /** Nothing is offered where there is nothing to do. */
    @Test
    void whatThereIsToChangeIsOnTheButton() {
        assertThat(page(ida()).changes()).isEmpty();
        assertThat(page(ida(), "free:" + TODAY.plusDays(1) + ":1").changes()).contains("Change the plans");
        TypedEntry note = new TypedEntry(
                Optional.of(EntryForm.ofKind("noteToNext")),
                Map.of("text", "invented"),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty());
        Clock later = Clock.offset(MadeOffice.CLOCK, Duration.ofHours(1));
        try (SqliteFolder own = new SqliteFolder(data, later)) {
            Visit then = MadeOffice.visit(own, later, "Ida", Role.OFFICIAL, TODAY);
            new RecordFact(then.session())
                    .record(new Entry(List.of(), false, Optional.of(TODAY), note, Optional.empty(), true));
        }
        assertThat(page(ida()).changes()).contains("Bring the drafts up to date");
    }

    @Test
    void hasADayInEveryColumnAndAHoleInEveryRow() {
        WeeksView.Page page = page(ida());
        assertThat(page.planned()).isEqualTo("14 days are planned, as far as Fri 3 Jul; one is published.");
        assertThat(page.heads()).hasSize(DAYS);
        assertThat(page.heads().get(0).says()).isEqualTo("publ.");
        assertThat(page.heads().get(1).says()).isEmpty();
        assertThat(page.heads().get(1).full()).isEqualTo("Sun 21 Jun 2026");
        assertThat(page.parts()).hasSize(1);
        List<WeeksView.Row> rows = page.parts().get(0).rows();
        assertThat(rows).extracting(WeeksView.Row::hole).containsExactly("1", "2", "3");
        assertThat(rows).allSatisfy(row -> assertThat(row.cells()).hasSize(DAYS));
        assertThat(page.inARow()).isEqualTo(DAYS);
        assertThat(page.even()).contains("of 42 holes");
    }

    /** The words for a listener say the same as the letters for an eye. */
    @Test
    void aCellSaysItsThirdInALetterAndInWords() {
        CellView cells = new CellView(ida(), new ShowWeeks(ida().session()).of(ida().question()));
        for (WeeksView.Row row : page(ida()).parts().get(0).rows()) {
            for (int day = 0; day < DAYS; day++) {
                WeeksCells.Cell cell = row.cells().get(day);
                String where = cells.of(cell.value()).orElseThrow().where();
                String third = List.of("front", "middle", "back").stream()
                        .filter(where::startsWith)
                        .findFirst()
                        .orElseThrow();
                assertThat(cell.letter()).isEqualToIgnoringCase(third.substring(0, 1));
                assertThat(cell.says()).startsWith("Hole " + row.hole() + ", ").contains(where);
                assertThat(cell.value()).isEqualTo(TODAY.plusDays(day) + ":" + row.hole());
                assertThat(cell.draft()).isEqualTo(day > 0);
                assertThat(cell.looks()).startsWith(day == 0 ? "published" : "draft");
            }
        }
    }

    @Test
    void whatIsToBeChangedIsListedAndMarked() {
        WeeksView.Page page = page(ida(), "here:2026-06-22:2");
        assertThat(page.wishes()).singleElement().satisfies(one -> {
            assertThat(one.says()).isEqualTo("Hole 2, Mon 22 Jun: locked where it is planned");
            assertThat(one.without()).isEqualTo("/weeks?date=2026-06-20");
        });
        WeeksCells.Cell marked = page.parts().get(0).rows().get(1).cells().get(2);
        assertThat(marked.wished()).isTrue();
        assertThat(marked.says()).endsWith("to be changed");
    }

    @Test
    void whoMayNotPlanIsOfferedNoChange() {
        WeeksView.Page page = page(visit("Rea", Role.READER));
        assertThat(page.mayPlan()).isFalse();
        assertThat(page.mayChange()).isFalse();
        assertThat(cell(visit("Rea", Role.READER), "2026-06-22:2").mayWish()).isFalse();
        assertThat(cell(ida(), "2026-06-22:2").mayWish()).isTrue();
        assertThat(cell(ida(), "2026-06-20:2").mayWish()).as("published").isFalse();
    }

    @Test
    void aCellSaysWhyAndWithWhichDaysItsSpotMayBeExchanged() {
        CellView.Chosen chosen = cell(ida(), "2026-06-22:2");
        assertThat(chosen.title()).isEqualTo("Hole 2, Mon 22 Jun 2026");
        assertThat(chosen.reasons()).isNotEmpty();
        assertThat(chosen.others()).hasSize(DAYS - 2);
        assertThat(new CellView(ida(), new ShowWeeks(ida().session()).of(ida().question())).of("2026-09-22:2"))
                .isEmpty();
    }

    @Test
    void whatIsGatheredIsChangedAndTakenBack() throws InterruptedException {
        LocalDate one = TODAY.plusDays(2);
        LocalDate other = IntStream.range(3, DAYS)
                .mapToObj(TODAY::plusDays)
                .filter(day -> !spot(day, "2").equals(spot(one, "2")))
                .findFirst()
                .orElseThrow();
        String here = spot(one, "2");
        String there = spot(other, "2");
        Piece swapped = ended(working.change(
                ida(),
                wishes("swap:" + one + ":" + other + ":2"),
                Optional.empty(),
                page(ida()).seen()));
        assertThat(said(swapped)).contains("Ida exchanged the spots of two days.");
        assertThat(spot(one, "2")).isEqualTo(there);
        assertThat(spot(other, "2")).isEqualTo(here);
        assertThat(page(ida()).last().orElseThrow()).startsWith("Changed last by Ida, ");
        Piece undone = ended(working.undo(ida(), page(ida()).seen()));
        assertThat(said(undone)).contains("The last change, by Ida, is taken back");
        assertThat(spot(one, "2")).isEqualTo(here);
    }

    @Test
    void whoeverSawOlderPlansIsToldWhoChangedThem() throws InterruptedException {
        String seen = page(ida()).seen();
        Visit ash = visit("Ash", Role.SUPERINTENDENT);
        LocalDate day = TODAY.plusDays(2);
        new ChangeWeeks(ash.session(), "made")
                .change(
                        ash.question(),
                        Wished.of(TODAY, List.of("away:" + day + ":4:2")).asked(ash.session(), Optional.empty()),
                        Progress.unheard());
        List<StoredPlan> before = plans();
        Problem problem = ended(working.change(ida(), wishes("here:" + day + ":2"), Optional.empty(), seen))
                .outcome()
                .orElseThrow()
                .problem()
                .orElseThrow();
        assertThat(MadeOffice.TEXTS.say(problem.what())).contains("Mon 22 Jun 2026: hole 2 elsewhere, by Ash.");
        assertThat(plans()).isEqualTo(before);
        Piece planned = ended(working.plan(ida(), DAYS, seen));
        assertThat(planned.outcome()
                        .orElseThrow()
                        .problem()
                        .orElseThrow()
                        .what()
                        .key())
                .isEqualTo("problem.plansChanged");
        assertThat(plans()).isEqualTo(before);
    }

    @Test
    void stoppedWorkLeavesThePlansWhole() throws InterruptedException {
        List<StoredPlan> before = plans();
        String address = working.change(
                ida(),
                wishes("away:2026-06-22:4:2"),
                Optional.empty(),
                page(ida()).seen());
        new WorkController(works).stop(ida(), UUID.fromString(address.substring("redirect:/work/".length())));
        Piece stopped = ended(address);
        boolean inTime = stopped.answer().isEmpty();
        List<StoredPlan> after = plans();
        assertThat(after).hasSize(DAYS);
        assertThat(after.equals(before))
                .as("changed only where it was done already")
                .isEqualTo(inTime);
    }

    @Test
    void aWishThatIsNoneIsRefused() {
        assertThatThrownBy(() -> page(ida(), "here:tomorrow:2")).isInstanceOf(Problem.class);
        assertThatThrownBy(() -> working.change(ida(), wishes(), Optional.empty(), "2026-06-20=many"))
                .isInstanceOf(Problem.class)
                .hasMessageContaining("problem.seenPlans");
    }
}
