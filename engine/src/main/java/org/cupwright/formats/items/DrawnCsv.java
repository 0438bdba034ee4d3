package org.cupwright.formats.items;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.formats.table.Column;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PersonsOpinion;
import org.locationtech.jts.geom.Geometry;

/**
 * Reads ground that people listed: one piece a line, columns by their header.
 *
 * <p>{@code hole}; {@code kind}: good, bad, usual, area; the place as {@code east,north} in the course's frame, or as
 * {@code on,side} in paces ({@code 22,L5}: from the left edge as seen from the fairway); for all but usual spots
 * {@code radius} in paces, or {@code radiusMetres}; for an area its number
 * or letter as {@code area}; and where known {@code reason}, {@code person}, {@code date}
 * (2026-05-31) and {@code id}. A line that does not read, or has fewer fields than the header, is told.
 */
public final class DrawnCsv {
    private static final Column<String> KIND = Column.text("kind").needed();

    /** By the name under which {@link DrawnParts} asks for it. */
    private static final Map<String, Column<?>> COLUMNS = Stream.concat(
                    Stream.of(KIND),
                    Stream.of("radius", "radiusMetres", "reason", "person", "date", "id", "area")
                            .map(Column::text))
            .collect(Collectors.toUnmodifiableMap(Column::name, Function.identity()));

    private DrawnCsv() {}

    /**
     * Reads the ground of a course.
     *
     * @param in the file; not closed
     * @param course the course whose greens are meant
     * @param convention from where "on" is measured
     * @param paceMetres length of the pace in which on, side and radius are given
     * @throws UnreadableFile if the file is empty, no text, or columns are missing
     */
    public static ReadDrawn read(InputStream in, Course course, OnConvention convention, double paceMetres)
            throws IOException {
        List<Finding> findings = new ArrayList<>();
        SpotTable table = SpotTable.of(in, List.copyOf(COLUMNS.values()), course, convention, paceMetres);
        List<ReadDrawn.Item> items =
                table.read(line -> item(line, course, paceMetres), finding -> findings.add(DrawnParts.own(finding)));
        return new ReadDrawn(items, findings);
    }

    private static ReadDrawn.Item item(SpotTable.Spot line, Course course, double paceMetres) {
        DrawnParts parts = new DrawnParts(name -> line.text(COLUMNS.get(name)), line.where());
        line.failIfCutShort();
        PersonsOpinion word = parts.word();
        Hole hole = line.hole();
        MapPoint at = line.place(hole);
        Geometry place = word.kind() == PersonsOpinion.Kind.USUAL
                ? DrawnItem.spot(at)
                : DrawnItem.disc(at, parts.radiusMetres(paceMetres, line::number));
        return new ReadDrawn.Item(parts.id(), course.onGreenOf(hole), word, place);
    }
}
