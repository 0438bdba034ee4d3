package org.cupwright.app.desk.policy;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.storage.DrawnOnCourse;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;
import org.cupwright.policy.Setting;
import org.cupwright.rotation.AreaCycle;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.SchemePolicy;
import org.cupwright.rotation.candidate.Area;
import org.cupwright.turf.TurfPolicy;

/** Settings of schemes that do not go together, or not with what is drawn: each is refused with what is wrong. */
final class SchemeChecks {
    private static final int WEEK = 7;

    private final Policy policy;
    private final Course course;
    private final DrawnOnCourse drawn;

    SchemeChecks(Policy policy, Course course, DrawnOnCourse drawn) {
        this.policy = policy;
        this.course = course;
        this.drawn = drawn;
    }

    /** @throws Problem for the first that is wrong */
    void check() {
        greens(SchemePolicy.CHANGE_DAYS_OF_GREENS);
        greens(SchemePolicy.THIRDS_OF_GREENS);
        greens(SchemePolicy.AREAS_OF_GREENS);
        greens(SchemePolicy.CYCLE_OF_GREENS);
        policy.get(SchemePolicy.AREAS_OF_GREENS)
                .forEach((hole, areas) -> drawn(SchemePolicy.AREAS_OF_GREENS, hole, areas));
        policy.get(SchemePolicy.CYCLE_OF_GREENS)
                .forEach((hole, areas) -> drawn(SchemePolicy.CYCLE_OF_GREENS, hole, areas));
        for (Hole hole : course.round()) {
            restsBetween(hole.id());
        }
        if (policy.get(RotationPolicy.SCHEME).goesByAreas()) {
            everyGreenHasItsAreas();
        }
    }

    private void greens(Setting<? extends SortedMap<String, ?>> setting) {
        policy.get(setting).keySet().forEach(hole -> HoleChoice.hole(course, hole));
    }

    private void drawn(Setting<?> setting, String hole, List<String> areas) {
        Set<String> known = numbers(hole);
        areas.stream().filter(area -> !known.contains(area)).findFirst().ifPresent(area -> {
            throw refused(
                    setting, area, "unknownArea", new Name(hole), new Name(area), new Name(String.join(", ", known)));
        });
    }

    private Set<String> numbers(String hole) {
        Set<String> numbers = new TreeSet<>();
        drawn.areas(hole).stream().map(Area::number).forEach(numbers::add);
        return numbers;
    }

    private void everyGreenHasItsAreas() {
        List<String> without = course.round().stream()
                .map(Hole::id)
                .filter(hole -> drawn.areas(hole).isEmpty())
                .toList();
        if (!without.isEmpty()) {
            throw refused(RotationPolicy.SCHEME, "", "noAreas", new Name(String.join(", ", without)));
        }
        for (Hole hole : course.round()) {
            List<String> order = AreaCycle.order(policy, hole.id());
            if (order.isEmpty()) {
                throw refused(RotationPolicy.SCHEME, "", "noCycle", new Name(hole.id()));
            }
            drawn(SchemePolicy.CYCLE, hole.id(), order);
        }
    }

    /** An area twice running is trodden again before its ground has rested. */
    private void restsBetween(String hole) {
        List<String> order = AreaCycle.order(policy, hole);
        int rest = policy.get(TurfPolicy.WEAR_REST_DAYS);
        for (int i = 0; i < order.size(); i++) {
            String next = order.get((i + 1) % order.size());
            if (order.get(i).equals(next) && longestGap(hole) < rest) {
                throw refused(
                        SchemePolicy.CYCLE,
                        String.join(" ", order),
                        "areaTwice",
                        new Name(next),
                        new Name(hole),
                        new Count(longestGap(hole)),
                        new Count(rest));
            }
        }
    }

    /** The most days from one change-day of a green to the next. */
    private int longestGap(String hole) {
        Set<DayOfWeek> days = new HashSet<>(policy.get(SchemePolicy.CHANGE_DAYS_OF_GREENS)
                .getOrDefault(hole, policy.get(SchemePolicy.CHANGE_DAYS)));
        int longest = 0;
        for (DayOfWeek day : days) {
            int gap = 1;
            while (gap < WEEK && !days.contains(day.plus(gap))) {
                gap++;
            }
            longest = Math.max(longest, gap);
        }
        return longest;
    }

    private static Problem refused(Setting<?> setting, String value, String why, Message.Argument... arguments) {
        return Problem.of(
                new Message("problem.scheme." + why, List.copyOf(new ArrayList<>(List.of(arguments)))),
                Message.of("where.setting", new Name(setting.key())),
                value,
                Message.of("try.scheme." + why));
    }
}
