package org.cupwright.formats.points;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.green.SurveyPoints;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Collects the points of one or more files that lie on a course's greens, and checks that they can be what they are
 * said to be.
 *
 * <p>Points away from the greens are counted and dropped at once, so that a file of a whole square kilometre needs no
 * more memory than its greens. Give it to a reader, then ask {@link #finish}. Not for several threads.
 */
public final class PointCollector {
    /** The class of points whose file has no classes. */
    public static final int NO_CLASS = -1;

    /** Points this far outside a green still help to shape its edge, m. Our choice. */
    public static final double MARGIN_METRES = 3;

    /** Points kept in all: eighteen greens of 1000 m² at 250 points/m². Our choice. */
    private static final int MOST_POINTS = 5_000_000;

    private final Course course;
    private final PointRequest request;
    private final FileUnits units;
    private final STRtree nearGreens = new STRtree();
    private final Map<Integer, Long> byClass = new TreeMap<>();
    private final FileExtent extent;
    private final Map<String, CollectedPoints> byHole = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private final StripNames stripNames = new StripNames();
    private boolean stripsSaid;
    private long read;
    private long kept;

    /** A hole's green with the margin about it. */
    private record Near(String holeId, Outline withMargin) {}

    /**
     * A collector for one survey of a course.
     *
     * @throws UnreadableFile if the course's frame is not known
     */
    public PointCollector(Course course, PointRequest request) {
        this.course = course;
        this.request = request;
        CoordinateFrame courseFrame = CoordinateFrame.of(course.frame().epsg());
        CoordinateFrame fileFrame = request.frame().orElse(courseFrame);
        this.units = new FileUnits(fileFrame, request.unit(), courseFrame);
        this.extent = new FileExtent(course, fileFrame);
        for (Hole hole : course.holes()) {
            Outline withMargin = new Outline((Polygon) hole.green().polygon().buffer(MARGIN_METRES));
            nearGreens.insert(withMargin.polygon().getEnvelopeInternal(), new Near(hole.id(), withMargin));
        }
        nearGreens.build();
    }

    /**
     * Takes one point.
     *
     * @param x east first, in the file's frame and unit
     * @param y in the file's frame and unit
     * @param z height in the file's unit
     * @param pointClass the file's class, or {@link #NO_CLASS}
     */
    public void accept(double x, double y, double z, int pointClass) {
        accept(x, y, z, pointClass, Double.NaN, Double.NaN);
    }

    /** A file has a column for the strips of its points, or for their times. */
    void saysStrips() {
        stripsSaid = true;
    }

    /** The number of a strip that a file names; not a number where it names none. */
    double strip(String name) {
        return stripNames.number(name);
    }

    /**
     * Takes one point of a strip.
     *
     * @param strip the strip's number; not a number where it is not said
     * @param time when the point was taken, s; not a number where that is not said
     */
    void accept(double x, double y, double z, int pointClass, double strip, double time) {
        read++;
        if (pointClass != NO_CLASS) {
            byClass.merge(pointClass, 1L, Long::sum);
        }
        if (!request.classes().isEmpty() && !request.classes().contains(pointClass)) {
            return;
        }
        extent.include(x, y);
        MapPoint point = units.toCourse(x, y);
        boolean near = false;
        for (Object found : nearGreens.query(new Envelope(point.toCoordinate()))) {
            near |= keep((Near) found, point, units.heightMetres(z), strip, time);
        }
        if (near && ++kept > MOST_POINTS) {
            throw Finding.of(FindingKind.TOO_MANY_POINTS, Where.file(), MOST_POINTS)
                    .failure();
        }
    }

    private boolean keep(Near green, MapPoint point, double heightMetres, double strip, double time) {
        boolean near = green.withMargin.contains(point);
        if (near) {
            byHole.computeIfAbsent(green.holeId, id -> new CollectedPoints()).add(point, heightMetres, strip, time);
        }
        return near;
    }

    /** Something a reader has to say of the file. */
    public void tell(Finding finding) {
        findings.add(finding);
    }

    /**
     * The points by green.
     *
     * @throws UnreadableFile if there are no points, none of the wanted classes, none on any green, or heights that no
     *     green can have
     */
    public GreenPoints finish() {
        failWithoutPoints();
        Map<String, SurveyPoints> found = new LinkedHashMap<>();
        List<Double> steepness = new ArrayList<>();
        for (Hole hole : course.holes()) {
            CollectedPoints points = byHole.get(hole.id());
            if (points == null) {
                findings.add(Finding.of(FindingKind.GREEN_WITHOUT_POINTS, Where.hole(hole.id()), hole.id())
                        .at(hole.green().centroid()));
            } else {
                SurveyPoints once = RepeatedPoints.dropped(hole.id(), points.points(stripsSaid), findings);
                steepness.add(HeightCheck.check(hole, once, findings));
                found.put(hole.id(), once);
            }
        }
        HeightCheck.checkAll(steepness, findings);
        return new GreenPoints(read, kept, byClass, found, findings);
    }

    private void failWithoutPoints() {
        if (read == 0) {
            throw findings
                    .stream() // what the first line that did not read has wrong says more than that there is nothing
                    .findFirst()
                    .orElseGet(() -> Finding.of(FindingKind.NO_POINTS, Where.file(), 0))
                    .failure();
        }
        if (extent.isEmpty()) {
            throw Finding.of(
                            FindingKind.NO_POINTS_OF_CLASS,
                            Where.file(),
                            request.classes().stream()
                                    .sorted()
                                    .map(String::valueOf)
                                    .reduce((a, b) -> a + ", " + b)
                                    .orElse(""))
                    .trying(byClass.toString())
                    .failure();
        }
        if (kept == 0) {
            throw extent.whyNotOnTheGreens(request.unit()).failure();
        }
    }
}
