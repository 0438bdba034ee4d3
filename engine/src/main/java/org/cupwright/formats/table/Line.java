package org.cupwright.formats.table;

import java.util.List;
import org.cupwright.formats.Excerpt;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;

/**
 * A line of a table.
 *
 * @param number the number in the file of the line with which it begins, the first being 1
 * @param text what that line says
 * @param fields its fields as they stand there, blanks about them included
 */
public record Line(long number, String text, List<String> fields) {
    /** A field without the blanks about it; empty where there is no such column. */
    public String field(int column) {
        return column >= 0 && column < fields.size() ? fields.get(column).strip() : "";
    }

    /** The line as one that does not read. */
    public NotReadLine notRead(Problem why) {
        return new NotReadLine(number, Excerpt.of(text), shortened(why.what()), shortened(why.tryThis()));
    }

    /** A cell may be as long as a line; nobody reads that in a sentence. */
    private static Message shortened(Message message) {
        return new Message(
                message.key(), message.arguments().stream().map(Line::shortened).toList());
    }

    private static Message.Argument shortened(Message.Argument argument) {
        if (argument instanceof Message.Said said) {
            return new Message.Said(said.all().stream().map(Line::shortened).toList());
        }
        return argument instanceof Message.Name name ? new Message.Name(Excerpt.of(name.text())) : argument;
    }
}
