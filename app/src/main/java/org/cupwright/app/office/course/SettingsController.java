package org.cupwright.app.office.course;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.cupwright.app.desk.policy.ChangePolicy;
import org.cupwright.app.desk.policy.ChangePolicy.Wanted;
import org.cupwright.app.desk.policy.PolicyEntry;
import org.cupwright.app.desk.policy.Settings;
import org.cupwright.app.desk.policy.ShowPolicy;
import org.cupwright.app.session.Right;
import org.cupwright.app.storage.DayRange;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.PolicyCatalogue;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The page of the settings. */
@Controller
public final class SettingsController {
    private final PolicyCatalogue catalogue = Settings.catalogue();

    /**
     * All settings, those that hold certain words, or one to be changed.
     *
     * @param find words to look for
     * @param key the setting to be changed
     */
    @GetMapping("/course/settings")
    ModelAndView settings(
            Visit visit, @RequestParam(defaultValue = "") String find, @RequestParam(defaultValue = "") String key) {
        if (!key.isBlank()) {
            ShowPolicy policy = new ShowPolicy(visit.session(), catalogue);
            String value = policy.one(visit.date(), key).value();
            return one(visit, key, value, visit.date().toString(), "");
        }
        ShowPolicy policy = new ShowPolicy(visit.session(), catalogue);
        SettingsView view = SettingsView.of(policy, visit.texts(), visit.date());
        List<PolicyEntry> all = policy.all(visit.date());
        return page(visit)
                .addObject("find", find)
                .addObject(
                        "groups",
                        find.isBlank() ? view.groups(policy.first(visit.date()), all) : view.found(all, find.strip()));
    }

    /** Sets one from a day on, or says why not. */
    @PostMapping("/course/settings")
    ModelAndView set(
            Visit visit,
            @RequestParam String key,
            @RequestParam String value,
            @RequestParam String from,
            RedirectAttributes next) {
        try {
            LocalDate day = day(from, visit);
            new ChangePolicy(visit.session(), catalogue).set(day, List.of(new Wanted(key, value)));
            next.addFlashAttribute(
                    "said",
                    List.of(visit.texts()
                            .say(
                                    "course.settings.set",
                                    SettingsView.name(visit.texts(), key),
                                    value,
                                    visit.texts().day(day))));
            return new ModelAndView("redirect:/course/settings?key=" + key + "&date=" + visit.date());
        } catch (Problem refused) {
            String why = visit.texts().say(refused.what()) + " " + visit.texts().say(refused.tryThis());
            ModelAndView again = one(visit, key, value, from, why);
            again.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
            return again;
        }
    }

    private ModelAndView one(Visit visit, String key, String text, String from, String problem) {
        ShowPolicy policy = new ShowPolicy(visit.session(), catalogue);
        SettingsView view = SettingsView.of(policy, visit.texts(), visit.date());
        PolicyEntry entry = policy.one(visit.date(), key);
        return page(visit).addObject("one", view.one(entry, policy.changes(key), text, from, problem));
    }

    private static ModelAndView page(Visit visit) {
        return new ModelAndView("settings")
                .addObject("maySet", visit.may(Right.SET))
                .addObject("mayBring", visit.may(Right.SURVEY));
    }

    private static LocalDate day(String text, Visit visit) {
        try {
            return DayRange.upTo(visit.today()).within(LocalDate.parse(text.strip()), "from");
        } catch (DateTimeParseException wrong) {
            throw Problem.of("notADay", "from", text, new Name(text));
        }
    }
}
