package org.cupwright.app.desk.first;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Hole;
import org.cupwright.turf.today.TurfDay;

/**
 * All that has to be known before a day's round: what concerns the whole of it, and what concerns one hole.
 *
 * @param all the notices: those before everything else, the gravest first, then those at their holes in round order
 */
public record FirstOfDay(List<Notice> all) {
    public FirstOfDay {
        all = List.copyOf(all);
    }

    /**
     * What the logbook says; what a plan adds comes by {@link #with}.
     *
     * @param today today on the course
     */
    public static FirstOfDay of(Stores stores, CourseDay day, TurfDay turf, LocalDate today) {
        List<Notice> all = new ArrayList<>(KnowFirst.of(stores, day, turf, today));
        GreenNotices greens = new GreenNotices(turf);
        for (Hole hole : day.course().holes()) {
            all.addAll(greens.at(hole.id()));
        }
        return new FirstOfDay(all);
    }

    /** The same with what is to be known of a plan's spots. */
    public FirstOfDay with(List<Notice> spots) {
        List<Notice> more = new ArrayList<>(all);
        more.addAll(spots);
        return new FirstOfDay(more);
    }

    /** What stands before everything else, the gravest first. */
    public List<Notice> before() {
        return all.stream().filter(notice -> !notice.kind().atItsHole()).toList();
    }

    /** What stands at a hole, the gravest first. */
    public List<Notice> at(String hole) {
        return all.stream()
                .filter(notice -> notice.hole().filter(hole::equals).isPresent())
                .sorted(Comparator.comparing(Notice::kind))
                .toList();
    }
}
