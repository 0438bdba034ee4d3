package org.cupwright.app.office.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.desk.policy.PolicyEntry;
import org.cupwright.app.desk.policy.Settings;
import org.cupwright.app.desk.policy.ShowPolicy;
import org.cupwright.app.office.MadeVisit;
import org.cupwright.app.office.frame.SettingWords;
import org.cupwright.app.session.Role;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.http.HttpStatus;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributesModelMap;

/** Settings shown, found and changed by their page. */
class SettingsPageTest {
    private static final String EDGE = "holelocation.edgePaces";

    @TempDir
    private Path path;

    private final SettingsController controller = new SettingsController();
    private Path data;
    private Visit visit;

    @BeforeEach
    void open() throws IOException {
        data = MadeVisit.course(path.resolve("data"));
        visit = MadeVisit.to(new SqliteFolder(data, InProcess.CLOCK), Role.SUPERINTENDENT);
    }

    private ModelAndView set(String key, String value, String from) {
        return controller.set(visit, key, value, from, new RedirectAttributesModelMap());
    }

    @SuppressWarnings("unchecked") // the page's own groups
    private List<SettingsView.Group> groups(String find) {
        return (List<SettingsView.Group>)
                controller.settings(visit, find, "").getModel().get("groups");
    }

    private SettingsView.One one(ModelAndView page) {
        return (SettingsView.One) page.getModel().get("one");
    }

    @Test
    void everySettingStandsInAGroupWithItsUnitRangeAndSource() {
        List<SettingsView.Group> groups = groups("");
        assertThat(groups.get(0).open()).isTrue();
        List<SettingsView.Row> rows =
                groups.stream().skip(1).flatMap(group -> group.rows().stream()).toList();
        assertThat(rows).hasSize(Settings.catalogue().settings().size());
        assertThat(groups).allSatisfy(group -> assertThat(group.title()).doesNotStartWith("course."));
        assertThat(rows).allSatisfy(row -> {
            assertThat(row.says()).doesNotStartWith("setting.");
            assertThat(row.accepts()).startsWith("Takes: ");
            assertThat(row.source()).isNotBlank();
        });
        assertThat(rows)
                .filteredOn(row -> row.key().equals(EDGE))
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.value()).isEqualTo("4 paces");
                    assertThat(row.standing()).isEqualTo("as it came");
                    assertThat(row.accepts()).isEqualTo("Takes: 0 to 20.");
                    assertThat(row.source()).startsWith("Published: R&A");
                });
    }

    @Test
    void wordsThatAreLookedForAreFoundInWhatSettingsDo() {
        assertThat(groups("hole EDGE").get(0).rows())
                .extracting(SettingsView.Row::key)
                .contains(EDGE)
                .doesNotContain("desk.units");
        assertThat(groups("no such thing").get(0).rows()).isEmpty();
    }

    @Test
    void aChangeCountsFromItsDayOnAsByTheCommand() {
        ModelAndView page = set(EDGE, "5", "2026-07-01");
        assertThat(page.getViewName()).startsWith("redirect:/course/settings?key=" + EDGE);
        InProcess program = new InProcess(data);
        assertThat(program.run("policy", EDGE, "--date", "2026-06-30", "--course", MadeVisit.COURSE)
                        .out())
                .contains("4 paces");
        assertThat(program.run("policy", EDGE, "--date", "2026-07-01", "--course", MadeVisit.COURSE)
                        .out())
                .contains("5 paces");
        SettingsView.One shown = one(controller.settings(visit, "", EDGE));
        assertThat(shown.row().value()).isEqualTo("4 paces");
        assertThat(shown.changes()).containsExactly("from Wed 1 Jul 2026: 5 paces");
    }

    @Test
    void sinceWhenAValueHoldsIsSaid() {
        set(EDGE, "5", "2026-06-01");
        set(EDGE, "6", "2026-06-20");
        set(EDGE, "7", "2026-06-10");
        SettingsView.Row row = one(controller.settings(visit, "", EDGE)).row();
        assertThat(row.value()).isEqualTo("6 paces");
        assertThat(row.since()).isEqualTo("since Sat 20 Jun 2026");
        assertThat(row.standing()).contains("came as 4 paces");
        assertThat(groups("").get(0).rows())
                .filteredOn(first -> first.key().equals(EDGE))
                .singleElement()
                .satisfies(first -> assertThat(first.own()).isTrue());
    }

    @Test
    void whatIsRefusedIsToldWithItsReasonAndStaysAsItWasTyped() {
        ModelAndView page = set(EDGE, "far", "2026-06-20");
        assertThat(page.getStatus()).isEqualTo(HttpStatus.UNPROCESSABLE_CONTENT);
        assertThat(one(page).problem())
                .contains("far")
                .contains("0 to 20")
                .doesNotContain(EDGE); // its name stands above
        assertThat(one(page).text()).isEqualTo("far");
        assertThat(one(set(EDGE, "5", "tomorrow")).problem()).contains("tomorrow");
        assertThat(one(set(EDGE, "5", "1066-01-01")).problem()).contains("1066");
        assertThat(one(controller.settings(visit, "", EDGE)).changes()).isEmpty();
    }

    @Test
    void whereFewValuesArePossibleTheyAreChosenFrom() {
        assertThat(one(controller.settings(visit, "", "desk.units")).choices())
                .extracting(SettingWords.Choice::value)
                .contains("paces", "metric");
        assertThat(one(controller.settings(visit, "", EDGE)).choices()).isEmpty();
    }

    /** Whatever is one of a few has its words, in every language. */
    @Test
    void whatIsChosenIsInWords() {
        for (PolicyEntry entry : new ShowPolicy(visit.session(), Settings.catalogue()).all(visit.date())) {
            String key = entry.setting().key();
            assertThat(one(controller.settings(visit, "", key)).choices())
                    .as(key)
                    .allMatch(choice -> !choice.says().isBlank());
        }
        assertThat(one(controller.settings(visit, "", "rotation.scheme")).row().value())
                .isEqualTo("six front, six middle, six back");
        assertThat(one(controller.settings(visit, "", "desk.language")).row().value())
                .isEqualTo("English");
    }

    @Test
    void decimalsAreWrittenAsTheLanguageDoes() {
        PolicyEntry pace = new ShowPolicy(visit.session(), Settings.catalogue())
                .all(visit.date()).stream()
                        .filter(entry -> entry.setting().key().equals("place.paceMetres"))
                        .findFirst()
                        .orElseThrow();
        assertThat(new SettingWords(texts("en")).shown(pace, "0.914")).isEqualTo("0.914 m");
        assertThat(new SettingWords(texts("es")).shown(pace, "0.914")).isEqualTo("0,914 m");
    }

    private static Texts texts(String language) {
        return Texts.find(language, Door.PAGES, UnitSystem.PACES, 0.914).orElseThrow();
    }
}
