package org.cupwright.app.answers;

import java.util.List;

/**
 * A line of an answer: what stands in columns, then what is said. How wide a line may be is each door's own business.
 *
 * @param cells the columns, which come first
 * @param said sentences in their order; most lines have one
 * @param fit what becomes of sentences that are longer than a line may be
 */
public record Line(List<Cell> cells, List<String> said, Fit fit) {
    public Line {
        cells = List.copyOf(cells);
        said = List.copyOf(said);
    }

    /** What becomes of sentences that are longer than a line may be. */
    public enum Fit {
        /** They stay as they are. */
        WHOLE,
        /** They go on below, under where they began. */
        WRAPPED,
        /** The same, a little further in. */
        INDENTED,
        /** Those that do not fit are left out, the first excepted. */
        FIRST
    }

    /**
     * One column.
     *
     * @param text what stands there
     * @param width so many characters wide at least; below 0 as many, the text at the right
     */
    public record Cell(String text, int width) {}

    /** A column with its text at the left, and a blank after it. */
    static Cell left(String text, int width) {
        return new Cell(text, width);
    }

    /** A column with its text at the right. */
    static Cell right(String text, int width) {
        return new Cell(text, -width);
    }
}
