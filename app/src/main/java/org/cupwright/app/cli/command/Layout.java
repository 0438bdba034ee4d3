package org.cupwright.app.cli.command;

import java.util.ArrayList;
import java.util.List;

/** Text set into columns and lines that fit a terminal. */
public final class Layout {
    /** Widest line, characters: our choice, a terminal of 100 columns without its last two. */
    public static final int WIDTH = 98;

    private Layout() {}

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
    public static List<String> hanging(int indent, String head, String text) {
        List<String> lines = wrapped(" ".repeat(indent), text);
        lines.set(0, head + lines.get(0).strip());
        return lines;
    }

    public static List<String> hanging(String head, String text) {
        return hanging(head.length(), head, text);
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
