package org.cupwright.settingout;

import java.util.List;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.PlacePolicy;
import org.cupwright.policy.Policy;
import org.cupwright.units.Paces;

/** Where somebody ends up who paces exactly what directions say. */
final class PacedBack {
    private PacedBack() {}

    static List<MapPoint> places(Hole hole, Policy policy, PacedPlace place) {
        double pace = policy.get(PlacePolicy.PACE_METRES);
        GreenFrame frame =
                GreenFrame.of(hole, policy.get(PlacePolicy.ON_CONVENTION)).orElseThrow();
        return frame.findAll(
                place.nearerEnd(),
                Paces.toMetres(place.nearerEndPaces(), pace),
                place.side(),
                Paces.toMetres(place.sidePaces(), pace));
    }

    /** How far beside the position that is, at the nearest of the places that fit, m. */
    static double nearestMetres(Hole hole, Policy policy, Directions directions) {
        return places(hole, policy, directions.place().orElseThrow()).stream()
                .mapToDouble(led -> led.distanceMetres(directions.at()))
                .min()
                .orElseThrow();
    }
}
