package org.cupwright.app.desk;

import java.time.Clock;
import org.cupwright.app.desk.AssessGreen.OneGreen;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.PlacePolicy;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.units.Paces;

/** Judges one position for a day. */
public final class AssessPosition {
    private final DataFolder folder;
    private final Clock clock;

    public AssessPosition(DataFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /** A position as it is on a day, and the green about it. */
    public record Answer(CourseDay day, GreenOnDay green, JudgedPosition position) {
        public Hole hole() {
            return green.hole();
        }
    }

    public Answer of(DayQuestion question, String holeId, Spot spot) {
        OneGreen one = OneGreen.of(folder, question, holeId, clock);
        MapPoint point = point(one, spot);
        Judging judging = one.judged();
        return new Answer(one.day(), one.onDay(judging), judging.at(point));
    }

    private static MapPoint point(OneGreen one, Spot spot) {
        if (spot instanceof Spot.At at) {
            return onGreen(one.hole(), at.point(), "--at");
        }
        Spot.Paced paced = (Spot.Paced) spot;
        GreenFrame frame = Judging.frame(one.hole(), one.day().policy()).orElseThrow(() -> noLineOfPlay(one.hole()));
        double pace = one.day().policy().get(PlacePolicy.PACE_METRES);
        return frame.find(Paces.toMetres(paced.onPaces(), pace), paced.side(), Paces.toMetres(paced.sidePaces(), pace))
                .orElseThrow(() -> nowhere(one.hole(), paced));
    }

    /** The point, if it lies on the green. */
    static MapPoint onGreen(Hole hole, MapPoint point, String option) {
        if (!hole.green().contains(point)) {
            MapPoint middle = hole.green().centroid();
            throw Problem.of(
                    Message.of(
                            "problem.offGreen",
                            new Name(hole.id()),
                            new Length(hole.green().distanceToEdgeMetres(point))),
                    Message.of("where.option", new Name(option)),
                    coordinates(point),
                    Message.of("try.offGreen", new Name(coordinates(middle))));
        }
        return point;
    }

    private static String coordinates(MapPoint point) {
        return String.format(java.util.Locale.ROOT, "%.1f,%.1f", point.east(), point.north());
    }

    private static Problem noLineOfPlay(Hole hole) {
        return Problem.of(
                Message.of("problem.noLineOfPlay", new Name(hole.id())),
                Message.of("where.option", new Name("--on")),
                hole.id(),
                Message.of("try.noLineOfPlay", new Name(hole.id())));
    }

    private static Problem nowhere(Hole hole, Spot.Paced paced) {
        String side = paced.side().name().charAt(0) + plain(paced.sidePaces());
        return Problem.of(
                Message.of("problem.pacedNowhere", new Name(hole.id())),
                Message.of("where.option", new Name("--on, --side")),
                plain(paced.onPaces()) + ", " + side,
                Message.of("try.pacedNowhere"));
    }

    private static String plain(double paces) {
        return paces == Math.rint(paces) ? Long.toString((long) paces) : Double.toString(paces);
    }
}
