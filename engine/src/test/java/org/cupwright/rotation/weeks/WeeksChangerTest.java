package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.RuleId;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.junit.jupiter.api.Test;

class WeeksChangerTest {
    private static final int DAYS = 8;
    private static final List<Candidate> SPOTS = MadeWeeks.lattice(2);

    private final WeeksRequest before = MadeWeeks.request(
            DAYS,
            MadeWeeks.rests(5, 7),
            IntStream.rangeClosed(1, 3)
                    .mapToObj(hole -> MadeWeeks.green(Integer.toString(hole), DAYS, SPOTS))
                    .toArray(GreenWeeks[]::new));
    private final Map<String, List<Optional<Stand>>> stands = stands();

    private Map<String, List<Optional<Stand>>> stands() {
        WeeksPlan plan = new WeeksPlanner(Policy.defaults()).plan(before, 60_000, SearchWatch.patient());
        Map<String, List<Optional<Stand>>> stands = new HashMap<>();
        for (GreenWeeks green : before.greens()) {
            stands.put(
                    green.hole(),
                    plan.days().stream()
                            .map(day -> day.find(green.hole()).map(hole -> new Stand(clear(hole.candidate()), false)))
                            .toList());
        }
        return stands;
    }

    private static Candidate clear(Candidate spot) {
        return SPOTS.stream()
                .filter(one -> one.at().equals(spot.at()))
                .findFirst()
                .orElseThrow();
    }

    private MapPoint stood(String hole, int day) {
        return stands.get(hole).get(day).orElseThrow().spot().at();
    }

    private ChangedWeeks changed(GreenWeeks... others) {
        List<GreenWeeks> greens = before.greens().stream()
                .map(green -> List.of(others).stream()
                        .filter(other -> other.hole().equals(green.hole()))
                        .findFirst()
                        .orElse(green))
                .toList();
        WeeksRequest request = new WeeksRequest(before.days(), greens, List.of(), before.rests(), before.busy(), 1);
        return new WeeksChanger(Policy.defaults()).change(new ChangeRequest(request, stands), SearchWatch.patient());
    }

    private GreenWeeks green(String hole, int day, Wishes wishes, GroundItem... items) {
        GreenWeeks green = before.greens().get(Integer.parseInt(hole) - 1);
        return MadeWeeks.with(
                green, day, new GreenDay(new GroundOnDay(before.days().get(day), List.of(items)), wishes));
    }

    private static Wishes at(Candidate spot) {
        return new Wishes(Optional.of(spot), List.of(), false);
    }

    @Test
    void wherePlansMayStayNothingIsChanged() {
        assertThat(changed().changes()).isEmpty();
        assertThat(changed().days()).isEmpty();
        GreenWeeks fixed =
                green("2", 3, at(clear(stands.get("2").get(3).orElseThrow().spot())));
        assertThat(changed(fixed).changes()).isEmpty();
    }

    @Test
    void aHoleThatIsFixedIsMoved_andThoseThatItsGroundKeepsFromTheirs() {
        Candidate there = clear(stands.get("1").get(5).orElseThrow().spot());
        ChangedWeeks changed = changed(green("1", 3, at(there)));
        assertThat(changed.changes()).hasSize(2);
        HoleChange asked = changed.changes().get(0);
        assertThat(asked.date()).isEqualTo(before.days().get(3));
        assertThat(asked.cause()).isEqualTo(new HoleChange.Fixed());
        assertThat(asked.from().orElseThrow().at()).isEqualTo(stood("1", 3));
        HoleChange follows = changed.changes().get(1);
        assertThat(follows.date()).isEqualTo(before.days().get(5));
        assertThat(follows.cause())
                .isEqualTo(new HoleChange.FollowsFrom("1", before.days().get(3)));
        assertThat(changed.days()).extracting(day -> day.date()).containsExactly(asked.date(), follows.date());
        assertThat(changed.days().get(0).holes()).hasSize(3);
    }

    @Test
    void groundThatIsRuledOutClosedOrSavedIsLeft() {
        Wishes off = new Wishes(Optional.empty(), List.of(new Wishes.Circle(stood("1", 2), 1)), false);
        assertThat(changed(green("1", 2, off)).changes())
                .singleElement()
                .satisfies(change -> assertThat(change.cause()).isEqualTo(new HoleChange.RuledOut()));
        assertThat(changed(green("1", 2, Wishes.none(), area(Kind.OUT_OF_USE))).changes())
                .singleElement()
                .satisfies(change ->
                        assertThat(change.cause()).isEqualTo(new HoleChange.RuleBroken(RuleId.CLOSED_GROUND)));
        assertThat(changed(green("1", 2, Wishes.none(), area(Kind.SAVED))).changes())
                .singleElement()
                .satisfies(change -> assertThat(change.cause()).isEqualTo(new HoleChange.GroundSaved()));
    }

