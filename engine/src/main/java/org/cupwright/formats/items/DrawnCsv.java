package org.cupwright.formats.items;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Geometry;

/**
 * Reads ground that people listed: one piece a line, columns by their header.
 *
 * <p>{@code hole}; {@code kind}: good, bad, usual; the place as {@code east,north} in the course's frame, or as {@code on,side} in
 * paces ({@code 22,L5}: from the left edge as seen from the fairway); for good and bad ground {@code radius} in paces, or {@code
 * radiusMetres}; and where known {@code reason}, {@code person}, {@code date} (2026-05-31) and {@code id}. A line that does not
 * read, or has fewer fields than the header, is told.
 */
public final class DrawnCsv {
    private final Course course;
    private final SpotPlace places;
    private final double paceMetres;
    private final int columns;
    private final List<ReadDrawn.Item> items = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private DrawnCsv(Course course, SpotPlace places, double paceMetres, int columns) {
        this.course = course;
        this.places = places;
        this.paceMetres = paceMetres;
        this.columns = columns;
    }

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
        SpotTable table = SpotTable.of(in, "hole", "kind");
        DrawnCsv reader = new DrawnCsv(course, new SpotPlace(convention, paceMetres), paceMetres, table.columns());
        table.each(reader::read);
        return new ReadDrawn(reader.items, reader.findings);
    }

    private void read(NamedColumns.Line line) {
        try {
            items.add(item(line));
        } catch (UnreadableFile trouble) {
            findings.add(DrawnParts.own(trouble.finding()));
        }
    }

    private ReadDrawn.Item item(NamedColumns.Line line) {
        DrawnParts parts = new DrawnParts(line::text, line.where());
        if (line.fields() < columns) {
            throw Finding.of(FindingKind.LINE_CUT_SHORT, line.where(), new Message.Count(line.fields()))
                    .trying(new Message.Count(columns))
                    .failure();
        }
        PersonsOpinion word = parts.word();
        Hole hole = parts.hole(course, line.text("hole"));
        MapPoint at = places.of(hole, line);
        Geometry place = word.kind() == PersonsOpinion.Kind.USUAL
                ? DrawnItem.spot(at)
                : DrawnItem.disc(at, parts.radiusMetres(paceMetres, line::numberOf));
        return new ReadDrawn.Item(parts.id(), DrawnParts.withThoseSharing(course, hole), word, place);
    }
}
