package org.cupwright.app.visit;

import jakarta.servlet.http.HttpServletResponse;
import java.util.stream.Collectors;
import org.cupwright.app.texts.Texts;
import org.cupwright.message.Problem;
import org.springframework.http.HttpStatus;

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
    public static Told refused(HttpStatus status, Texts texts) {
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
