package org.cupwright.app.desk.turf;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.history.Checkpoints;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Stores;
import org.cupwright.cupchange.Fact;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;
import org.cupwright.turf.today.TurfDay;

/** The turf on a day: what the logbook says, and the plans where it is silent. */
public final class DayTurf {
    /** How far back plans are looked at: the longest rest that a course can set. */
    private static final int LOOK_BACK_DAYS = 60;

    private DayTurf() {}

    public static TurfDay of(Stores stores, CourseDay day) {
        FactsInEffect facts = new FactsInEffect(stores.facts(), day.course().id());
        return TurfDay.of(state(stores, day, facts), day.date(), WeeksWeather.outlook(stores, day), day.policy());
    }

    private static TurfState state(Stores stores, CourseDay day, FactsInEffect facts) {
        Instant end = day.log().end();
        List<Fact> foreseen = foreseen(stores, day, facts);
        Instant firstForeseen =
                foreseen.stream().map(Fact::happenedAt).min(Instant::compareTo).orElse(end);
        TurfState before =
                new Checkpoints<>(new FoldedTurf(day.log().zone()), stores, day.course()).before(firstForeseen);
        List<Fact> since = new ArrayList<>(facts.between(firstForeseen, end));
        since.addAll(foreseen);
        since.sort(Fact.ORDER);
        return TurfFold.fold(before, since);
    }

    private static List<Fact> foreseen(Stores stores, CourseDay day, FactsInEffect facts) {
        LocalDate from = day.date().minusDays(LOOK_BACK_DAYS);
        List<StoredPlan> before =
                stores.plans().between(day.course().id(), from, day.date().minusDays(1));
        if (before.isEmpty()) {
            return List.of();
        }
        Instant start = from.atStartOfDay(day.log().zone()).toInstant();
        Set<String> words = ForeseenCuts.WORDS_ON_A_HOLE;
        return ForeseenCuts.of(
                before, facts.ofKinds(words, start, day.log().end()), day.log().zone());
    }
}
