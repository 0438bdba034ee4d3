package org.cupwright.formats.table;

import java.util.Optional;

/** A line of a table, by its columns. */
public final class Row {
    private final Layout layout;
    private final Line line;

    Row(Layout layout, Line line) {
        this.layout = layout;
        this.line = line;
    }

    public Line line() {
        return line;
    }

    /** Whether the table has a column. */
    public boolean has(Column<?> column) {
        return layout.has(column);
    }

    /** What stands in a column without the blanks about it; empty where nothing does, or the table does not have it. */
    public String text(Column<?> column) {
        return line.field(layout.place(column));
    }

    /**
     * The value in a column; empty where nothing stands in it.
     *
     * @throws NotRead where what stands there is none, in the column's own words
     */
    public <T> Optional<T> find(Column<T> column) throws NotRead {
        return column.read(text(column), layout.writing(column));
    }
}
