package org.cupwright.app.office.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.cupwright.app.desk.begin.BeginCourse;
import org.cupwright.app.desk.begin.MapStep;
import org.cupwright.app.desk.begin.NumberStep;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.finding.Finding;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Second step: the greens, by a map file here and by two other ways on pages of their own. */
@Controller
public final class GreensController {
    @GetMapping("/begin/greens")
    ModelAndView greens(Visit visit) {
        return page(new Evening(visit, Step.GREENS), Form.of(visit.texts(), Map.of()));
    }

    /** Takes in a map's greens. */
    @PostMapping("/begin/greens/map")
    ModelAndView map(Visit visit, @RequestParam(required = false) MultipartFile file, RedirectAttributes next) {
        Evening evening = new Evening(visit, Step.GREENS);
        boolean none = file == null || file.isEmpty();
        String name = none || file.getOriginalFilename() == null ? "" : file.getOriginalFilename();
        return evening.keep(
                Map.of(),
                () -> {
                    MapStep step = new MapStep(visit.session());
                    if (none) {
                        step.refuseNoFile();
                    }
                    MapStep.Brought brought = step.keep(new SourceFile(name, file::getInputStream));
                    next.addFlashAttribute("said", said(brought, visit.texts()));
                },
                Step.GREENS.address(),
                form -> page(evening, form));
    }

    private static List<String> said(MapStep.Brought brought, Texts texts) {
        List<String> said = new ArrayList<>();
        said.add(texts.say("begin.map.brought", brought.added(), brought.there()));
        for (Finding finding : brought.findings()) {
            String where = texts.say(finding.where());
            said.add(texts.say(finding.says()) + " (" + where + ") " + texts.say(finding.tryThis()));
        }
        return said;
    }

    /** Takes a green away for good. */
    @PostMapping("/begin/greens/remove")
    String remove(Visit visit, @RequestParam int green) {
        new NumberStep(visit.session()).remove(green);
        return "redirect:" + Step.GREENS.address();
    }

    private static ModelAndView page(Evening evening, Form form) {
        SettingUp stands = new BeginCourse(evening.visit().session()).stands();
        GreensView view = new GreensView(evening.visit().texts());
        return evening.page("begin-greens", form)
                .addObject("greens", view.rows(stands))
                .addObject("map", view.map(stands));
    }
}
