package org.cupwright.app.office.sheet;

import java.util.List;
import org.cupwright.app.desk.policy.GiveOutSheet;
import org.cupwright.app.session.Right;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Problem;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Where today's sheet is given out to strangers, or not. */
@Controller
public final class OpenSheetController {
    @GetMapping("/course/sheet")
    ModelAndView page(Visit visit) {
        return page(visit, new GiveOutSheet(visit.session()).show().office(), "");
    }

    @PostMapping("/course/sheet/open")
    String open(Visit visit, RedirectAttributes next) {
        new GiveOutSheet(visit.session()).open();
        return said(visit, next, "openSheet.opened");
    }

    @PostMapping("/course/sheet/anew")
    String anew(Visit visit, RedirectAttributes next) {
        new GiveOutSheet(visit.session()).linkAnew();
        return said(visit, next, "openSheet.linkedAnew");
    }

    @PostMapping("/course/sheet/close")
    String close(Visit visit, RedirectAttributes next) {
        new GiveOutSheet(visit.session()).close();
        return said(visit, next, "openSheet.closed");
    }

    /** Under which address readers find the office. */
    @PostMapping("/course/sheet/office")
    ModelAndView office(Visit visit, @RequestParam(defaultValue = "") String address, RedirectAttributes next) {
        try {
            new GiveOutSheet(visit.session()).foundAt(address);
            return new ModelAndView(said(visit, next, "openSheet.office.kept"));
        } catch (Problem refused) {
            ModelAndView again = page(visit, address, visit.texts().say(refused.tryThis()));
            again.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
            return again;
        }
    }

    private static ModelAndView page(Visit visit, String typed, String problem) {
        GiveOutSheet.Answer sheet = new GiveOutSheet(visit.session()).show();
        return new ModelAndView("open-sheet")
                .addObject("sheet", sheet)
                .addObject("typed", typed)
                .addObject("problem", problem)
                .addObject("maySet", true)
                .addObject("mayBring", visit.may(Right.SURVEY));
    }

    private static String said(Visit visit, RedirectAttributes next, String key) {
        next.addFlashAttribute("said", List.of(visit.texts().say(key)));
        return "redirect:/course/sheet?date=" + visit.date();
    }
}
