package org.cupwright.app.desk.turf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.desk.CourseDay;
import org.cupwright.app.desk.StoredPlan;
import org.cupwright.app.desk.Stores;
import org.cupwright.app.desk.log.DayLog;
import org.cupwright.cupchange.Fact;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;
import org.cupwright.turf.today.TurfDay;
import org.cupwright.turf.weather.RecordedWeather;

/** The turf on a day: what the logbook says, and the plans where it is silent. */
public final class DayTurf {
    /** How far back plans are looked at: the longest rest that a course can set. */
    private static final int LOOK_BACK_DAYS = 60;

    private DayTurf() {}

    public static TurfDay of(Stores stores, CourseDay day) {
        LocalDate date = day.date();
        List<StoredPlan> before =
                stores.plans().between(day.course().id(), date.minusDays(LOOK_BACK_DAYS), date.minusDays(1));
        DayLog log = day.log();
        List<Fact> facts = new ArrayList<>(log.facts());
        facts.addAll(ForeseenCuts.of(before, log));
        facts.sort(Fact.ORDER);
        TurfState state = TurfFold.fold(TurfState.empty(log.zone()), facts);
        return TurfDay.of(state, date, RecordedWeather.outlook(log.facts()), day.policy());
    }
}
