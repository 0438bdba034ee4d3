package org.cupwright.app.office.frame;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Failure;
import org.cupwright.app.visit.Told;
import org.cupwright.app.visit.Visit;
import org.cupwright.app.visit.VisitArgument;
import org.cupwright.app.visit.Visits;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.servlet.ModelAndView;

/** What somebody reads who could not be given what was asked for. */
@ControllerAdvice
public final class ProblemPages {
    private static final System.Logger LOG = System.getLogger(ProblemPages.class.getName());

    private final FrameAround frames;

    public ProblemPages(FrameAround frames) {
        this.frames = frames;
    }

    @ExceptionHandler(AccessDeniedException.class)
    void refused(AccessDeniedException refused) {
        throw refused; // for whoever guards the doors
    }

    /** Whoever went away in the middle of the answer is told nothing. */
    @ExceptionHandler(Exception.class)
    ModelAndView failed(Exception failure, HttpServletRequest request, HttpServletResponse response) {
        if (response.isCommitted()) {
            LOG.log(System.Logger.Level.DEBUG, "nobody waits for the answer", failure);
            return null;
        }
        Texts texts = texts(request);
        Failure why = Failure.of(failure, texts);
        return page(request, why.told(), why.status());
    }

    private ModelAndView page(HttpServletRequest request, Told told, HttpStatus status) {
        boolean part = request.getHeader("HX-Request") != null;
        ModelAndView page = new ModelAndView(part ? "problem :: box" : "problem", status);
        page.addObject("told", told);
        page.addObject("words", texts(request));
        frames.put(page, request);
        return page;
    }

    private static Texts texts(HttpServletRequest request) {
        return VisitArgument.of(request).map(Visit::texts).orElseGet(() -> Visits.words(request));
    }
}
