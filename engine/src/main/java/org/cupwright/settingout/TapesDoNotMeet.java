package org.cupwright.settingout;

import org.cupwright.message.Message;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;

/**
 * Two tapes that do not meet at an angle, as {@link #why} says: maybe a distance was misread, or a mark mistaken for
 * another.
 */
public final class TapesDoNotMeet extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient Message why;

    TapesDoNotMeet(Tape first, Tape second) {
        this(Message.of(
                "impossible.tapes",
                new Length(first.metres()),
                new Name(first.mark().name()),
                new Length(second.metres()),
                new Name(second.mark().name()),
                new Length(first.mark().at().distanceMetres(second.mark().at()))));
    }

    private TapesDoNotMeet(Message why) {
        super(why.toString());
        this.why = why;
    }

    public Message why() {
        return why;
    }
}
