package org.cupwright.app.office.frame;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import org.cupwright.app.office.frame.ProblemPages.Told;
import org.cupwright.app.office.visit.Visits;
import org.cupwright.app.texts.Texts;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.ModelAndView;

/** What somebody reads whom the doors refused, or who asked for what is not there. */
@Controller
public final class RefusalPage implements ErrorController {
    @RequestMapping("/error")
    ModelAndView refused(HttpServletRequest request) {
        HttpStatus status = status(request);
        Texts texts = Visits.words(request);
        String key = switch (status) {
            case FORBIDDEN -> "page.refused";
            case CONTENT_TOO_LARGE -> "page.tooLarge";
            default -> status.is4xxClientError() ? "page.wrong" : "problem.defect";
        };
        String tryThis = status.is4xxClientError() ? key + ".try" : "try.defect";
        ModelAndView page = new ModelAndView("problem", status);
        page.addObject("told", new Told(texts.say(key), "", "", texts.say(tryThis)));
        page.addObject("words", texts);
        return page;
    }

    private static HttpStatus status(HttpServletRequest request) {
        return request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) instanceof Integer code
                ? HttpStatus.valueOf(code)
                : HttpStatus.NOT_FOUND;
    }
}
