package org.cupwright.app.office.training;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.desk.training.ShowTraining;
import org.cupwright.app.desk.training.SignOff;
import org.cupwright.app.session.Right;
import org.cupwright.app.storage.training.Skill;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The pages of training. */
@Controller
public final class TrainingController {
    private static final String PAGE = "/course/training";

    /** Everybody by skills; whoever only reads sees what there is of herself. */
    @GetMapping(PAGE)
    String everybody(Visit visit, Model model) {
        if (!visit.may(Right.RECORD)) {
            return person(visit, model, new ShowTraining(visit.session()).mine());
        }
        model.addAttribute("training", new TrainingView(visit.texts()).of(new ShowTraining(visit.session()).all()));
        return ways(visit, model, "training");
    }

    @GetMapping(PAGE + "/person")
    String person(Visit visit, Model model, @RequestParam String name) {
        return person(visit, model, new ShowTraining(visit.session()).person(name));
    }

    private static String person(Visit visit, Model model, ShowTraining.History history) {
        model.addAttribute("person", new TrainingView(visit.texts()).of(history));
        return ways(visit, model, "training-person");
    }

    private static String ways(Visit visit, Model model, String page) {
        model.addAttribute("mayBring", visit.may(Right.SURVEY));
        model.addAttribute("mayName", visit.may(Right.PEOPLE));
        model.addAttribute("today", visit.today());
        return page;
    }

    @PostMapping(PAGE + "/sign-off")
    String signOff(
            Visit visit,
            @RequestParam String name,
            @RequestParam Skill skill,
            @RequestParam(defaultValue = "") String from) {
        SignOff.Answer kept = new SignOff(visit.session()).person(name, skill, day(from));
        return to(visit, kept.person());
    }

    @PostMapping(PAGE + "/withdraw")
    String withdraw(Visit visit, @RequestParam String name, @RequestParam Skill skill, @RequestParam String reason) {
        return to(
                visit,
                new SignOff(visit.session()).withdraw(name, skill, reason).person());
    }

    /** @param from the day that was meant; empty: it should not have been written */
    @PostMapping(PAGE + "/correct")
    String correct(
            Visit visit,
            @RequestParam UUID record,
            @RequestParam(defaultValue = "") String from,
            @RequestParam String reason) {
        return to(
                visit,
                new SignOff(visit.session()).correct(record, day(from), reason).person());
    }

    @PostMapping(PAGE + "/trainer")
    String trainer(Visit visit, @RequestParam String name, @RequestParam boolean may) {
        new SignOff(visit.session()).trainer(name, may);
        return "redirect:" + visit.inCourse(PAGE);
    }

    private static String to(Visit visit, String name) {
        return "redirect:" + visit.inCourse(PAGE + "/person?name=" + URLEncoder.encode(name, StandardCharsets.UTF_8));
    }

    private static Optional<LocalDate> day(String typed) {
        try {
            return typed.isBlank() ? Optional.empty() : Optional.of(LocalDate.parse(typed.strip()));
        } catch (DateTimeException none) {
            throw Problem.of("notADay", "from", typed, new Name(typed));
        }
    }
}
