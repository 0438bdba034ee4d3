package org.cupwright.app.storage.json;

import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;

/** Something that was to be a fact and is not. */
public final class UnreadableFact extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String where;

    private UnreadableFact(String where, String why, JacksonException cause) {
        super(why, cause);
        this.where = where;
    }

    static UnreadableFact of(JacksonException cause) {
        String where = cause.getPath().stream()
                .map(step -> step.getPropertyName() == null ? "[" + step.getIndex() + "]" : step.getPropertyName())
                .collect(Collectors.joining("."));
        Throwable root = cause.getCause() instanceof IllegalArgumentException told ? told : cause;
        String why = root instanceof JacksonException json ? json.getOriginalMessage() : root.getMessage();
        why = why.startsWith("Cannot map `null`") ? "nothing is given, and something must be" : why;
        return new UnreadableFact(where, why, cause);
    }

    /** The property at which it went wrong, as {@code payload.cutAt.east}; empty for the whole. */
    public String where() {
        return where;
    }
}
