package org.cupwright.app.office.log;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.desk.entry.CorrectFact;
import org.cupwright.app.desk.entry.ListFacts;
import org.cupwright.app.desk.entry.SeeToOdd;
import org.cupwright.app.office.log.EntryFormView.Form;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.Course;
import org.springframework.http.HttpStatus;
import org.springframework.web.servlet.ModelAndView;

/** Puts the page of the logbook together: the day, and whatever is being written down beside it. */
record LogPage(Visit visit, HttpStatus status) {
    private static final String NAME = "log";

    LogPage(Visit visit) {
        this(visit, HttpStatus.OK);
    }

    /** With a form for a new entry. */
    ModelAndView adding(Chosen chosen) {
        return with(course -> new EntryFormView(visit, course).blank(chosen), chosen.address());
    }

    /** With a form that was filled in. */
    ModelAndView with(Maker form, String chosen) {
        Optional<LocalDate> day = Optional.of(visit.date());
        ListFacts.Answer answer = new ListFacts(visit.session()).of(day, day, Optional.empty(), Optional.empty());
        SeeToOdd.Unseen unseen = new SeeToOdd(visit.session()).unseen(visit.date());
        ModelAndView page = new ModelAndView(NAME, status);
        page.addObject("log", new LogView(visit).of(answer, unseen));
        page.addObject("form", form.of(answer.course()));
        page.addObject("chosen", chosen);
        return page;
    }

    /** With the question whether an entry is to be withdrawn. */
    ModelAndView withdrawing(String id) {
        CorrectFact.Standing standing = new CorrectFact(visit.session()).standing(id);
        FactText words = new FactText(visit.texts(), standing.course(), standing.policy());
        Form form = new Form(
                "", "/log/withdraw", id, visit.session().ids().get(), List.of(), List.of(), false, "", false, false);
        return with(course -> form, "")
                .addObject("withdrawing", words.moment(standing.was()) + " " + words.told(standing.was()));
    }

    /** Makes a form for the course. */
    interface Maker {
        Form of(Course course);
    }
}
