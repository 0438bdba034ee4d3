package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.cupwright.course.MapPoint;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/**
 * Changes of plans of few spots over few days against all plans there are, one by one, each worth what
 * {@link SlowWeeks} says and 400 points for every hole that was moved.
 */
class ChangesAgainstReferenceTest {
    private static final double PRICE = 400;

    /** Every day of two greens has a hole of its own. */
    private static final List<List<Integer>> EVERY_DAY = List.of(List.of(0, 1, 2), List.of(0, 1, 2));

    private record Found(double points, int moved) {}

    @Test
    void noPlanWithFewerChangesIsAsGood() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("fewest changes of few spots", 400, 40);
        int best = 0;
        int fewest = 0;
        int changed = 0;
        for (int i = 0; i < count; i++) {
            WeeksRequest before = changedEveryDay(MadeWeeks.odd(random, 3, 2, 5));
            Map<String, List<Optional<Stand>>> stands = planned(before);
            WeeksRequest wanted = disturbed(before, random);
            ChangeRequest request = new ChangeRequest(wanted, stands);
            Found own = worth(wanted, stands, after(request));
            Found reference = reference(wanted, stands);
            assertThat(own.points).as("case %s", i).isGreaterThanOrEqualTo(reference.points - 0.05);
            best += own.points <= reference.points + 0.05 ? 1 : 0;
            fewest += own.moved <= reference.moved ? 1 : 0;
            changed += reference.moved > 0 ? 1 : 0;
        }
        System.out.printf("%d of %d have changes, %d the fewest, %d the best of those%n", changed, count, fewest, best);
        assertThat(changed).isGreaterThan(count / 4);
        assertThat(fewest).isGreaterThanOrEqualTo(count - count / 50);
        assertThat(best).isGreaterThanOrEqualTo(count * 9 / 10);
    }

    private static WeeksRequest changedEveryDay(WeeksRequest odd) {
        List<GreenWeeks> greens = odd.greens().stream()
                .map(green -> new GreenWeeks(
                        green.hole(),
                        green.candidates(),
                        green.past(),
                        green.yesterdaysThird(),
                        green.days().stream()
                                .map(day -> new GreenDay(day.ground(), day.wishes()))
                                .toList()))
                .toList();
        return new WeeksRequest(odd.days(), greens, odd.sharedGreens(), odd.rests(), odd.busy(), odd.seed());
    }

    private static Map<String, List<Optional<Stand>>> planned(WeeksRequest request) {
        WeeksPlan plan = new WeeksPlanner(Policy.defaults()).plan(request, 60_000, SearchWatch.patient());
        Map<String, List<Optional<Stand>>> stands = new HashMap<>();
        for (GreenWeeks green : request.greens()) {
            stands.put(
                    green.hole(),
                    plan.days().stream()
                            .map(day -> day.find(green.hole())
                                    .map(hole -> new Stand(
                                            clear(green, hole.candidate()),
                                            !hole.setAside().isEmpty())))
                            .toList());
        }
        return stands;
    }

    /** The spot as it is judged with nothing lying on the green. */
    private static Candidate clear(GreenWeeks green, Candidate spot) {
        List<Candidate> all = new ArrayList<>(green.candidates());
        green.days().forEach(day -> day.wishes().locked().ifPresent(all::add));
        return all.stream()
                .filter(one -> one.at().equals(spot.at()))
                .findFirst()
                .orElseThrow();
    }

    /** One to three days of greens otherwise than they were. */
    private static WeeksRequest disturbed(WeeksRequest request, Random random) {
        List<GreenWeeks> greens = new ArrayList<>(request.greens());
        for (int times = 1 + random.nextInt(3); times > 0; times--) {
            int green = random.nextInt(greens.size());
            int day = random.nextInt(request.days().size());
            GreenDay known = greens.get(green).days().get(day);
            greens.set(
                    green,
                    MadeWeeks.with(
                            greens.get(green), day, new GreenDay(known.ground(), wishes(greens.get(green), random))));
        }
        return new WeeksRequest(
                request.days(), greens, request.sharedGreens(), request.rests(), request.busy(), request.seed());
    }

    private static Wishes wishes(GreenWeeks green, Random random) {
        Candidate some =
                green.candidates().get(random.nextInt(green.candidates().size()));
        return switch (random.nextInt(4)) {
            case 0 -> Wishes.greenClosed();
            case 1 -> new Wishes(Optional.of(some), List.of(), false);
            case 2 -> new Wishes(Optional.of(MadeGreens.good(9.5, 21.5, DifficultyClass.HARDER)), List.of(), false);
            default -> new Wishes(Optional.empty(), List.of(new Wishes.Circle(some.at(), 6)), false);
        };
    }

    private static List<List<Optional<Candidate>>> after(ChangeRequest request) {
        List<List<Optional<Candidate>>> plan = new ArrayList<>();
        for (GreenWeeks green : request.weeks().greens()) {
            List<Optional<Candidate>> days = new ArrayList<>();
            request.stands().get(green.hole()).forEach(stand -> days.add(stand.map(Stand::spot)));
            plan.add(days);
        }
        List<String> holes =
                request.weeks().greens().stream().map(GreenWeeks::hole).toList();
        for (HoleChange change : new WeeksChanger(Policy.defaults())
                .change(request, SearchWatch.patient())
                .changes()) {
            plan.get(holes.indexOf(change.hole())).set(request.weeks().days().indexOf(change.date()), change.to());
        }
        return plan;
    }

    private static Found worth(
            WeeksRequest request, Map<String, List<Optional<Stand>>> stands, List<List<Optional<Candidate>>> plan) {
        int moved = 0;
        for (int green = 0; green < plan.size(); green++) {
            List<Optional<Stand>> stood = stands.get(request.greens().get(green).hole());
            for (int day = 0; day < stood.size(); day++) {
                Optional<MapPoint> from =
                        stood.get(day).map(stand -> stand.spot().at());
                Optional<MapPoint> to = plan.get(green).get(day).map(Candidate::at);
                moved += from.isPresent() && to.isPresent() && !from.equals(to) ? 1 : 0;
            }
        }
        return new Found(new SlowWeeks(request, plan, EVERY_DAY, 20).points() + PRICE * moved, moved);
    }

    private static Found reference(WeeksRequest request, Map<String, List<Optional<Stand>>> stands) {
        WeeksModel model =
                new WeeksModel(request, Policy.defaults(), Standing.of(new ChangeRequest(request, stands), both()));
        List<List<Optional<Candidate>>> plan = new ArrayList<>();
        request.greens()
                .forEach(green -> plan.add(new ArrayList<>(request.days().stream()
                        .map(day -> Optional.<Candidate>empty())
                        .toList())));
        return best(model, request, stands, plan, 0);
    }

    private static boolean[] both() {
        return new boolean[] {true, true};
    }

    private static Found best(
            WeeksModel model,
            WeeksRequest request,
            Map<String, List<Optional<Stand>>> stands,
            List<List<Optional<Candidate>>> plan,
            int from) {
        int green = from / model.dayCount();
        if (green == model.greenCount()) {
            return worth(request, stands, plan);
        }
        int day = from % model.dayCount();
        if (!model.table(green).open(day)) {
            return best(model, request, stands, plan, from + 1);
        }
        Found best = new Found(Double.POSITIVE_INFINITY, 0);
        for (int spot : model.table(green).offered(day)) {
            plan.get(green).set(day, Optional.of(model.table(green).spot(spot)));
            Found found = best(model, request, stands, plan, from + 1);
            best = found.points < best.points ? found : best;
        }
        plan.get(green).set(day, Optional.empty());
        return best;
    }
}
