package org.cupwright.app.desk.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork.DotPainted;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.PayloadKinds;

/** The dots that officials painted on the greens for the holes of a day, the last one on each. */
public final class PaintedDots {
    private static final Set<String> KINDS = PayloadKinds.names(DotPainted.class);

    /** A dot is painted at most so many days ahead: our choice. */
    private static final int AHEAD_DAYS = 14;

    private PaintedDots() {}

    /** A dot, and who painted it. */
    public record Dot(MapPoint at, String person) {}

    /** By hole. */
    public static Map<String, Dot> of(Stores stores, CourseDay day) {
        Map<String, Dot> dots = new LinkedHashMap<>();
        for (Fact fact : new FactsInEffect(stores.facts(), day.course().id())
                .ofKinds(
                        KINDS,
                        day.date()
                                .minusDays(AHEAD_DAYS)
                                .atStartOfDay(day.log().zone())
                                .toInstant(),
                        day.log().end())) {
            DotPainted dot = (DotPainted) fact.payload();
            if (dot.forDay().equals(day.date())) {
                fact.hole().ifPresent(hole -> dots.put(hole, new Dot(dot.at(), fact.person())));
            }
        }
        return dots;
    }
}
