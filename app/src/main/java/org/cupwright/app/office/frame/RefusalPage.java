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
        ModelAndView page = new ModelAndView("problem", status);
        page.addObject("told", status.is4xxClientError() ? told(status, texts) : defect(request, texts));
        page.addObject("words", texts);
        return page;
    }

    private static Told told(HttpStatus status, Texts texts) {
        String key = switch (status) {
            case FORBIDDEN -> "page.refused";
            case CONTENT_TOO_LARGE -> "page.tooLarge";
            default -> "page.wrong";
        };
        return new Told(texts.say(key), "", "", texts.say(key + ".try"));
    }

    /** What failed while the page was laid out; whatever failed before is told by {@link ProblemPages}. */
    private static Told defect(HttpServletRequest request, Texts texts) {
        return ProblemPages.defect((Throwable) request.getAttribute(RequestDispatcher.ERROR_EXCEPTION), texts);
    }

    private static HttpStatus status(HttpServletRequest request) {
        return request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) instanceof Integer code
                ? HttpStatus.valueOf(code)
                : HttpStatus.NOT_FOUND;
    }
}
