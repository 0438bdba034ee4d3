package org.cupwright.app.office.frame;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Failure;
import org.cupwright.app.visit.Told;
import org.cupwright.app.visit.Visits;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.ModelAndView;

/** What somebody reads whom the doors refused, who asked for what is not there, or where the doors failed. */
@Controller
public final class RefusalPage implements ErrorController {
    @RequestMapping("/error")
    ModelAndView refused(HttpServletRequest request) {
        Texts texts = Visits.words(request);
        HttpStatus status = status(request);
        if (status.is4xxClientError()) {
            return page(Told.refused(status, texts), status, texts);
        }
        Failure why = Failure.of((Throwable) request.getAttribute(RequestDispatcher.ERROR_EXCEPTION), texts);
        return page(why.told(), why.status(), texts);
    }

    private static ModelAndView page(Told told, HttpStatus status, Texts texts) {
        ModelAndView page = new ModelAndView("problem", status);
        page.addObject("told", told);
        page.addObject("words", texts);
        return page;
    }

    private static HttpStatus status(HttpServletRequest request) {
        return request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) instanceof Integer code
                ? HttpStatus.valueOf(code)
                : HttpStatus.NOT_FOUND;
    }
}
