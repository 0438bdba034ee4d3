package org.cupwright.democourse;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.green.Green;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.OnConvention;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.GoodWithin;
import org.cupwright.holelocation.GreenJudge;
import org.cupwright.holelocation.GreenJudgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.DayPlanner;
import org.cupwright.rotation.DayRequest;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.SharedGreen;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.GreenSpots;
import org.cupwright.rotation.candidate.JudgedSpot;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.testing.Suite;
import org.cupwright.turf.state.CupInGround;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;
import org.cupwright.turf.today.ComingGround;
import org.cupwright.turf.today.TurfDay;
import org.cupwright.turf.weather.RecordedWeather;
import org.cupwright.turf.weather.WeatherOutlook;
import org.cupwright.units.GreenSpeed;
import org.junit.jupiter.api.Test;

/**
 * After its invented season the invented course has ground for four weeks more, at 10 ft and with the settings as they come: day
 * after day is planned on the ground that the season and the days planned before have left.
 */
class DemoSeasonPlansIT {
    private static final GreenSpeed SPEED = new GreenSpeed(10);
    private static final Policy POLICY = Policy.defaults();
    private static final DemoCourse DEMO = new DemoCourse(1);
    private static final Course COURSE = DEMO.course();
    private static final ZoneId ZONE = COURSE.frame().zone();

    private final Map<String, GreenJudge> judges = new HashMap<>();
    private final List<Fact> facts = new ArrayList<>(new DemoSeason(DEMO).facts());

    @Test
    void fourWeeksOnTheGroundTheSeasonLeft() {
        int days = Suite.count("days planned after the invented season", 28, 2);
        COURSE.holes().parallelStream()
                .map(hole -> Map.entry(hole.id(), measured(hole)))
                .toList()
                .forEach(judge -> judges.put(judge.getKey(), judge.getValue()));
        for (int i = 0; i < days; i++) {
            LocalDate day = DemoCourse.TODAY.plusDays(i);
            DayPlan plan = plan(day);
            holds(plan);
            plan.holes().forEach(hole -> facts.add(cut(day, hole)));
        }
    }

    private static GreenJudge measured(Hole hole) {
        GroundOnDay clear = GroundOnDay.clear(DemoCourse.TODAY);
        return new GreenJudge(new Green(hole, DemoGrounds.of(DEMO, hole, POLICY)), conditions(clear), POLICY);
    }

    private static DayConditions conditions(GroundOnDay ground) {
        return new DayConditions(SPEED, false, false, ground);
    }

    private DayPlan plan(LocalDate day) {
        Logbook book = Logbook.of(facts);
        TurfState state = TurfFold.fold(TurfState.empty(ZONE), book.facts());
        WeatherOutlook outlook = WeatherOutlook.of(RecordedWeather.of(book.facts()));
        ComingGround coming = new ComingGround(TurfDay.of(state, day, outlook, POLICY));
        List<GreenCandidates> greens = COURSE.holes().parallelStream()
                .map(hole -> new GreenCandidates(
                        hole.id(),
                        candidates(hole, ground(hole, day, coming)),
                        state.green(hole.id()).cup().map(CupInGround::at),
                        Wishes.none()))
                .toList();
        List<SharedGreen> shared = List.of(new SharedGreen("9", "18"));
        return new DayPlanner(POLICY).plan(new DayRequest(day, greens, shared, false, Suite.seed()));
    }

    private static GroundOnDay ground(Hole hole, LocalDate day, ComingGround coming) {
        List<GroundItem> items = new ArrayList<>(coming.on(hole.id(), day).items());
        COURSE.sharingGreenWith(hole)
                .forEach(other -> items.addAll(coming.on(other.id(), day).items()));
        return new GroundOnDay(day, items);
    }

    private List<Candidate> candidates(Hole hole, GroundOnDay ground) {
        GreenJudgement green = judges.get(hole.id()).onDay(conditions(ground)).judgeGreen();
        assertThat(green.concessions()).as("%s on %s", hole.id(), ground.day()).isEmpty();
        GreenFrame frame = GreenFrame.of(hole, OnConvention.ALONG_CHORD).orElseThrow();
        List<JudgedSpot> spots = green.candidates().stream()
                .map(spot -> new JudgedSpot(spot, Optional.of(frame.place(spot.position()))))
                .toList();
        return new GreenSpots(spots, ground)
                .thinned(POLICY.get(RotationPolicy.CANDIDATE_SQUARE_METRES)).stream()
                        .map(one -> new Candidate(
                                one.judgement(),
                                one.place(),
                                GoodWithin.of(one.judgement(), green).metres(),
                                one.onSavedGround()))
                        .toList();
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

    private static Fact cut(LocalDate day, PlannedHole hole) {
        Instant at = day.atTime(6, 0).atZone(ZONE).toInstant();
        UUID id = UUID.nameUUIDFromBytes((day + " hole " + hole.hole()).getBytes(StandardCharsets.UTF_8));
        CupChanged changed = CupChanged.asPlanned(hole.candidate().at());
        return new Fact(id, 1, at, at, Optional.empty(), "invented", COURSE.id(), Optional.of(hole.hole()), changed);
    }
}
