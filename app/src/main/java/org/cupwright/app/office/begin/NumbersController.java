package org.cupwright.app.office.begin;

import java.util.HashMap;
import java.util.Map;
import org.cupwright.app.desk.begin.BeginCourse;
import org.cupwright.app.desk.begin.NumberStep;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.visit.HeadingWords;
import org.cupwright.app.visit.Visit;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Third step: which green is which hole's, and from where it is played to. */
@Controller
public final class NumbersController {
    @GetMapping("/begin/numbers")
    ModelAndView numbers(Visit visit) {
        Evening evening = new Evening(visit, Step.NUMBERS);
        SettingUp stands = new BeginCourse(visit.session()).stands();
        Map<String, String> values = new HashMap<>();
        for (GreensView.Row row : new GreensView(visit.texts()).rows(stands)) {
            values.put(NumberStep.HOLE + row.number(), row.hole());
            values.put(NumberStep.PLAY + row.number(), row.play());
            values.put(NumberStep.OUT + row.number(), row.leftOut() ? "on" : "");
        }
        return page(evening, stands, evening.form(values));
    }

    @PostMapping("/begin/numbers")
    ModelAndView keep(Visit visit, @RequestParam Map<String, String> typed) {
        Evening evening = new Evening(visit, Step.NUMBERS);
        SettingUp stands = new BeginCourse(visit.session()).stands();
        return evening.keep(
                typed,
                () -> new NumberStep(visit.session()).keep(new HeadingWords(visit.texts()).inDegrees(typed)),
                Step.SETTINGS.address(),
                form -> page(evening, stands, form));
    }

    private static ModelAndView page(Evening evening, SettingUp stands, Form form) {
        GreensView view = new GreensView(evening.visit().texts());
        return evening.page("begin-numbers", form)
                .addObject("greens", view.rows(stands))
                .addObject("map", view.map(stands))
                .addObject("winds", new HeadingWords(evening.visit().texts()).all());
    }
}
