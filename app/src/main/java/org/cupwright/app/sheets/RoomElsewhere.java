package org.cupwright.app.sheets;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.cupwright.app.desk.green.GreenOnDay;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.Third;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.judging.SpotWithRoom;
import org.cupwright.settingout.Directions;
import org.cupwright.settingout.PacedPlace;
import org.cupwright.settingout.SettingOut;
import org.locationtech.jts.geom.Geometry;

/** Where else a changer may go who finds hardly any room about a spot, and more on no side of it. */
final class RoomElsewhere {
    private RoomElsewhere() {}

    /** The nearest spot with half a pace of room, of the same third if there is one, clear of ground that is saved. */
    static Optional<PacedPlace> find(
            GreenOnDay green, Judgement position, Directions directions, SettingOut settingOut, double paceMetres) {
        boolean asked = directions
                .leeway()
                .filter(leeway ->
                        leeway.goodWithinPaces() < 0.5 && leeway.moreRoom().isEmpty())
                .isPresent();
        if (!asked || directions.place().isEmpty()) {
            return Optional.empty();
        }
        List<Geometry> saved = green.ground().counting(GroundItem.Kind.SAVED).stream()
                .map(GroundItem::place)
                .toList();
        Function<MapPoint, PacedPlace> paced =
                at -> settingOut.directions(at).place().orElseThrow();
        Predicate<MapPoint> open = at -> saved.stream().noneMatch(area -> area.covers(at.toPoint()));
        Third third = directions.place().get().third();
        return SpotWithRoom.nearest(
                        position,
                        green.judgement(),
                        paceMetres / 2,
                        open.and(at -> paced.apply(at).third() == third))
                .or(() -> SpotWithRoom.nearest(position, green.judgement(), paceMetres / 2, open))
                .map(paced);
    }
}
