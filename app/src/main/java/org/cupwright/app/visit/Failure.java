package org.cupwright.app.visit;

import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.cupwright.app.texts.Texts;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import org.springframework.beans.TypeMismatchException;
import org.springframework.http.HttpStatus;
import org.springframework.web.ErrorResponse;

/**
 * Why somebody could not be given what was asked for, wherever on the way it failed.
 *
 * @param told in words
 * @param status of the answer
 */
public record Failure(Told told, HttpStatus status) {
    private static final System.Logger LOG = System.getLogger(Failure.class.getName());

    /** A problem that a person can mend, as it is; anything else is ours, told with a number to search the log by. */
    public static Failure of(Throwable failed, Texts texts) {
        Optional<HttpStatus> wrong = askedWrongly(failed);
        if (wrong.isPresent()) {
            return new Failure(Told.refused(wrong.get(), texts), wrong.get());
        }
        return mendable(failed)
                .map(problem -> new Failure(Told.of(problem, texts), status(problem.what())))
                .orElseGet(() -> defect(failed, texts));
    }

    /** An address or a form that is none of ours: a part is missing, or is no number, no day or no name there is. */
    private static Optional<HttpStatus> askedWrongly(Throwable failed) {
        if (failed instanceof TypeMismatchException) {
            return Optional.of(HttpStatus.BAD_REQUEST);
        }
        return failed instanceof ErrorResponse wrong && wrong.getStatusCode().is4xxClientError()
                ? Optional.of(HttpStatus.valueOf(wrong.getStatusCode().value()))
                : Optional.empty();
    }

    private static Optional<Problem> mendable(Throwable failed) {
        return Stream.iterate(failed, Objects::nonNull, Throwable::getCause)
                .flatMap(cause -> problem(cause).stream())
                .findFirst();
    }

    private static Optional<Problem> problem(Throwable cause) {
        if (cause instanceof OutOfMemoryError) {
            return Optional.of(Problem.of(Message.of("problem.memory"), Message.of("try.memory")));
        }
        return cause instanceof Problem problem ? Optional.of(problem) : Optional.empty();
    }

    private static Failure defect(Throwable failed, Texts texts) {
        String reference = UUID.randomUUID().toString().substring(0, 8);
        LOG.log(System.Logger.Level.ERROR, "reference " + reference, failed);
        return new Failure(Told.defect(reference, texts), HttpStatus.INTERNAL_SERVER_ERROR);
    }

    /**
     * Whoever may not do something is told so; what stands on another's plan is told as a conflict. What the data
     * folder does not take now is no fault of what was sent: it can be sent again.
     */
    private static HttpStatus status(Message what) {
        if (what.key().startsWith("problem.store.")) {
            return HttpStatus.SERVICE_UNAVAILABLE;
        }
        return switch (what.key()) {
            case "problem.notAllowed" -> HttpStatus.FORBIDDEN;
            case "problem.round.byAnother", "problem.planChanged", "problem.plansChanged", "problem.changedMeanwhile" ->
                HttpStatus.CONFLICT;
            case "problem.noCourse",
                    "problem.unknownCourse",
                    "problem.unknownHole",
                    "problem.noSuchWork",
                    "problem.noSheet" -> HttpStatus.NOT_FOUND;
            case "problem.memory" -> HttpStatus.SERVICE_UNAVAILABLE;
            default -> HttpStatus.UNPROCESSABLE_CONTENT;
        };
    }
}
