package org.cupwright.app.office.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.app.office.log.LogDesk.field;
import static org.cupwright.app.office.log.LogDesk.fields;
import static org.cupwright.app.office.log.LogDesk.form;
import static org.cupwright.app.office.log.LogDesk.isKept;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.office.MadeVisit;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CrewNote.OddSeen;
import org.cupwright.cupchange.CrewNote.SomethingOdd;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.Soil;
import org.cupwright.cupchange.DayReading.SpeedRead;
import org.cupwright.cupchange.Fact;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.http.HttpStatus;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributesModelMap;

/** Entries written down, put right and withdrawn by the forms of the logbook. */
class LogFormsTest {
    @TempDir
    private Path path;

    private LogDesk desk;

    @BeforeEach
    void open() throws IOException {
        desk = new LogDesk(path.resolve("data"));
    }

    /** What is typed into a form, and the same at the command line. */
    private record Same(List<String> form, List<String> command) {}

    private static final List<Same> SAME = List.of(
            new Same(
                    List.of("elsewhere", "hole", "1", "on", "12", "side", "L5", "part.soil", "put-in"),
                    List.of("cup-changed", "--hole", "1", "--on", "12", "--side", "L5", "--set", "soil=put-in")),
            new Same(
                    List.of("elsewhere", "hole", "2", "on", "12½", "side", "5 r", "when", "4:40"),
                    List.of("cup-changed", "--hole", "2", "--on", "12.5", "--side", "R5", "--when", "04:40")),
            new Same(
                    List.of("left", "hole", "3", "part.why", "frost"),
                    List.of("left-in-old-hole", "--hole", "3", "--set", "why=frost")),
            new Same(
                    List.of("speed", "part.feet", "10,5", "part.otherWayFeet", "3.1 m"),
                    List.of("speed-read", "--set", "feet=10.5", "--set", "otherWayFeet=3.1m")),
            new Same(List.of("mown", "part.work", "mown-single"), List.of("maintained", "--set", "work=mown-single")),
            new Same(
                    List.of(
                            "closed",
                            "hole",
                            "1",
                            "on",
                            "6",
                            "side",
                            "L4",
                            "radius",
                            "2",
                            "part.use",
                            "closed",
                            "part.reason",
                            "wear",
                            "part.from",
                            "2026-06-20",
                            "part.until",
                            "2026-06-30"),
                    List.of(
                            "ground-marked",
                            "--hole",
                            "1",
                            "--on",
                            "6",
                            "--side",
                            "L4",
                            "--radius",
                            "2",
                            "--set",
                            "use=closed",
                            "--set",
                            "reason=wear",
                            "--set",
                            "until=2026-06-30")),
            new Same(
                    List.of("ball-mark", "hole", "1", "at", "500010, 4400010"),
                    List.of("ball-mark", "--hole", "1", "--at", "500010,4400010")),
            new Same(
                    List.of("odd", "hole", "1", "part.text", "ring", "part.severity", "soon"),
                    List.of("something-odd", "--hole", "1", "--set", "text=ring", "--set", "severity=soon")));

    @Test
    void whatIsTypedIntoAFormIsTheSameEntryAsByTheCommand() throws IOException {
        LogDesk other = new LogDesk(path.resolve("other"));
        for (Same same : SAME) {
            List<String> typed = same.form();
            ModelAndView page =
                    desk.add(typed.get(0), typed.subList(1, typed.size()).toArray(String[]::new));
            assertThat(isKept(page)).as("%s", typed).isTrue();
            Object[] line = Stream.concat(
                            Stream.of("log", "add"),
                            Stream.concat(
                                    same.command().stream(),
                                    Stream.of("--course", MadeVisit.COURSE, "--person", "Ida")))
                    .toArray();
            InProcess.Result done = new InProcess(other.data).run(line);
            assertThat(done.err()).isEmpty();
        }
        assertThat(desk.facts()).hasSize(SAME.size());
        assertThat(desk.facts().stream().map(LogFormsTest::said).toList())
                .containsExactlyInAnyOrderElementsOf(
                        other.facts().stream().map(LogFormsTest::said).toList());
    }

    private static List<Object> said(Fact fact) {
        return List.of(fact.happenedAt(), fact.recordedAtDevice(), fact.person(), fact.hole(), fact.payload());
    }

