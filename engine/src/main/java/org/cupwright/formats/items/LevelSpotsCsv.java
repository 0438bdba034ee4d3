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
import org.cupwright.green.OnConvention;
import org.cupwright.message.Message;
import org.cupwright.units.Heading;

/**
 * Reads slopes noted with a level: one spot a line, columns by their header.
 *
 * <p>{@code hole}; the place as {@code east,north} in the course's frame, or as {@code on,side} in paces ({@code 22,L5}: left as
 * seen from the fairway, from the left edge); {@code heading}, in degrees clockwise from the map's north or {@code play} for along
 * the line of play; {@code fall}, percent downhill along the heading; {@code fallRight}, percent downhill to its right, empty
 * where the heading is the steepest way down. A line that does not read is told and passed over.
 */
public final class LevelSpotsCsv {
    private final Course course;
    private final SpotPlace places;
    private final List<LevelSpot> spots = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private LevelSpotsCsv(Course course, SpotPlace places) {
        this.course = course;
        this.places = places;
    }

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
        LevelSpotsCsv reader = new LevelSpotsCsv(course, new SpotPlace(convention, paceMetres));
        SpotTable.of(in, "hole", "heading", "fall").each(reader::read);
        return new LevelSpots(reader.spots, reader.findings);
    }

    private void read(NamedColumns.Line line) {
        try {
            spots.add(spot(line));
        } catch (UnreadableFile trouble) {
            findings.add(trouble.finding());
        }
    }

    private LevelSpot spot(NamedColumns.Line line) {
        Hole hole = hole(line);
        MapPoint place = places.of(hole, line);
        Heading heading = heading(hole, line);
        double fall = line.number("fall");
        double right = line.text("fallRight").isEmpty() ? 0 : line.number("fallRight");
        if (Math.hypot(fall, right) > LevelSpot.GREATEST_PERCENT) {
            throw line.trouble(FindingKind.READING_NOT_READABLE, fall + " " + right);
        }
        return new LevelSpot(hole.id(), place, heading, fall, right);
    }

    private Hole hole(NamedColumns.Line line) {
        String id = line.text("hole");
        Message.Argument known = new Message.Name(
                String.join(", ", course.holes().stream().map(Hole::id).toList()));
        return course.find(id)
                .orElseThrow(() -> Finding.of(FindingKind.HOLE_UNKNOWN, line.where(), new Message.Name(id))
                        .trying(known)
                        .failure());
    }

    private static Heading heading(Hole hole, NamedColumns.Line line) {
        if (line.text("heading").equalsIgnoreCase("play")) {
            return hole.lineOfPlay()
                    .orElseThrow(() -> line.trouble(FindingKind.NEEDS_LINE_OF_PLAY, hole.id()))
                    .atGreen();
        }
        return Heading.ofDegrees(line.number("heading"));
    }
}
