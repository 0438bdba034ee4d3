package org.cupwright.app.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.desk.green.AreaOnDay;
import org.cupwright.app.desk.green.GreenOnDay;
import org.cupwright.app.storage.Asked;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.GroundItem;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.Third;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.Aims;
import org.cupwright.rotation.candidate.Area;
import org.locationtech.jts.geom.Geometry;

/**
 * Ground on which today's hole is not to be, good as the ground may be: saved for an event, kept off by somebody who
 * asked for it, outside the day's area, in a third that the green does not use. A plan keeps off the same.
 */
record OffToday(
        List<Geometry> saved, Optional<Asked> asked, List<Area> areas, Optional<GreenFrame> frame, Set<Third> allowed) {
    static OffToday of(GreenOnDay green, Optional<Asked> asked, Policy policy) {
        Set<Third> allowed = new Aims(policy, false).allowed(green.hole().id());
        return new OffToday(
                green.ground().counting(GroundItem.Kind.SAVED).stream()
                        .map(GroundItem::place)
                        .toList(),
                asked,
                green.areas().stream()
                        .filter(AreaOnDay::today)
                        .map(AreaOnDay::area)
                        .toList(),
                GreenFrame.of(green.hole(), policy.get(PlacePolicy.ON_CONVENTION))
                        .filter(frame -> allowed.size() < Third.values().length),
                allowed);
    }

    /** Why, in the words' own names; none where it may be. */
    List<String> why(MapPoint at) {
        List<String> why = new ArrayList<>();
        if (saved.stream().anyMatch(area -> area.covers(at.toPoint()))) {
            why.add("saved");
        }
        if (asked.filter(one -> one.rulesOut(at)).isPresent()) {
            why.add("keptOff");
        }
        if (!areas.isEmpty() && areas.stream().noneMatch(area -> area.holds(at))) {
            why.add("area");
        }
        if (frame.filter(known -> !allowed.contains(known.place(at).third())).isPresent()) {
            why.add("third");
        }
        return why;
    }
}
