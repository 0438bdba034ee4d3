package org.cupwright.green;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.course.Outline;
import org.cupwright.green.EdgeScan.Segment;
import org.cupwright.units.Heading;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * A green as a person on the fairway sees it: where is this place, how far on and how far from the side; and which
 * place is meant by so much on and so much from the side.
 *
 * <p>Axes: the origin is the outline's centroid, {@code forward} runs along the line of play (its last leg), {@code
 * right} to the right of it; metres. A line of play is needed: without one a green has no front and no left.
 *
 * <p>"On" is measured by the course's {@link OnConvention}. The side is measured at right angles to the line of play,
 * to the nearer edge. Where a line through a place leaves the green and comes back (a bunker inside, the arm of a
 * kidney), only the piece that holds the place counts. Thirds are of the very lengths that "on" and the side are
 * measured on, so that they never contradict; squared off the front, that is the whole depth from where "on" begins to
 * the farthest point of the back, and "on" is negative before a front mark that stands inside the green. All of this is
 * common practice, without a source.
 *
 * <p>Immutable, safe for use by several threads.
 */
public final class GreenFrame {
    /** How exactly a found place must give back what was asked for, m: our choice. */
    private static final double FOUND_WITHIN_METRES = 1e-4;

    private final String hole;
    private final Outline outline;
    private final OnConvention convention;
    private final Heading play;
    private final MapPoint origin;
    private final double playEast;
    private final double playNorth;
    /** Lines parallel to play: across is right, along is forward. */
    private final EdgeScan withPlay;
    /** Lines at right angles to play: across is forward, along is right. */
    private final EdgeScan acrossPlay;
    /** From the foremost point (or the front mark) to the farthest point of the back. */
    private final Chord wholeDepth;

    private final Chord wholeWidth;

    private GreenFrame(Hole hole, OnConvention convention, Heading play) {
        this.hole = hole.id();
        this.outline = hole.green();
        this.convention = convention;
        this.play = play;
        this.origin = outline.centroid();
        this.playEast = play.east();
        this.playNorth = play.north();
        List<Coordinate[]> rings = rings();
        this.withPlay = new EdgeScan(rings);
        this.acrossPlay = new EdgeScan(rings.stream().map(GreenFrame::turned).toList());
        this.wholeWidth = reach(rings.get(0), false);
        Chord depth = reach(rings.get(0), true);
        this.wholeDepth = new Chord(frontMark(hole).orElse(depth.start()), depth.end());
    }

    /** The frame of a hole's green; empty where the hole has no line of play. */
    public static Optional<GreenFrame> of(Hole hole, OnConvention convention) {
        return hole.lineOfPlay().map(line -> new GreenFrame(hole, convention, line.atGreen()));
    }

    public OnConvention convention() {
        return convention;
    }

    /** The direction of play at the green. */
    public Heading play() {
        return play;
    }

    /** How far right of the centroid, m. */
    public double rightMetres(MapPoint point) {
        return (point.east() - origin.east()) * playNorth - (point.north() - origin.north()) * playEast;
    }

    /** How far beyond the centroid along the line of play, m. */
    public double forwardMetres(MapPoint point) {
        return (point.east() - origin.east()) * playEast + (point.north() - origin.north()) * playNorth;
    }

    public MapPoint at(double rightMetres, double forwardMetres) {
        return new MapPoint(
                origin.east() + rightMetres * playNorth + forwardMetres * playEast,
                origin.north() - rightMetres * playEast + forwardMetres * playNorth);
    }

    /**
     * Depth of the whole green along the line of play, from where squared-off distances begin to the farthest back, m.
     */
    public double depthMetres() {
        return wholeDepth.length();
    }

    /**
     * Where a point of the green lies.
     *
     * @throws IllegalArgumentException if the point is not on the green
     */
    public PlaceOnGreen place(MapPoint point) {
        if (!outline.contains(point)) {
            throw new IllegalArgumentException("the point " + point.east() + ", " + point.north()
                    + " is not on the green of hole " + hole + ", it is " + outline.distanceToEdgeMetres(point)
                    + " m off it. Maybe the coordinates are another green's, or in another frame.");
        }
        double right = rightMetres(point);
        double forward = forwardMetres(point);
        Chord depth = depthAt(right, forward);
        Chord width = acrossPlay.holding(forward, right);
        boolean squared = convention == OnConvention.SQUARED_OFF_FRONT;
        double on = squared ? forward - depth.start() : depth.fromStart(forward);
        double fromLeft = width.fromStart(right);
        double fromRight = width.length() - fromLeft;
        return new PlaceOnGreen(
                on,
                depth.length() - on,
                fromLeft <= fromRight ? Side.LEFT : Side.RIGHT,
                Math.min(fromLeft, fromRight),
                Third.values()[depth.third(forward)],
                Lateral.values()[width.third(right)]);
    }

    /**
     * The place so much on and so far from a side edge, which need not be the nearer one; see {@link #findAll} for the
     * choice where several places fit. Empty where no place of the green fits.
     */
    public Optional<MapPoint> find(double onMetres, Side side, double sideMetres) {
        return findAll(End.FRONT, onMetres, side, sideMetres).stream().findFirst();
    }

