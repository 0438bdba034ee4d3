package org.cupwright.app.office.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.desk.entry.ListFacts;
import org.cupwright.app.office.MadeVisit;
import org.cupwright.app.session.Role;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.visit.Visit;
import org.cupwright.cupchange.Fact;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributesModelMap;

/** The page of the logbook of the invented course, and what it keeps. */
final class LogDesk {
    final Path data;
    final Visit visit;
    final EntryController controller = new EntryController();

    LogDesk(Path data) throws IOException {
        this(MadeVisit.course(data), "en");
    }

    private LogDesk(Path data, String language) {
        this.data = data;
        this.visit = MadeVisit.to(new SqliteFolder(data, InProcess.CLOCK), Role.CHANGER, language);
    }

    /** The same logbook, as somebody sees it who reads another language. */
    LogDesk in(String language) {
        return new LogDesk(data, language);
    }

    /** Sends a form for a new entry. */
    ModelAndView add(UUID form, String about, String... fields) {
        return controller.add(visit, about, form, fields(fields), null, new RedirectAttributesModelMap());
    }

    ModelAndView add(String about, String... fields) {
        return add(UUID.randomUUID(), about, fields);
    }

    /** Sends the form by which an entry is put right, filled in as it came but for some fields. */
    ModelAndView correct(Fact fact, String... changes) {
        ModelAndView shown = new LogController().day(visit, "", fact.id().toString(), "");
        Map<String, String> sent = new LinkedHashMap<>();
        for (Field field : fields(shown)) {
            if (!field.value().isEmpty()) {
                sent.put(field.name(), field.value());
            }
            if (!field.was().isEmpty()) {
                sent.put(Field.WAS + field.name(), field.was());
            }
        }
        sent.putAll(fields(changes));
        return controller.correct(
                visit, fact.id().toString(), UUID.randomUUID(), sent, new RedirectAttributesModelMap());
    }

    static Map<String, String> fields(String... namesAndTexts) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            fields.put(namesAndTexts[i], namesAndTexts[i + 1]);
        }
        return fields;
    }

    static EntryFormView.Form form(ModelAndView page) {
        assertThat(page.getViewName()).isEqualTo("log");
        return (EntryFormView.Form) page.getModel().get("form");
    }

    static List<Field> fields(ModelAndView page) {
        EntryFormView.Form form = form(page);
        return Stream.concat(form.first().stream(), form.more().stream()).toList();
    }

    static Field field(ModelAndView page, String name) {
        return fields(page).stream()
                .filter(field -> field.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The entries of the day as they count. */
    List<Fact> facts() {
        Optional<LocalDate> day = Optional.of(MadeVisit.TODAY);
        return new ListFacts(visit.session())
                .of(day, day, Optional.empty(), Optional.empty())
                .facts();
    }

    static boolean isKept(ModelAndView page) {
        return page.getViewName().startsWith("redirect:/log?");
    }
}
