package org.cupwright.app.office.begin;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.cupwright.app.desk.begin.FinishCourse;
import org.cupwright.app.desk.begin.LookOver;
import org.cupwright.app.desk.begin.LookOver.Remark;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;

/** Fifth step: all greens looked over, then the course is made. */
@Controller
public final class LookController {
    /** A remark in words, and the step where it is mended. */
    record Said(String what, String tryThis, String address) {}

    @GetMapping("/begin/look")
    ModelAndView look(Visit visit) {
        LookOver.Answer seen = new LookOver(visit.session()).of();
        Evening evening = new Evening(visit, Step.LOOK);
        GreensView view = new GreensView(visit.texts());
        return evening.page("begin-look", evening.form(Map.of()))
                .addObject("missing", said(seen.missing(), visit.texts()))
                .addObject("doubtful", said(seen.doubtful(), visit.texts()))
                .addObject("count", seen.stands().ofHoles().size())
                .addObject(
                        "out",
                        seen.stands().greens().size() - seen.stands().ofHoles().size())
                .addObject("name", seen.stands().place().name())
                .addObject("small", view.small(seen.stands()))
                .addObject("map", view.map(seen.stands()));
    }

    private static List<Said> said(List<Remark> remarks, Texts texts) {
        return remarks.stream()
                .map(remark -> new Said(
                        texts.say(remark.says()),
                        texts.say(remark.tryThis()),
                        Step.valueOf(remark.about().name().toUpperCase(Locale.ROOT))
                                .address()))
                .toList();
    }

    /** Makes the course. */
    @PostMapping("/begin/finish")
    String finish(Visit visit) {
        new FinishCourse(visit.session()).finish();
        return "redirect:" + Step.PRINT.address();
    }
}