    /**
     * Every place of the green that lies so far from an end and so far from a side edge.
     *
     * <p>Most often there is one. There can be several on a green with arms or with a bunker inside. And close to a
     * straight piece of edge, where both distances are measured from that same piece, every place of a line along it
     * fits; the middle of the line is given. That happens nowhere farther from the edge than half the length of its
     * longest straight piece.
     *
     * <p>The first is the one to take: places for which the named side is the nearer come first, then those farther
     * from the edge, as nobody means a hole on the collar. Found on the outline as drawn, by meeting its straight
     * pieces, moved on, with its straight pieces, moved in; good to 0.1 mm.
     */
    public List<MapPoint> findAll(End end, double endMetres, Side side, double sideMetres) {
        return Meeting.withoutThoseOnOthers(meetings(end, endMetres, side, sideMetres), FOUND_WITHIN_METRES).stream()
                .map(this::middle)
                .sorted(Comparator.comparing((MapPoint point) -> place(point).side() != side)
                        .thenComparing(point -> -outline.distanceToEdgeMetres(point)))
                .toList();
    }

    private List<Meeting> meetings(End end, double endMetres, Side side, double sideMetres) {
        List<Segment> movedIn = acrossPlay.crossable().stream()
                .map(edge -> edge.shiftedAlong(side == Side.LEFT ? sideMetres : -sideMetres)
                        .turned())
                .toList();
        List<Meeting> meetings = new ArrayList<>();
        for (Segment on : movedOn(end, endMetres)) {
            for (Segment in : movedIn) {
                Meeting.of(on, in)
                        .filter(meeting -> lies(middle(meeting), end, endMetres, side, sideMetres))
                        .ifPresent(meetings::add);
            }
        }
        return meetings;
    }

    private MapPoint middle(Meeting meeting) {
        return at(meeting.middle().x, meeting.middle().y);
    }

    private List<Segment> movedOn(End end, double endMetres) {
        double by = end == End.FRONT ? endMetres : -endMetres;
        if (convention == OnConvention.SQUARED_OFF_FRONT) {
            double forward = (end == End.FRONT ? wholeDepth.start() : wholeDepth.end()) + by;
            return List.of(new Segment(wholeWidth.start(), forward, wholeWidth.end(), forward));
        }
        return withPlay.crossable().stream().map(edge -> edge.shiftedAlong(by)).toList();
    }

    private boolean lies(MapPoint point, End end, double endMetres, Side side, double sideMetres) {
        if (!outline.contains(point)) {
            return false;
        }
        double right = rightMetres(point);
        double forward = forwardMetres(point);
        Chord depth = depthAt(right, forward);
        Chord width = acrossPlay.holding(forward, right);
        double fromEnd = end == End.FRONT ? forward - depth.start() : depth.end() - forward;
        double fromSide = side == Side.LEFT ? right - width.start() : width.end() - right;
        return Math.abs(fromEnd - endMetres) <= FOUND_WITHIN_METRES
                && Math.abs(fromSide - sideMetres) <= FOUND_WITHIN_METRES;
    }

    private Chord depthAt(double right, double forward) {
        return convention == OnConvention.SQUARED_OFF_FRONT ? wholeDepth : withPlay.holding(right, forward);
    }

    /** The outline's rings in the frame: x right, y forward; the outer one first. */
    private List<Coordinate[]> rings() {
        Polygon polygon = outline.polygon();
        List<Coordinate[]> rings = new ArrayList<>();
        rings.add(inFrame(polygon.getExteriorRing().getCoordinates()));
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            rings.add(inFrame(polygon.getInteriorRingN(i).getCoordinates()));
        }
        return rings;
    }

    private Coordinate[] inFrame(Coordinate[] ring) {
        Coordinate[] turned = new Coordinate[ring.length];
        for (int i = 0; i < ring.length; i++) {
            MapPoint corner = MapPoint.of(ring[i]);
            turned[i] = new Coordinate(rightMetres(corner), forwardMetres(corner));
        }
        return turned;
    }

    private static Coordinate[] turned(Coordinate[] ring) {
        Coordinate[] turned = new Coordinate[ring.length];
        for (int i = 0; i < ring.length; i++) {
            turned[i] = new Coordinate(ring[i].y, ring[i].x);
        }
        return turned;
    }

    private static Chord reach(Coordinate[] ring, boolean forward) {
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (Coordinate corner : ring) {
            double value = forward ? corner.y : corner.x;
            least = Math.min(least, value);
            greatest = Math.max(greatest, value);
        }
        return new Chord(least, greatest);
    }

    /** Where the hole's front mark stands along the line of play; of several the foremost. */
    private Optional<Double> frontMark(Hole of) {
        return of.marks().stream()
                .filter(mark -> mark.kind() == Mark.Kind.FRONT_MARK)
                .map(mark -> forwardMetres(mark.at()))
                .min(Comparator.naturalOrder());
    }
}
