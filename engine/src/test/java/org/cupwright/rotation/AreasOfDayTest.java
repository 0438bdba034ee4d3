package org.cupwright.rotation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.Area;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.Wishes;
import org.junit.jupiter.api.Test;

/** A day whose hole is to be in an area, a third, or where it is already: on an invented green of thirty metres. */
class AreasOfDayTest {
    private static final LocalDate DAY = LocalDate.of(2027, 5, 3);
    private static final Candidate FRONT = MadeGreens.good(5, 5, DifficultyClass.EASIER);
    private static final Candidate BACK = MadeGreens.good(25, 25, DifficultyClass.EASIER);
    private static final Area NEAR = new Area("1", new MapPoint(5, 5).toPoint().buffer(4));
    private static final Area FAR = new Area("B", new MapPoint(25, 25).toPoint().buffer(4));
    private static final Area EMPTY =
            new Area("9", new MapPoint(15, 15).toPoint().buffer(2));

    private static DayPlan plan(Policy policy, Wishes wishes) {
        GreenCandidates green = new GreenCandidates("7", List.of(FRONT, BACK), Optional.empty(), wishes);
        return new DayPlanner(policy).plan(DayRequest.of(DAY, List.of(green)));
    }

    private static List<String> keys(List<Message> messages) {
        return messages.stream().map(Message::key).toList();
    }

    @Test
    void theHoleIsInTheAreaItIsToBeIn_andThePlanSaysSo() {
        for (Area area : List.of(NEAR, FAR)) {
            PlannedHole hole = plan(Policy.defaults(), Wishes.none().in(List.of(area)))
                    .holes()
                    .get(0);
            assertThat(hole.area()).contains(area.number());
            assertThat(area.holds(hole.candidate().at())).isTrue();
            assertThat(keys(hole.reasons())).contains("rotation.reason.area");
        }
        Policy picks = Policy.defaults().with(RotationPolicy.SCHEME, Scheme.AREA_ONLY);
        PlannedHole suggested =
                plan(picks, Wishes.none().in(List.of(FAR))).holes().get(0);
        assertThat(keys(suggested.reasons())).contains("rotation.reason.areaOnly");
    }

    @Test
    void whereAnAreaHasNoSpotAPlanComesOutAllTheSame_andNamesIt() {
        DayPlan plan = plan(Policy.defaults(), Wishes.none().in(List.of(EMPTY)));
        assertThat(plan.holes()).hasSize(1);
        assertThat(plan.holes().get(0).area()).isEmpty();
        assertThat(keys(plan.findings())).contains("rotation.finding.noSpotInArea");
    }

    @Test
    void thirdsOfAGreenGoBeforeTheCourses() {
        Policy front = Policy.defaults().with(RotationPolicy.THIRDS_ALLOWED, List.of(Third.FRONT));
        assertThat(plan(front, Wishes.none()).holes().get(0).candidate()).isEqualTo(FRONT);
        Policy own = front.with(SchemePolicy.THIRDS_OF_GREENS, new TreeMap<>(Map.of("7", List.of(Third.BACK))));
        assertThat(plan(own, Wishes.none()).holes().get(0).candidate()).isEqualTo(BACK);
    }

    /** Near to where it was, and hardly any room: nothing of that counts for a hole that nobody cuts. */
    @Test
    void aHoleThatStaysCostsNothing() {
        Wishes stays = Wishes.stays(FRONT, DAY.minusDays(2));
        GreenCandidates green = new GreenCandidates("7", List.of(FRONT, BACK), Optional.of(FRONT.at()), stays);
        DayPlan plan = new DayPlanner(Policy.defaults()).plan(DayRequest.of(DAY, List.of(green)));
        PlannedHole hole = plan.holes().get(0);
        assertThat(hole.since()).contains(DAY.minusDays(2));
        assertThat(keys(hole.reasons()).get(0)).isEqualTo("rotation.reason.stays");
        assertThat(plan.terms().get(Term.NEAR_YESTERDAY)).isZero();
        assertThat(keys(plan.findings())).doesNotContain("rotation.finding.nearYesterday");
    }
}
