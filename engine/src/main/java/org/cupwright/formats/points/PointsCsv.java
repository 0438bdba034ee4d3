package org.cupwright.formats.points;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.Excerpt;
import org.cupwright.formats.Separator;
import org.cupwright.formats.TextLines;
import org.cupwright.message.Message;

/**
 * Reads points from text: {@code x,y,z} or point number, northing, easting, height, description; with a header or
 * without; separated by commas, semicolons, tabs or blanks; decimal commas where the comma does not separate; {@code #}
 * begins a comment.
 *
 * <p>A column with the strip of each point, or the time at which it was taken, is read where there is one.
 *
 * <p>Lines that do not read are told, the first few one by one, and passed over.
 */
public final class PointsCsv {
    /** Fifty million points of some forty characters. Our choice. */
    private static final long MAX_BYTES = 2L << 30;

    /** Lines told one by one; after them only their number. Our choice. */
    private static final int MOST_TOLD = 10;

    private final ColumnPlan plan;
    private final PointCollector points;
    private long notRead;

    private PointsCsv(ColumnPlan plan, PointCollector points) {
        this.plan = plan;
        this.points = points;
    }

    /**
     * Reads all points of a file into a collector.
     *
     * @param in the file; not closed
     * @param columns what the person says of the columns: {@code x,y,z,class,strip}, {@code p,n,e,z,d}, or the header's
     *     names of x, y and z (and class, strip, time); empty: found out
     * @param points receives the points and the findings
     * @throws UnreadableFile if the file is empty, no text, or its columns cannot be told
     */
    public static void read(InputStream in, Optional<String> columns, PointCollector points) throws IOException {
        TextLines lines = new TextLines(in, MAX_BYTES);
        Optional<String> first = lines.next();
        if (first.isEmpty()) {
            throw Finding.of(FindingKind.EMPTY_FILE, Where.file(), lines.number())
                    .failure();
        }
        ColumnPlan plan = ColumnPlan.of(first.get(), lines.number(), columns);
        if (plan.saysStrips()) {
            points.saysStrips();
        }
        PointsCsv reader = new PointsCsv(plan, points);
        Optional<String> line = plan.firstLineIsHeader() ? lines.next() : first;
        if (plan.firstLineIsHeader() && columns.isEmpty() && line.isPresent()) {
            refuseDecimalCommas(plan.separator(), first.get(), line.get(), lines.number());
        }
        while (line.isPresent()) {
            reader.read(line.get(), lines.number());
            line = lines.next();
        }
        reader.tellNotRead();
    }

    /** More whole numbers than columns have names: a comma that parts them may also stand before their decimals. */
    private static void refuseDecimalCommas(Separator separator, String header, String line, long number) {
        List<String> fields = separator.split(line);
        boolean whole = fields.stream().allMatch(field -> field.matches("[+-]?[0-9]+"));
        if (separator == Separator.COMMA
                && whole
                && fields.size() > separator.split(header).size()) {
            throw Finding.of(FindingKind.DECIMAL_COMMAS, Where.line(number), new Message.Name(Excerpt.of(line)))
                    .failure();
        }
    }

    private void read(String line, long number) {
        List<String> fields = plan.separator().split(line);
        double x = plan.number(ColumnRole.EAST, fields);
        double y = plan.number(ColumnRole.NORTH, fields);
        double z = plan.number(ColumnRole.HEIGHT, fields);
        boolean classed = plan.columns().containsKey(ColumnRole.CLASS);
        double pointClass = classed ? plan.number(ColumnRole.CLASS, fields) : PointCollector.NO_CLASS;
        if (!Double.isFinite(x + y + z + pointClass) || Math.abs(pointClass) > Short.MAX_VALUE) {
            notRead++;
            if (notRead <= MOST_TOLD) {
                points.tell(Finding.of(FindingKind.LINE_NOT_READABLE, Where.line(number), Excerpt.of(line)));
            }
        } else {
            double strip = points.strip(plan.text(ColumnRole.STRIP, fields));
            points.accept(x, y, z, (int) pointClass, strip, plan.number(ColumnRole.TIME, fields));
        }
    }

    private void tellNotRead() {
        if (notRead > MOST_TOLD) {
            points.tell(Finding.of(FindingKind.LINES_NOT_READABLE, Where.file(), notRead));
        }
    }
}