    @Test
    void whatIsWrongIsToldAtItsFieldAndNothingThatWasTypedIsLost() {
        ModelAndView page = desk.add(
                "closed", "hole", "2", "on", "twelve", "side", "5", "part.use", "shut", "part.from", "20-99-2026");
        assertThat(page.getStatus()).isEqualTo(HttpStatus.UNPROCESSABLE_CONTENT);
        assertThat(field(page, "on").problem()).contains("twelve");
        assertThat(field(page, "on").value()).isEqualTo("twelve");
        assertThat(field(page, "radius").problem()).isEqualTo("This is needed.");
        assertThat(field(page, "part.use").problem()).contains("shut");
        assertThat(field(page, "part.reason").problem()).isEqualTo("This is needed.");
        assertThat(field(page, "part.from").problem()).contains("20-99-2026");
        assertThat(field(page, "hole").problem()).isEmpty();
        assertThat(field(page, "hole").value()).isEqualTo("2");
        assertThat(desk.facts()).isEmpty();
    }

    /** I and D of Spanish stand for left and right beside L and R, wherever a place is typed in paces. */
    @Test
    void aSideMayBeTypedInTheLanguagesOwnLetter() {
        LogDesk spanish = desk.in("es");
        assertThat(isKept(spanish.add("elsewhere", "hole", "1", "on", "12", "side", "I5")))
                .isTrue();
        assertThat(isKept(spanish.add("elsewhere", "hole", "2", "on", "12", "side", "5 d")))
                .isTrue();
        assertThat(isKept(spanish.add("elsewhere", "hole", "3", "at", "12, d5")))
                .isTrue();
        LogDesk english = desk.in("en");
        assertThat(isKept(english.add("elsewhere", "hole", "1", "on", "12", "side", "L5", "sure", "yes")))
                .isTrue();
        assertThat(isKept(english.add("elsewhere", "hole", "2", "on", "12", "side", "R5", "sure", "yes")))
                .isTrue();
        assertThat(isKept(english.add("elsewhere", "hole", "3", "on", "12", "side", "R5", "sure", "yes")))
                .isTrue();
        assertThat(desk.facts().stream()
                        .map(Fact::payload)
                        .map(LogFormsTest::cutAt)
                        .distinct())
                .hasSize(3);
        assertThat(field(spanish.add("elsewhere", "hole", "1", "on", "12", "side", "derecha"), "side")
                        .problem())
                .contains("derecha")
                .contains("D (derecha)");
        assertThat(field(english.add("elsewhere", "hole", "1", "on", "12", "side", "D5"), "side")
                        .problem())
                .contains("D5");
    }

    private static MapPoint cutAt(Object payload) {
        return ((CupChanged) payload).cutAt();
    }

    @Test
    void whatOnlyTheDeskCanSeeIsToldAtItsFieldToo() {
        assertThat(field(desk.add("speed", "part.feet", "70"), "part.feet").problem())
                .contains("70");
        assertThat(field(desk.add("note", "part.text", "a word", "when", "25:00"), "when")
                        .problem())
                .contains("25:00");
        assertThat(field(desk.add("left"), "hole").problem()).isNotEmpty();
        assertThat(field(desk.add("note", "part.text", "a word", "hole", "19"), "hole")
                        .problem())
                .contains("19");
        ModelAndView far = desk.add("ball-mark", "hole", "1", "on", "99", "side", "L5");
        assertThat(field(far, "on").problem()).contains("so far on");
        assertThat(field(desk.add("ball-mark", "hole", "1", "at", "here"), "at").problem())
                .contains("here");
        assertThat(desk.facts()).isEmpty();
    }

    @Test
    void aFormThatIsSentTwiceIsKeptOnce() {
        UUID form = UUID.randomUUID();
        for (int time = 0; time < 2; time++) {
            assertThat(isKept(desk.add(form, "left", "hole", "all"))).isTrue();
        }
        assertThat(desk.facts()).hasSize(3);
        assertThat(desk.facts().stream().map(Fact::id)).contains(form).doesNotHaveDuplicates();
    }

    @Test
    void whatLooksWrongIsAskedAndKeptWhenItIsMeant() {
        desk.add("elsewhere", "hole", "1", "on", "12", "side", "L5");
        ModelAndView asked = desk.add("elsewhere", "hole", "1", "on", "6", "side", "L5");
        assertThat(form(asked).asks()).isTrue();
        assertThat(form(asked).wrong()).contains("Hole 1 has a change on record");
        assertThat(field(asked, "on").value()).isEqualTo("6");
        assertThat(desk.facts()).hasSize(1);
        assertThat(isKept(desk.add("elsewhere", "hole", "1", "on", "6", "side", "L5", "sure", "yes")))
                .isTrue();
        assertThat(desk.facts()).hasSize(2);
    }

