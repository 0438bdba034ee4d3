package org.cupwright.app.desk.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.SpotOnGreen;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.storage.Asked;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Hole;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * What people asked for the holes of a day: kept with the day's plan until it is taken back, and dots painted on the
 * greens for that day, which the plan's own wishes go before.
 */
final class AskedOfDay {
    private final CourseDay day;
    private final Map<String, Asked> kept = new LinkedHashMap<>();
    private final Map<String, Asked> dots = new LinkedHashMap<>();

    private AskedOfDay(CourseDay day) {
        this.day = day;
    }

    /** What was asked for until now. */
    static AskedOfDay of(Stores stores, CourseDay day, Optional<StoredPlan> draft) {
        AskedOfDay asked = new AskedOfDay(day);
        draft.ifPresent(plan -> plan.asked().forEach(one -> asked.kept.put(one.hole(), one)));
        PaintedDots.of(stores, day)
                .forEach((hole, dot) ->
                        asked.dots.put(hole, Asked.nothing(hole, dot.person()).here(dot.at(), dot.person())));
        return asked;
    }

    /** One wish more. */
    void add(HoleWish wish, String person) {
        Hole hole = HoleChoice.hole(day.course(), wish.hole());
        if (day.course().isPractice(hole.id())) {
            throw Problem.of("practiceNotPlanned", "hole", hole.id(), new Name(hole.id()));
        }
        Asked before = kept.getOrDefault(hole.id(), Asked.nothing(hole.id(), person));
        if (wish instanceof HoleWish.Here here) {
            kept.put(hole.id(), before.here(SpotOnGreen.of(hole, day.policy(), here.spot()), person));
        } else if (wish instanceof HoleWish.NotHere off) {
            Asked.Circle ground = new Asked.Circle(SpotOnGreen.of(hole, day.policy(), off.spot()), off.radiusMetres());
            kept.put(hole.id(), before.notHere(ground, person));
        } else {
            kept.put(hole.id(), Asked.nothing(hole.id(), person));
        }
    }

    /** What is kept with the plan. */
    List<Asked> kept() {
        return List.copyOf(kept.values());
    }

    /** What counts for a hole: what was said for it, or else the dot that is painted on its green. */
    Asked of(String hole) {
        Asked dot = dots.getOrDefault(hole, Asked.nothing(hole, ""));
        Asked own = kept.getOrDefault(hole, dot);
        boolean dotCounts = own.at().isEmpty()
                && !own.isNothing()
                && dot.at().filter(spot -> !own.rulesOut(spot)).isPresent();
        return dotCounts ? new Asked(hole, dot.person(), dot.at(), own.notHere()) : own;
    }
}
