package org.cupwright.democourse;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.green.Third;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.testing.Suite;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;
import org.cupwright.turf.weather.RecordedWeather;
import org.cupwright.turf.weather.WeatherOutlook;
import org.junit.jupiter.api.Test;

/**
 * After its invented season the invented course has ground for four weeks more, at 10 ft and with the settings as they
 * come: day after day is planned on the ground that the season and the days planned before have left.
 */
class DemoSeasonPlansIT {
    private final List<Fact> facts = new ArrayList<>(new DemoSeason(DemoPlans.DEMO).facts());

    @Test
    void fourWeeksOnTheGroundTheSeasonLeft() {
        int days = Suite.count("days planned after the invented season", 28, 2);
        DemoPlans plans = new DemoPlans(1);
        for (int i = 0; i < days; i++) {
            LocalDate day = DemoCourse.TODAY.plusDays(i);
            List<Fact> counting = Logbook.of(facts).facts();
            TurfState state = TurfFold.fold(TurfState.empty(DemoPlans.ZONE), counting);
            DemoPlans.Planned planned = plans.plan(
                    day, state, WeatherOutlook.of(RecordedWeather.of(counting).entered()));
            assertThat(planned.conceded()).as("on %s", day).isEmpty();
            holds(planned.plan());
            planned.plan().holes().forEach(hole -> facts.add(DemoPlans.cut(day, hole)));
        }
    }

    private static void holds(DayPlan plan) {
        String day = "on " + plan.date() + ", seed " + plan.seed();
        Map<Third, Long> thirds = plan.holes().stream()
                .map(hole -> hole.candidate().third().orElseThrow())
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        assertThat(plan.holes()).as(day).hasSize(18);
        assertThat(thirds).as(day).isEqualTo(Map.of(Third.FRONT, 6L, Third.MIDDLE, 6L, Third.BACK, 6L));
        for (PlannedHole hole : plan.holes()) {
            String what = "hole " + hole.hole() + " " + day;
            Candidate chosen = hole.candidate();
            assertThat(chosen.verdict()).as(what).isIn(Verdict.PASS, Verdict.CAUTION);
            assertThat(chosen.judgement().setAside()).as(what).isEmpty();
            assertThat(chosen.onSavedGround()).as(what).isFalse();
            assertThat(chosen.judgement().rule(RuleId.OLD_HOLE).outcome())
                    .as(what)
                    .isNotEqualTo(Outcome.FAIL);
        }
    }
}
