package org.cupwright.app.office.begin;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.app.answers.PolicyText;
import org.cupwright.app.desk.begin.FirstSettings;
import org.cupwright.app.desk.policy.PolicyEntry;
import org.cupwright.app.office.frame.SettingWords;
import org.cupwright.app.office.frame.SettingWords.Choice;
import org.cupwright.app.session.Right;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Fourth step: a dozen settings. */
@Controller
public final class SettingsStepController {
    /**
     * A question.
     *
     * @param field where it is answered
     * @param unit of the value; may be empty
     * @param accepts which values it takes
     * @param came the value it came with
     * @param choices where it is one of a few; empty where it is typed
     */
    record Question(Form.Field field, String unit, String accepts, String came, List<Choice> choices) {}

    @GetMapping("/begin/settings")
    ModelAndView settings(Visit visit) {
        Evening evening = new Evening(visit, Step.SETTINGS);
        List<PolicyEntry> asked = new FirstSettings(visit.session()).asked();
        Map<String, String> values = new HashMap<>();
        asked.forEach(entry -> values.put(entry.setting().key(), entry.value()));
        return page(evening, asked, evening.form(values));
    }

    @PostMapping("/begin/settings")
    ModelAndView keep(Visit visit, @RequestParam Map<String, String> typed) {
        Evening evening = new Evening(visit, Step.SETTINGS);
        FirstSettings settings = new FirstSettings(visit.session());
        return evening.keep(
                typed, () -> settings.keep(typed), Step.LOOK.address(), form -> page(evening, settings.asked(), form));
    }

    private static ModelAndView page(Evening evening, List<PolicyEntry> asked, Form form) {
        Texts texts = evening.visit().texts();
        return evening.page("begin-settings", form)
                .addObject("maySet", evening.visit().may(Right.SET))
                .addObject(
                        "questions",
                        asked.stream()
                                .map(entry -> question(entry, form, texts))
                                .toList());
    }

    private static Question question(PolicyEntry entry, Form form, Texts texts) {
        PolicyText words = new PolicyText(texts);
        SettingWords values = new SettingWords(texts);
        String key = entry.setting().key();
        Form.Field field = new Form.Field(key, words.says(entry), "", form.value(key), form.problem(key));
        return new Question(
                field,
                entry.setting().unit().isEmpty()
                        ? ""
                        : texts.say(entry.setting().unitKey()),
                values.accepts(entry),
                entry.defaultText().isEmpty() ? "" : texts.say("begin.came", values.shown(entry, entry.defaultText())),
                values.choices(entry));
    }
}
