package org.cupwright.cupchange;

import org.cupwright.message.Message;
import org.cupwright.message.Message.Argument;

/** What somebody wrote down can never have been; {@link #why} says why, for app.texts to put into words. */
public final class ImpossibleFact extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient Message why;

    ImpossibleFact(String kind, Argument... arguments) {
        this(Message.of("impossible." + kind, arguments));
    }

    private ImpossibleFact(Message why) {
        super(why.toString());
        this.why = why;
    }

    public Message why() {
        return why;
    }
}
