package org.cupwright.app.office.frame;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.app.visit.VisitArgument;
import org.cupwright.app.visit.Visits;
import org.cupwright.message.Problem;
import org.springframework.beans.TypeMismatchException;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.web.ErrorResponse;
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

    /**
     * A problem in words.
     *
     * @param what what is wrong
     * @param where what it is about
     * @param value the value found there
     * @param tryThis what to do about it
     */
    public record Told(String what, String where, String value, String tryThis) {
        /** A problem that a person can mend. */
        public static Told of(Problem problem, Texts texts) {
            return new Told(
                    texts.say(problem.what()),
                    problem.where().stream().map(texts::say).collect(Collectors.joining(", ")),
                    texts.show(problem.value()),
                    texts.say(problem.tryThis()));
        }

        /** What the doors refused, or what is not there. */
        static Told refused(HttpStatus status, Texts texts) {
            String key = switch (status.value()) { // some have two names
                case HttpServletResponse.SC_FORBIDDEN -> "page.refused";
                case HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE -> "page.tooLarge";
                default -> "page.wrong";
            };
            return new Told(texts.say(key), "", "", texts.say(key + ".try"));
        }

        /** A failure of ours, under a name in the log. */
        public static Told defect(String reference, Texts texts) {
            return new Told(texts.say("problem.defect"), "", "", texts.say("page.defect.try", reference));
        }
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
        Optional<HttpStatus> wrong = askedWrongly(failure);
        if (wrong.isPresent()) {
            return page(request, Told.refused(wrong.get(), texts), wrong.get());
        }
        Failure why = Failure.of(failure, texts);
        return page(request, why.told(), why.status());
    }

    /** An address or a form that is none of ours: a part is missing, or is no number, no day or no name there is. */
    private static Optional<HttpStatus> askedWrongly(Exception failure) {
        if (failure instanceof TypeMismatchException) {
            return Optional.of(HttpStatus.BAD_REQUEST);
        }
        return failure instanceof ErrorResponse wrong && wrong.getStatusCode().is4xxClientError()
                ? Optional.of(HttpStatus.valueOf(wrong.getStatusCode().value()))
                : Optional.empty();
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
