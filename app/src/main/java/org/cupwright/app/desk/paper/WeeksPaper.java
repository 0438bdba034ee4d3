package org.cupwright.app.desk.paper;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.course.Course;
import org.cupwright.policy.Policy;
import org.cupwright.turf.weather.WeatherBasis;

/**
 * All that paper, calendar and table of several days are made from.
 *
 * @param course the course
 * @param policy the settings of the first day
 * @param days its days in order, one after another
 * @param weather what the weather of these days rests on, as it is known now
 * @param writtenOn the course's today
 * @param writtenBy who had it written; empty where nobody is known
 */
public record WeeksPaper(
        Course course,
        Policy policy,
        List<PlanOfDay> days,
        WeatherBasis weather,
        LocalDate writtenOn,
        String writtenBy) {
    public WeeksPaper {
        days = List.copyOf(days);
    }

    /**
     * The newest plan of a day.
     *
     * @param versions how many there were of that day, this one included
     * @param keptAt when this one was kept
     */
    public record PlanOfDay(StoredPlan plan, int versions, Instant keptAt) {
        public LocalDate date() {
            return plan.date();
        }
    }

    public LocalDate first() {
        return days.get(0).date();
    }

    public LocalDate last() {
        return days.get(days.size() - 1).date();
    }
}
