package org.cupwright.app.desk.begin;

import java.util.Set;
import java.util.stream.Collectors;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;

/**
 * Greens of which nobody knows where in the world they lie: paced ones, or drawn on a grid, that stand in a row with
 * others. A green that was brought in by a map since then lies elsewhere, and its place is known.
 */
public final class UnknownPlaces {
    private UnknownPlaces() {}

    /** The names of their holes. */
    public static Set<String> of(Stores stores, Course course) {
        return stores.setUp()
                .find()
                .filter(begun -> begun.place().id().equals(course.id()))
                .map(begun -> unknown(begun, course))
                .orElse(Set.of());
    }

    private static Set<String> unknown(SettingUp begun, Course course) {
        return begun.ofHoles().stream()
                .filter(green -> !green.placed())
                .filter(green -> stillThere(green, course))
                .map(green -> green.hole().id())
                .collect(Collectors.toSet());
    }

    private static boolean stillThere(BegunGreen green, Course course) {
        return course.find(green.hole().id())
                .filter(hole -> hole.green().isSameGreenAs(green.hole().green()))
                .isPresent();
    }
}
