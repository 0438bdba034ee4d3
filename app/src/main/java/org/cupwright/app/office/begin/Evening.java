package org.cupwright.app.office.begin;

import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.begin.BeginCourse;
import org.cupwright.app.desk.begin.WrongFields;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.visit.Visit;
import org.springframework.http.HttpStatus;
import org.springframework.web.servlet.ModelAndView;

/** What the pages of all steps have in common. */
record Evening(Visit visit, Step step) {
    /** Something that keeps what was typed, or says what is wrong with it. */
    interface Keeping {
        void keep();
    }

    /** How a page is made of its form. */
    interface Page {
        ModelAndView of(Form form);
    }

    Optional<SettingUp> stands() {
        return new BeginCourse(visit.session()).find();
    }

    /** A page of the step, under the row of all steps. */
    ModelAndView page(String view, Form form) {
        return new ModelAndView(view)
                .addObject("steps", Step.shown(step, stands()))
                .addObject("form", form);
    }

    Form form(Map<String, String> values) {
        return Form.of(visit.texts(), values);
    }

    /** Keeps and goes on; where something is wrong the page comes back with what was typed. */
    ModelAndView keep(Map<String, String> typed, Keeping keeping, String next, Page again) {
        try {
            keeping.keep();
            return new ModelAndView("redirect:" + next);
        } catch (WrongFields wrong) {
            ModelAndView page = again.of(new Form(visit.texts(), typed, wrong.byField()));
            page.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
            return page;
        }
    }
}