    @Test
    void aCorrectionChangesWhatWasChangedAndNothingElse() {
        desk.add("elsewhere", "hole", "1", "on", "12", "side", "L5", "part.cutter", "red", "part.rimWhited", "yes");
        CupChanged before = (CupChanged) desk.facts().get(0).payload();
        assertThat(isKept(desk.correct(desk.facts().get(0), "part.soil", "put-in", "part.rimWhited", "")))
                .isTrue();
        CupChanged after = (CupChanged) desk.facts().get(0).payload();
        assertThat(after.soil()).isEqualTo(Soil.PUT_IN);
        assertThat(after.rimWhited()).isFalse();
        assertThat(after.cutAt()).isEqualTo(before.cutAt());
        assertThat(after.cutter()).contains("red");
        assertThat(desk.facts().get(0).hole()).contains("1");
    }

    @Test
    void aCorrectionLeavesWhatSomebodyElseCorrectedMeanwhile() {
        desk.add("speed", "part.feet", "10", "part.otherWayFeet", "11");
        Fact fact = desk.facts().get(0);
        desk.correct(fact, "part.feet", "9");
        Map<String, String> stale = LogDesk.fields(
                "part.feet", "10", "was.part.feet", "10", "part.otherWayFeet", "12", "was.part.otherWayFeet", "11");
        desk.controller.correct(
                desk.visit, fact.id().toString(), UUID.randomUUID(), stale, new RedirectAttributesModelMap());
        SpeedRead now = (SpeedRead) desk.facts().get(0).payload();
        assertThat(now.feet()).isEqualTo(9);
        assertThat(now.otherWayFeet()).hasValue(12);
    }

    @Test
    void aCorrectionThatSaysNothingOrTakesAwayIsRefusedInWords() {
        desk.add("speed", "part.feet", "10", "part.otherWayFeet", "11");
        Fact fact = desk.facts().get(0);
        assertThat(form(desk.correct(fact)).wrong()).contains("What should the entry have said?");
        assertThat(field(desk.correct(fact, "part.otherWayFeet", ""), "part.otherWayFeet")
                        .problem())
                .contains("cannot be left empty");
        assertThat(desk.facts()).containsExactly(fact);
    }

    @Test
    void anEntryIsWithdrawnAndAnOddThingSeenTo() {
        desk.add("odd", "part.text", "a ring", "part.severity", "now");
        desk.add("note", "part.text", "a word");
        Fact note = desk.facts().stream()
                .filter(fact -> !(fact.payload() instanceof SomethingOdd))
                .findFirst()
                .orElseThrow();
        LogView.Log log = log();
        assertThat(log.odd()).extracting(LogView.Odd::text).containsExactly("a ring");
        RedirectAttributesModelMap flash = new RedirectAttributesModelMap();
        desk.controller.seen(desk.visit, log.odd().get(0).id(), log.odd().get(0).form(), flash);
        desk.controller.seen(desk.visit, log.odd().get(0).id(), log.odd().get(0).form(), flash);
        desk.controller.withdraw(desk.visit, note.id().toString(), UUID.randomUUID(), flash);
        assertThat(log().odd()).isEmpty();
        assertThat(desk.facts()).extracting(Fact::id).doesNotContain(note.id());
        assertThat(desk.facts().stream().filter(fact -> fact.payload() instanceof OddSeen))
                .hasSize(1);
    }

    private LogView.Log log() {
        return (LogView.Log)
                new LogController().day(desk.visit, "", "", "").getModel().get("log");
    }

    @Test
    void everyPartOfEveryKindIsAskedForInWords() {
        for (EntryForm kind : EntryForm.all()) {
            ModelAndView page = new LogController().day(desk.visit, LogProblems.typed(kind.kind()), "", "");
            assertThat(fields(page)).as(kind.kind()).allSatisfy(field -> {
                assertThat(field.label()).doesNotStartWith("log.").isNotBlank();
                assertThat(field.hint()).doesNotStartWith("log.");
                assertThat(field.choices())
                        .allSatisfy(choice -> assertThat(choice.label()).doesNotStartWith("log."));
            });
        }
    }
}
