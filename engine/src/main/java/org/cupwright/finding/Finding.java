package org.cupwright.finding;

import java.util.ArrayList;
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
 * @param details what its sentence says beside the value
 * @param tryThis what to try
 */
public record Finding(
        FindingKind kind,
        Optional<MapPoint> place,
        Message where,
        Message.Argument value,
        List<Message.Argument> details,
        Message tryThis) {
    public Finding {
        details = List.copyOf(details);
    }

    /** A finding whose advice needs no arguments. */
    public static Finding of(FindingKind kind, Message where, Message.Argument value) {
        return new Finding(kind, Optional.empty(), where, value, List.of(), Message.of(kind.tryKey()));
    }

    /** A finding whose value is a name or what the file says. */
    public static Finding of(FindingKind kind, Message where, String value) {
        return of(kind, where, new Message.Name(value));
    }

    /** A finding whose value is a number of things. */
    public static Finding of(FindingKind kind, Message where, long count) {
        return of(kind, where, new Message.Count(count));
    }

    public Finding at(MapPoint point) {
        return new Finding(kind, Optional.of(point), where, value, details, tryThis);
    }

    /** The same with arguments for its advice. */
    public Finding trying(Message.Argument... arguments) {
        return new Finding(kind, place, where, value, details, new Message(kind.tryKey(), List.of(arguments)));
    }

    /** The same with a name as its advice's argument. */
    public Finding trying(String name) {
        return trying(new Message.Name(name));
    }

    /** The same with a number of things as its advice's argument. */
    public Finding trying(long count) {
        return trying(new Message.Count(count));
    }

    /** The same with more for its sentence to say beside the value. */
    public Finding saying(Message.Argument... arguments) {
        return new Finding(kind, place, where, value, List.of(arguments), tryThis);
    }

    /** The sentence that says what was found; its arguments are the value and the details. */
    public Message says() {
        List<Message.Argument> arguments = new ArrayList<>(List.of(value));
        arguments.addAll(details);
        return new Message(kind.key(), arguments);
    }

    /** The same as a failure, for the reader that cannot go on. */
    public UnreadableFile failure() {
        return new UnreadableFile(this);
    }

    /** The failure, with what a library said about it. */
    public UnreadableFile failure(Throwable cause) {
        return new UnreadableFile(this, cause);
    }
}
