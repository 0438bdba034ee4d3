package org.cupwright.app.desk.green;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.green.GreensOfDay.Open;
import org.cupwright.app.storage.ResultCache;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.Versions;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.course.Hole;
import org.cupwright.green.GroundOnDay;

/**
 * How far what is known of a course's ground has come: as long as nothing of it changes, a green that was judged on the
 * same day at the same speed, with the same lying on it, is judged the same.
 *
 * @param course the course
 * @param parts the numbers of the newest rows
 */
public record GroundKnown(String course, Map<Part, Long> parts) {
    private static final Set<Part> GROUND = Set.of(Part.COURSE, Part.SURVEYS, Part.LEVELS, Part.DRAWN, Part.POLICY);

    public GroundKnown {
        parts = Map.copyOf(parts);
    }

    /** What is known of the ground on a day. */
    public static GroundKnown of(Stores stores, CourseDay day) {
        String course = day.course().id();
        Versions versions = stores.versions(course, day.date());
        Map<Part, Long> parts = new EnumMap<>(Part.class);
        GROUND.forEach(part -> parts.put(part, versions.of(part)));
        return new GroundKnown(course, parts);
    }

    private record Measured(GroundKnown known, List<String> holes) {}

    private record Judged(AtSpeed first, GroundOnDay ground) {}

    /** What of a judging stays the same whatever lies on the green: most of the work, and of the memory. */
    private record AtSpeed(GroundKnown known, Map<String, String> policy, String hole, double feet, boolean rain) {}

    /** What was measured on some greens. */
    List<MeasuredGreen> greens(Stores stores, List<Hole> holes) {
        Measured key = new Measured(this, holes.stream().map(Hole::id).toList());
        return stores.cache().remembered(key, () -> MeasuredGreen.of(stores, course, holes));
    }

    /**
     * The judging of one green on a day.
     *
     * @param work judges it as if nothing of it were known
     */
    Judging judged(ResultCache cache, Open green, CourseDay day, Supplier<Judging> work) {
        String hole = green.green().hole().id();
        AtSpeed first = new AtSpeed(
                this, day.policy().set(), hole, day.fastest().feet(), day.rain().expected());
        return cache.remembered(
                new Judged(first, green.ground()),
                () -> cache.remembered(first, work).on(green.ground()));
    }
}
