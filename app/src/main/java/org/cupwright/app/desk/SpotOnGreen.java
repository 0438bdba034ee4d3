package org.cupwright.app.desk;

import java.util.Locale;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.PlacePolicy;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;
import org.cupwright.units.Paces;
import org.cupwright.units.WrittenNumber;

/** The point on a green that a person means. */
public final class SpotOnGreen {
    private SpotOnGreen() {}

    /** The point, which lies on the green. */
    public static MapPoint of(Hole hole, Policy policy, Spot spot) {
        return spot instanceof Spot.At at ? onGreen(hole, at.point(), "at") : paced(hole, policy, (Spot.Paced) spot);
    }

    /** The point; one given by coordinates may lie off the green. */
    public static MapPoint anywhere(Hole hole, Policy policy, Spot spot) {
        return spot instanceof Spot.At at ? at.point() : paced(hole, policy, (Spot.Paced) spot);
    }

    private static MapPoint paced(Hole hole, Policy policy, Spot.Paced paced) {
        GreenFrame frame =
                GreenFrame.of(hole, policy.get(PlacePolicy.ON_CONVENTION)).orElseThrow(() -> noLineOfPlay(hole));
        double pace = policy.get(PlacePolicy.PACE_METRES);
        return frame.find(Paces.toMetres(paced.onPaces(), pace), paced.side(), Paces.toMetres(paced.sidePaces(), pace))
                .orElseThrow(() -> nowhere(hole, paced));
    }

    /** The point, if it lies on the green. */
    public static MapPoint onGreen(Hole hole, MapPoint point, String field) {
        if (!hole.green().contains(point)) {
            MapPoint middle = hole.green().centroid();
            Message what = Message.of(
                    "problem.offGreen",
                    new Name(hole.id()),
                    new Length(hole.green().distanceToEdgeMetres(point)));
            throw Problem.of(
                    what, field, coordinates(point), Message.of("try.offGreen", new Name(coordinates(middle))));
        }
        return point;
    }

    private static String coordinates(MapPoint point) {
        return String.format(Locale.ROOT, "%.1f,%.1f", point.east(), point.north());
    }

    private static Problem noLineOfPlay(Hole hole) {
        return Problem.of("noLineOfPlay", "on", hole.id(), new Name(hole.id()));
    }

    private static Problem nowhere(Hole hole, Spot.Paced paced) {
        String side = paced.side().name().charAt(0) + WrittenNumber.of(paced.sidePaces());
        return Problem.of(
                "pacedNowhere", "place", WrittenNumber.of(paced.onPaces()) + ", " + side, new Name(hole.id()));
    }
}
