package org.cupwright.formats.items;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.Excerpt;
import org.cupwright.formats.table.Column;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.Line;
import org.cupwright.formats.table.Table;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.OnConvention;
import org.cupwright.green.Side;
import org.cupwright.message.Message;

/**
 * A table of spots on greens, one a line: {@code hole}, and the place as {@code east,north} in the course's frame, or
 * as {@code on,side} in paces ({@code 22,L5}: from the left edge as seen from the fairway).
 */
record SpotTable(Table table, Layout layout, Course course, OnConvention convention, double paceMetres) {
    static final Column<String> HOLE = Column.text("hole").needed();
    private static final Column<Double> EAST = Column.number("east");
    private static final Column<Double> NORTH = Column.number("north");
    private static final Column<Double> ON = Column.number("on");
    private static final Column<String> SIDE = Column.text("side");
    private static final long MAX_BYTES = 4L << 20;

    /**
     * Reads the first line.
     *
     * @param in the file; not closed
     * @param columns what the table has beside the hole and the place
     * @param convention from where "on" is measured
     * @param paceMetres length of the pace in which on and side are given
     * @throws UnreadableFile if the file is empty, no text, or columns are missing
     */
    static SpotTable of(
            InputStream in, List<Column<?>> columns, Course course, OnConvention convention, double paceMetres)
            throws IOException {
        Table table = Table.ofLines(in, MAX_BYTES);
        List<Column<?>> all = new ArrayList<>(List.of(HOLE, EAST, NORTH, ON, SIDE));
        all.addAll(columns);
        Layout layout = Layout.of(table, all, Map.of()).complete();
        if (!(layout.has(EAST) && layout.has(NORTH)) && !(layout.has(ON) && layout.has(SIDE))) {
            throw table.without(List.of("east", "north", "on", "side"));
        }
        return new SpotTable(table, layout, course, convention, paceMetres);
    }

    /** Reads the other lines; what one has wrong is told, and the line passed over. */
    <T> List<T> read(Function<Spot, T> reader, Consumer<Finding> findings) {
        List<T> read = new ArrayList<>();
        for (Line line : table.lines()) {
            try {
                read.add(reader.apply(new Spot(line)));
            } catch (UnreadableFile trouble) {
                findings.accept(trouble.finding());
            }
        }
        return read;
    }

    /** One line. */
    final class Spot {
        private final Line line;
        private final Layout.Row row;

        private Spot(Line line) {
            this.line = line;
            this.row = layout.row(line);
        }

        Message where() {
            return Where.line(line.number());
        }

        /** A field by its column; empty where the line or the table does not have it. */
        String text(Column<?> column) {
            return row.text(column);
        }

        /** A number by its column; fails where it is none. */
        double number(Column<Double> column) {
            return number(text(column));
        }

        /** A number that is a piece of a field. */
        double number(String piece) {
            double value = table.separator().plainNumber(piece);
            if (Double.isNaN(value)) {
                throw notReadable(piece);
            }
            return value;
        }

        /** Fails where the line has fewer fields than the first. */
        void failIfCutShort() {
            int columns = table.names().size();
            if (line.fields().size() < columns) {
                Message.Argument fields = new Message.Count(line.fields().size());
                throw Finding.of(FindingKind.LINE_CUT_SHORT, where(), fields)
                        .trying(new Message.Count(columns))
                        .failure();
            }
        }

        Hole hole() {
            return Holes.named(course, text(HOLE), where());
        }

        /** The place; fails where the green has none such. */
        MapPoint place(Hole hole) {
            return text(EAST).isEmpty() ? paced(hole) : measured(hole);
        }

        private MapPoint measured(Hole hole) {
            MapPoint place = new MapPoint(number(EAST), number(NORTH));
            if (!hole.green().contains(place)) {
                Message.Argument away = new Message.Length(hole.green().distanceToEdgeMetres(place));
                throw Finding.of(FindingKind.SPOT_OFF_GREEN, where(), away)
                        .at(place)
                        .failure();
            }
            return place;
        }

        private MapPoint paced(Hole hole) {
            GreenFrame frame = GreenFrame.of(hole, convention)
                    .orElseThrow(() -> trouble(FindingKind.NEEDS_LINE_OF_PLAY, hole.id()));
            String side = text(SIDE).toUpperCase(Locale.ROOT);
            if (!side.matches("[LR].*")) {
                throw notReadable(text(SIDE));
            }
            double on = number(ON) * paceMetres;
            double fromSide = number(side.substring(1).strip()) * paceMetres;
            return frame.find(on, side.startsWith("L") ? Side.LEFT : Side.RIGHT, fromSide)
                    .orElseThrow(() -> trouble(FindingKind.NO_SUCH_PLACE, text(ON) + " " + text(SIDE)));
        }

        UnreadableFile trouble(FindingKind kind, String value) {
            return Finding.of(kind, where(), new Message.Name(Excerpt.of(value)))
                    .failure();
        }

        private UnreadableFile notReadable(String value) {
            return trouble(FindingKind.READING_NOT_READABLE, value);
        }
    }
}
