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
import org.cupwright.formats.table.Column;
import org.cupwright.green.OnConvention;
import org.cupwright.units.Heading;

/**
 * Reads slopes noted with a level: one spot a line, columns by their header.
 *
 * <p>{@code hole}; the place as {@code east,north} in the course's frame, or as {@code on,side} in paces
 * ({@code 22,L5}: left as seen from the fairway, from the left edge); {@code heading}, in degrees clockwise from the
 * map's north or {@code play} for along the line of play; {@code fall}, percent downhill along the heading;
 * {@code fallRight}, percent downhill to its right, empty where the heading is the steepest way down. A line that does
 * not read is told and passed over.
 */
public final class LevelSpotsCsv {
    private static final Column<Double> HEADING = Column.number("heading").needed();
    private static final Column<Double> FALL = Column.number("fall").needed();
    private static final Column<Double> FALL_RIGHT = Column.number("fallRight");

    private LevelSpotsCsv() {}

    /**
     * Reads the spots of a course.
     *
     * @param in the file; not closed
     * @param course the course whose greens were measured
     * @param convention from where "on" is measured
     * @param paceMetres length of the pace in which on and side are given
     * @throws UnreadableFile if the file is empty, no text, or columns are missing
     */
    public static LevelSpots read(InputStream in, Course course, OnConvention convention, double paceMetres)
            throws IOException {
        List<Column<?>> columns = List.of(HEADING, FALL, FALL_RIGHT);
        List<Finding> findings = new ArrayList<>();
        SpotTable table = SpotTable.of(in, columns, course, convention, paceMetres);
        return new LevelSpots(table.read(LevelSpotsCsv::spot, findings::add), findings);
    }

    private static LevelSpot spot(SpotTable.Spot line) {
        Hole hole = line.hole();
        MapPoint place = line.place(hole);
        Heading heading = heading(hole, line);
        double fall = line.number(FALL);
        double right = line.text(FALL_RIGHT).isEmpty() ? 0 : line.number(FALL_RIGHT);
        if (Math.hypot(fall, right) > LevelSpot.GREATEST_PERCENT) {
            throw line.trouble(FindingKind.READING_NOT_READABLE, fall + " " + right);
        }
        return new LevelSpot(hole.id(), place, heading, fall, right);
    }

    private static Heading heading(Hole hole, SpotTable.Spot line) {
        if (line.text(HEADING).equalsIgnoreCase("play")) {
            return hole.lineOfPlay()
                    .orElseThrow(() -> line.trouble(FindingKind.NEEDS_LINE_OF_PLAY, hole.id()))
                    .atGreen();
        }
        return Heading.ofDegrees(line.number(HEADING));
    }
}
