package org.cupwright.message;

import java.util.List;

/**
 * Something that keeps a task from being done and that the person can mend: what it is, where, the value that caused
 * it, and what to try. Not a defect, so it carries no stack trace.
 */
public final class Problem extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Message what;
    private final transient List<Message> where;
    private final transient Message.Argument value;
    private final transient Message tryThis;

    /**
     * @param what what is wrong
     * @param where the file, option, hole or folder it is about, from the greater to the smaller
     * @param value the value found there; an empty name where there is none
     * @param tryThis what the person can do about it
     */
    public Problem(Message what, List<Message> where, Message.Argument value, Message tryThis) {
        super(what.key() + ": " + value, null, false, false);
        this.what = what;
        this.where = List.copyOf(where);
        this.value = value;
        this.tryThis = tryThis;
    }

    /** A problem with a line or a cell of a table; where that is, whoever reads the table knows. */
    public static Problem of(Message what, Message tryThis) {
        return new Problem(what, List.of(), new Message.Name(""), tryThis);
    }

    /** A problem with a value that stands as it was written. */
    public static Problem of(Message what, Message where, String value, Message tryThis) {
        return new Problem(what, List.of(where), new Message.Name(value), tryThis);
    }

    /** A problem with a field of what was asked for. */
    public static Problem of(Message what, String field, Object value, Message tryThis) {
        return of(what, Message.of("where.field", new Message.Field(field)), value.toString(), tryThis);
    }

    /** One whose two sentences have one name and speak of the same: {@code problem.noPlan} and {@code try.noPlan}. */
    public static Problem of(String name, String field, Object value, Message.Argument... about) {
        return of(Message.of("problem." + name, about), field, value, Message.of("try." + name, about));
    }

    public Message what() {
        return what;
    }

    public List<Message> where() {
        return where;
    }

    public Message.Argument value() {
        return value;
    }

    public Message tryThis() {
        return tryThis;
    }
}
