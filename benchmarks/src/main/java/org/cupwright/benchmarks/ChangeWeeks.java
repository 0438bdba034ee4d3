package org.cupwright.benchmarks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cupwright.course.MapPoint;
import org.cupwright.democourse.DemoPlans;
import org.cupwright.published.SeattleWeather;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.rotation.weeks.ChangeRequest;
import org.cupwright.rotation.weeks.ChangedWeeks;
import org.cupwright.rotation.weeks.GreenDay;
import org.cupwright.rotation.weeks.GreenWeeks;
import org.cupwright.rotation.weeks.HoleChange;
import org.cupwright.rotation.weeks.SearchWatch;
import org.cupwright.rotation.weeks.Stand;
import org.cupwright.rotation.weeks.WeeksChanger;
import org.cupwright.rotation.weeks.WeeksPlan;
import org.cupwright.rotation.weeks.WeeksPlanner;
import org.cupwright.rotation.weeks.WeeksRequest;
import org.cupwright.turf.state.TurfState;
import org.cupwright.turf.weather.WeatherOutlook;
import org.cupwright.turf.weather.WeatherSeries;

/**
 * Four weeks of the invented course changed as little as can be: one green, six greens, and today alone. Stops when a
 * hole is moved that need not be, when one is left where it may not be, or when two answers differ.
 *
 * <p>Greens are judged before. The first time of each is told too, as a command is always the first of its program.
 */
public final class ChangeWeeks {
    private static final LocalDate FIRST = LocalDate.of(2014, 7, 1);
    private static final int DAYS = 28;
    private static final int TIMES = 5;

    /** Metres of the ground that is ruled out about a spot that is spoiled. */
    private static final double SPOILED = 1;

    private final WeeksRequest weeks;
    private final Map<String, List<Optional<Stand>>> stands = new HashMap<>();

    private ChangeWeeks() {
        WeatherOutlook known = WeatherOutlook.of(WeatherSeries.of(SeattleWeather.read().days().stream()
                .filter(day -> day.day().isBefore(FIRST))
                .toList()));
        this.weeks = new DemoPlans(2)
                .weeks(FIRST.datesUntil(FIRST.plusDays(DAYS)).toList(), TurfState.empty(DemoPlans.ZONE), known, 1);
        WeeksPlan plan = new WeeksPlanner(DemoPlans.POLICY).plan(weeks, SearchWatch.patient());
        for (GreenWeeks green : weeks.greens()) {
            Map<MapPoint, Candidate> clear =
                    green.candidates().stream().collect(Collectors.toMap(Candidate::at, c -> c));
            stands.put(
                    green.hole(),
                    plan.days().stream()
                            .map(day -> day.find(green.hole())
                                    .map(hole -> new Stand(
                                            clear.get(hole.candidate().at()),
                                            !hole.setAside().isEmpty())))
                            .toList());
        }
    }

    public static void main(String[] arguments) {
        new ChangeWeeks().run();
    }

    private void run() {
        System.out.println("| change | holes to move | moved | first, ms | median of " + TIMES + ", ms |");
        System.out.println("|---|---|---|---|---|");
        timed("nothing", Set.of(), 0, DAYS);
        timed("one green, a spot spoiled", Set.of("4"), SPOILED, DAYS);
        timed("one green, its middle closed", Set.of("4"), 8, DAYS);
        Set<String> six = Set.of("2", "4", "7", "9", "12", "16");
        timed("six greens, a spot of each spoiled", six, SPOILED, DAYS);
        timed("six greens, the middle of each closed", six, 8, DAYS);
        timed("today alone, six spots spoiled", six, SPOILED, 1);
    }

    /**
     * @param radius metres about where the holes of some greens stand today in which they may not be on any day
     * @param days how many days may be changed
     */
    private void timed(String name, Set<String> holes, double radius, int days) {
        ChangeRequest request = new ChangeRequest(without(holes, radius, days), stands);
        double[] millis = new double[TIMES];
        ChangedWeeks first = null;
        for (int time = 0; time < TIMES; time++) {
            long began = System.nanoTime();
            ChangedWeeks changed = new WeeksChanger(DemoPlans.POLICY).change(request, SearchWatch.patient());
            millis[time] = (System.nanoTime() - began) / 1e6;
            if (first != null && !first.equals(changed)) {
                throw new IllegalStateException(name + ": two answers differ");
            }
            first = changed;
        }
        double cold = millis[0];
        Arrays.sort(millis);
        int least = check(name, request.weeks(), first);
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %.0f | %.0f |%n",
                name,
                least,
                first.changes().size(),
                cold,
                millis[TIMES / 2]);
    }

    private WeeksRequest without(Set<String> holes, double radius, int days) {
        List<GreenWeeks> greens = new ArrayList<>();
        for (GreenWeeks green : weeks.greens()) {
            List<GreenDay> known = new ArrayList<>();
            MapPoint today =
                    stands.get(green.hole()).get(0).orElseThrow().spot().at();
            Wishes off = new Wishes(Optional.empty(), List.of(new Wishes.Circle(today, radius)), false);
            for (int day = 0; day < DAYS; day++) {
                Optional<Candidate> stand = stands.get(green.hole()).get(day).map(Stand::spot);
                Wishes wishes = holes.contains(green.hole()) ? off : Wishes.none();
                known.add(new GreenDay(
                        green.days().get(day).ground(), day < days ? wishes : new Wishes(stand, List.of(), false)));
            }
            greens.add(green.withDays(known));
        }
        return new WeeksRequest(weeks.days(), greens, weeks.sharedGreens(), weeks.rests(), weeks.busy(), weeks.seed());
    }

    /** How many holes had to be moved; they were, few others were, and all are where they may be. */
    private int check(String name, WeeksRequest asked, ChangedWeeks changed) {
        int least = 0;
        for (GreenWeeks green : asked.greens()) {
            for (int day = 0; day < DAYS; day++) {
                LocalDate date = asked.days().get(day);
                MapPoint stood =
                        stands.get(green.hole()).get(day).orElseThrow().spot().at();
                Wishes wishes = green.days().get(day).wishes();
                boolean mustMove = wishes.forbidden().stream().anyMatch(circle -> circle.holds(stood));
                Optional<HoleChange> change = changed.changes().stream()
                        .filter(one ->
                                one.hole().equals(green.hole()) && one.date().equals(date))
                        .findFirst();
                least += mustMove ? 1 : 0;
                MapPoint now = change.map(one -> one.to().orElseThrow().at()).orElse(stood);
                boolean may = wishes.forbidden().stream().noneMatch(circle -> circle.holds(now));
                if (mustMove != change.isPresent() && mustMove || !may) {
                    throw new IllegalStateException(name + ": hole " + green.hole() + " on " + date + " at " + now);
                }
            }
        }
        if (changed.changes().size() > 2 * least) {
            throw new IllegalStateException(name + ": " + changed.changes().size() + " holes moved for " + least);
        }
        return least;
    }
}
