package org.cupwright.app.storage;

import java.util.List;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * A row of what is kept that is not as it was written, or cannot be read.
 *
 * @param table the table it stands in
 * @param number its number there
 */
public record DamagedRow(String table, long number) {
    public Message where() {
        return Message.of("where.row", new Name(table), new Count(number));
    }

    /** Nothing can be answered without the row. */
    public Problem problem(Argument why) {
        return new Problem(Message.of("problem.store.row"), List.of(where()), why, Message.of("try.store.row"));
    }
}