    private GroundItem area(Kind kind) {
        return new GroundItem(
                kind,
                stood("1", 2).toPoint().buffer(2),
                Optional.empty(),
                Optional.of(before.days().get(2)));
    }

    @Test
    void aGreenThatIsClosedHasNoHole_andOneAgainWhenItIsOpen() {
        ChangedWeeks closed = changed(green("2", 4, Wishes.greenClosed()));
        assertThat(closed.changes()).singleElement().satisfies(change -> {
            assertThat(change.cause()).isEqualTo(new HoleChange.GreenClosed());
            assertThat(change.to()).isEmpty();
        });
        assertThat(closed.days().get(0).holes()).hasSize(2);
        stands.put("3", withNone(stands.get("3"), 1));
        assertThat(changed().changes()).singleElement().satisfies(change -> {
            assertThat(change.cause()).isEqualTo(new HoleChange.GreenOpen());
            assertThat(change.to()).isPresent();
        });
    }

    private static List<Optional<Stand>> withNone(List<Optional<Stand>> days, int day) {
        return IntStream.range(0, days.size())
                .mapToObj(one -> one == day ? Optional.<Stand>empty() : days.get(one))
                .toList();
    }

    /** As when yesterday's hole was left in place: it rests from today on, where a coming hole stands. */
    @Test
    void aHoleOnGroundThatRestsAfterAllIsMoved_butNotOneForWhichThatWasSetAside() {
        GreenWeeks green = before.greens().get(0);
        PastHole left = new PastHole(stood("1", 1), before.days().get(0).minusDays(1), Optional.empty());
        GreenWeeks kept = new GreenWeeks("1", green.candidates(), List.of(left), Optional.empty(), green.days());
        assertThat(changed(kept).changes())
                .anySatisfy(change -> {
                    assertThat(change.date()).isEqualTo(before.days().get(1));
                    assertThat(change.cause()).isEqualTo(new HoleChange.GroundRests());
                })
                .allSatisfy(change -> assertThat(change.hole()).isEqualTo("1"));
        stands.put(
                "1",
                stands.get("1").stream()
                        .map(stand -> stand.map(one -> new Stand(one.spot(), true)))
                        .toList());
        assertThat(changed(kept).changes()).isEmpty();
    }

    @Test
    void whatItCostsTheBalanceIsCountedBeforeAndAfter() {
        Candidate back = SPOTS.get(SPOTS.size() - 1);
        for (int day = 0; day < DAYS; day++) {
            Candidate stand = stands.get("1").get(day).orElseThrow().spot();
            if (!stand.third().equals(back.third())) {
                ChangedWeeks changed = changed(green("1", day, at(back)));
                assertThat(changed.before().thirdsOff()).isZero();
                assertThat(changed.after().thirdsOff())
                        .isEqualTo(changed.days().stream()
                                .mapToInt(one -> one.thirdsOff())
                                .sum());
                assertThat(changed.after().thirdsOff()).isPositive();
                return;
            }
        }
        throw new AssertionError("hole 1 is at the back every day");
    }

    @Test
    void whoeverStopsItIsTold_andEveryHoleNeedsItsStand() {
        GreenWeeks green =
                green("1", 2, new Wishes(Optional.empty(), List.of(new Wishes.Circle(stood("1", 2), 1)), false));
        WeeksRequest request = new WeeksRequest(
                before.days(),
                List.of(green, before.greens().get(1), before.greens().get(2)),
                List.of(),
                before.rests(),
                before.busy(),
                1);
        ChangeRequest asked = new ChangeRequest(request, stands);
        WeeksChanger changer = new WeeksChanger(Policy.defaults());
        assertThat(changer.change(asked, (done, all) -> false).stopped()).isTrue();
        assertThat(changer.change(asked, SearchWatch.patient()))
                .isEqualTo(changer.change(asked, SearchWatch.patient()));
        assertThatThrownBy(() -> new ChangeRequest(request, Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("hole 1");
    }
}
