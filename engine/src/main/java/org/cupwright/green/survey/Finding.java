package org.cupwright.green.survey;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Message;

/**
 * A problem of survey data, told with enough detail to mend the source.
 *
 * @param kind what is wrong
 * @param place where on the course, when it has a place there
 * @param where where in the source: a line of the file, a feature, a hole
 * @param value what was found there: the number or the words that are wrong
 * @param tryThis what to try
 */
public record Finding(
        FindingKind kind, Optional<MapPoint> place, Message where, Message.Argument value, Message tryThis) {

    /** A finding whose advice needs no arguments. */
    public static Finding of(FindingKind kind, Message where, Message.Argument value) {
        return new Finding(kind, Optional.empty(), where, value, Message.of(kind.tryKey()));
    }

    public Finding at(MapPoint point) {
        return new Finding(kind, Optional.of(point), where, value, tryThis);
    }

    /** The same with arguments for its advice. */
    public Finding trying(Message.Argument... arguments) {
        return new Finding(kind, place, where, value, new Message(kind.tryKey(), List.of(arguments)));
    }

    /** The sentence that says what was found; its one argument is the value. */
    public Message says() {
        return Message.of(kind.key(), value);
    }

    /** The same as a failure, for the reader that cannot go on. */
    public UnreadableSurvey failure() {
        return new UnreadableSurvey(this);
    }

    /** The failure, with what a library said about it. */
    public UnreadableSurvey failure(Throwable cause) {
        return new UnreadableSurvey(this, cause);
    }
}
