package org.cupwright.formats.table;

import org.cupwright.message.Message;

/** Why a line of a table does not read: what is wrong, and what to try. */
public final class NotRead extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Message what;
    private final transient Message tryThis;

    public NotRead(Message what, Message tryThis) {
        super(what.key());
        this.what = what;
        this.tryThis = tryThis;
    }

    public Message what() {
        return what;
    }

    public Message tryThis() {
        return tryThis;
    }
}
