package org.cupwright.app.field;

import jakarta.servlet.http.HttpServletRequest;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Failure;
import org.cupwright.app.visit.Told;
import org.cupwright.app.visit.Visit;
import org.cupwright.app.visit.VisitArgument;
import org.cupwright.app.visit.Visits;
import org.cupwright.message.Problem;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.ResponseEntity;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import tools.jackson.databind.node.ObjectNode;

/** What the changer's page is told when something cannot be had: as the commands tell it with {@code --json}. */
@ControllerAdvice(assignableTypes = {RoundController.class, LearningController.class})
@Order(Ordered.HIGHEST_PRECEDENCE)
final class RoundProblems {
    @ExceptionHandler(AccessDeniedException.class)
    void refused(AccessDeniedException refused) {
        throw refused; // for whoever guards the doors
    }

    @ExceptionHandler(Exception.class)
    ResponseEntity<String> failed(Exception failure, HttpServletRequest request) {
        Texts texts = VisitArgument.of(request).map(Visit::texts).orElseGet(() -> Visits.words(request));
        Failure why = Failure.of(failure, texts);
        Told told = why.told();
        ObjectNode error = Json.object();
        error.put("error", told.what());
        error.put("problem", failure instanceof Problem problem ? problem.what().key() : "");
        error.put("where", told.where());
        error.put("value", told.value());
        error.put("tryThis", told.tryThis());
        return RoundController.json(why.status().value(), error);
    }
}
