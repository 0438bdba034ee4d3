package org.cupwright.app.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundOnDay;
import org.cupwright.policy.Policy;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Where holes were on the days before, as far as plans were stored: a hole is taken to have been cut where it was planned until
 * somebody says otherwise.
 */
final class OldHoles {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final List<StoredPlan> before;
    private final LocalDate day;
    private final int restDays;

    private OldHoles(List<StoredPlan> before, LocalDate day, int restDays) {
        this.before = before;
        this.day = day;
        this.restDays = restDays;
    }

    /** The stored plans of the days before a day, as far back as a hole could matter. */
    static OldHoles before(Stores stores, CourseDay day) {
        Policy policy = day.policy();
        int rest = policy.get(DeskPolicy.REST_DAYS);
        LocalDate from = day.date().minusDays(Math.max(rest, DeskPolicy.LOOK_BACK_DAYS));
        return new OldHoles(
                stores.plans().between(day.course().id(), from, day.date().minusDays(1)), day.date(), rest);
    }

    /** What lies on a green: its old holes and what else is known. */
    GroundOnDay ground(String hole, List<GroundItem> others) {
        List<GroundItem> items = new ArrayList<>(others);
        for (StoredPlan plan : before) {
            plan.find(hole).ifPresent(planned -> items.add(oldHole(planned, plan.date())));
        }
        return new GroundOnDay(day, items);
    }

    private GroundItem oldHole(StoredHole planned, LocalDate cut) {
        MapPoint at = planned.position().judgement().position();
        return new GroundItem(
                GroundItem.Kind.OLD_HOLE,
                FACTORY.createPoint(at.toCoordinate()),
                Optional.of(cut),
                Optional.of(cut.plusDays(restDays)));
    }

    /** Where the hole is now: that of the newest plan before the day. */
    Optional<MapPoint> last(String hole) {
        for (int i = before.size() - 1; i >= 0; i--) {
            Optional<StoredHole> planned = before.get(i).find(hole);
            if (planned.isPresent()) {
                return planned.map(found -> found.position().judgement().position());
            }
        }
        return Optional.empty();
    }
}
