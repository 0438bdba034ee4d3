package org.cupwright.app.storage.json;

import java.util.stream.Collectors;
import org.cupwright.cupchange.ImpossibleFact;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Said;
import tools.jackson.core.JacksonException;

/** Something that was to be a fact and is not. */
public final class UnreadableFact extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Nobody reads more of what the reader of JSON says, which repeats what it was given: our choice. */
    private static final int MOST_SIGNS = 200;

    private final String where;
    private final transient Argument why;

    private UnreadableFact(String where, Argument why, JacksonException cause) {
        super(why.toString(), cause);
        this.where = where;
        this.why = why;
    }

    static UnreadableFact of(JacksonException cause) {
        String where = cause.getPath().stream()
                .map(step -> step.getPropertyName() == null ? "[" + step.getIndex() + "]" : step.getPropertyName())
                .collect(Collectors.joining("."));
        return new UnreadableFact(where, why(cause), cause);
    }

    /** JSON's own word for nothing. */
    static UnreadableFact nothing() {
        return new UnreadableFact("", new Said(Message.of("impossible.nothing")), null);
    }

    /** What a fact's own checks say; else what the reader of JSON says, in its own words. */
    private static Argument why(JacksonException cause) {
        if (cause.getCause() instanceof ImpossibleFact impossible) {
            return new Said(impossible.why());
        }
        if (cause.getCause() instanceof IllegalArgumentException) {
            return new Said(Message.of("impossible.part"));
        }
        String told = cause.getOriginalMessage();
        if (told.startsWith("Cannot map `null`")) {
            return new Said(Message.of("impossible.nothing"));
        }
        return new Name(told.length() <= MOST_SIGNS ? told : told.substring(0, MOST_SIGNS) + "…");
    }

    /** The property at which it went wrong, as {@code payload.cutAt.east}; empty for the whole. */
    public String where() {
        return where;
    }

    /** Why it is none, within a sentence. */
    public Argument why() {
        return why;
    }
}
