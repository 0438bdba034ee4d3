package org.cupwright.app.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cupwright.app.answers.Line;
import org.cupwright.app.answers.Line.Cell;
import org.cupwright.app.answers.Lines;

/** Text set into columns and lines that fit a terminal. */
public final class Layout {
    /** Widest line, characters: our choice, a terminal of 100 columns without its last two. */
    public static final int WIDTH = 98;

    private Layout() {}

    /** An answer in lines that fit, but for those that are to stay as they are. */
    public static List<String> set(Lines answer) {
        List<String> lines = new ArrayList<>();
        for (Line line : answer.all()) {
            String head = line.cells().stream().map(Layout::column).collect(Collectors.joining());
            switch (line.fit()) {
                case WHOLE -> lines.add(head + line.said().get(0));
                case WRAPPED ->
                    lines.addAll(hanging(head.length(), head, line.said().get(0)));
                case INDENTED ->
                    lines.addAll(hanging(head.length() + 2, head, line.said().get(0)));
                case FIRST -> lines.add(head + asManyAsFit(WIDTH - head.length(), line.said()));
            }
        }
        return lines;
    }

    private static String column(Cell cell) {
        if (cell.width() == 0) {
            return cell.text();
        }
        return cell.width() > 0 ? left(cell.text(), cell.width()) : right(cell.text(), -cell.width());
    }

    private static StringBuilder asManyAsFit(int width, List<String> sentences) {
        StringBuilder line = new StringBuilder();
        for (String said : sentences) {
            if (line.isEmpty() || line.length() + said.length() < width) {
                line.append(line.isEmpty() ? "" : " ").append(said);
            }
        }
        return line;
    }

    /** A paragraph in lines of at most {@link #WIDTH}, each after an indent. */
    public static List<String> wrapped(String indent, String text) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (line.length() > 0 && indent.length() + line.length() + 1 + word.length() > WIDTH) {
                lines.add(indent + line);
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(indent + line);
        return lines;
    }

    /** A paragraph that hangs below its head: the head, then the text, whose other lines are indented. */
    public static List<String> hanging(String head, String text) {
        return hanging(head.length(), head, text);
    }

    private static List<String> hanging(int indent, String head, String text) {
        List<String> lines = wrapped(" ".repeat(indent), text);
        lines.set(0, head + lines.get(0).strip());
        return lines;
    }

    /** The text with spaces after it up to a width; a longer one keeps its length and one space. */
    public static String left(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.codePointCount(0, text.length())));
    }

    /** The text with spaces before it up to a width. */
    public static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - text.codePointCount(0, text.length()))) + text;
    }
}
