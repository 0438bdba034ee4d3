package org.cupwright.app.office.frame;

import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.answers.Line;
import org.cupwright.app.answers.Lines;

/**
 * A line of an answer as pages set it: as wide as there is room.
 *
 * @param head what stands before it: a sign, a hole
 * @param text what is said
 */
public record Paragraph(String head, String text) {
    /** All lines of an answer that say something. */
    public static List<Paragraph> all(Lines lines) {
        return lines.all().stream().flatMap(Paragraph::of).toList();
    }

    private static Stream<Paragraph> of(Line line) {
        String head = String.join(
                        " ", line.cells().stream().map(Line.Cell::text).toList())
                .strip();
        String text = String.join(" ", line.said()).strip();
        return head.isEmpty() && text.isEmpty() ? Stream.empty() : Stream.of(new Paragraph(head, text));
    }

    /** Both, one after the other. */
    public String whole() {
        return (head + " " + text).strip();
    }
}
