package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.counting.Split;
import org.cupwright.rotation.exact.ZeroOneAnswer;
import org.cupwright.rotation.exact.ZeroOneProblem;
import org.cupwright.rotation.exact.ZeroOneSolver;
import org.cupwright.rotation.shortage.Packing;

/**
 * Other ways to plan weeks than the program's own, for benchmarks and tests: each hole after another without looking
 * back, and a solver for all of it at once. What a plan is worth is worked out by {@link SlowWeeks}, which shares no
 * code with the search.
 */
public final class WeeksWays {
    private final WeeksRequest request;
    private final WeeksModel model;

    public WeeksWays(WeeksRequest request, Policy policy) {
        this.request = request;
        this.model = new WeeksModel(request, policy);
    }

    /**
     * What a plan comes to.
     *
     * @param points worked out anew, at the weights the settings come with
     * @param holesSetAside holes on ground that rests
     * @param daysSetAside days with such a hole
     * @param thirdsOff holes off even thirds
     */
    public record Worth(double points, int holesSetAside, int daysSetAside, int thirdsOff) {}

    /** Hole after hole where it costs least, given those before it. */
    public Worth greedy() {
        Choices choices = new Choices(model);
        for (int day = 0; day < model.dayCount(); day++) {
            for (int green = 0; green < model.greenCount(); green++) {
                long least = Long.MAX_VALUE;
                int best = GreenTable.NONE;
                for (int spot : model.table(green).offered(day)) {
                    long change = choices.change(green, day, spot);
                    if (change < least) {
                        least = change;
                        best = spot;
                    }
                }
                choices.put(green, day, best);
            }
        }
        return worth(choices);
    }

    /** The program's own search with so much work, or until it is stopped. */
    public Worth own(long mostWork, SearchWatch watch) {
        return worth(new WeeksSearch(model, request.seed(), mostWork, watch).find());
    }

    /** The same: by day, where each hole is, and whether a rule is set aside for it; no reasons are made. */
    public List<Map<String, Stand>> spots(long mostWork, SearchWatch watch) {
        Choices choices = new WeeksSearch(model, request.seed(), mostWork, watch).find();
        RestingHoles against = new RestingHoles(model);
        List<Map<String, Stand>> days = new ArrayList<>();
        for (int day = 0; day < model.dayCount(); day++) {
            Map<String, Stand> holes = new TreeMap<>();
            for (int green = 0; green < model.greenCount(); green++) {
                int spot = choices.chosen(green, day);
                if (spot != GreenTable.NONE) {
                    GreenTable table = model.table(green);
                    holes.put(table.green().hole(), new Stand(table.spot(spot), against.rests(choices, green, day)));
                }
            }
            days.add(holes);
        }
        return days;
    }

    /**
     * A solver for all days at once. Rules, each of which may be broken at its price: rest, by groups of spots and
     * windows of days, and even thirds. Wishes: what spots cost by themselves, the balance of sides and difficulty. How
     * far holes are from yesterday's and from the last ones is left out: it would be a product for each two spots.
     *
     * @param spotsOfGreen how many of a green's spots take part, spread over it
     * @return empty where it found no plan
     */
    public Optional<Worth> solver(ZeroOneSolver solver, int spotsOfGreen, double mostWork) {
        ZeroOneProblem problem = new ZeroOneProblem();
        List<Hole> holes = new ArrayList<>();
        for (int green = 0; green < model.greenCount(); green++) {
            List<Hole> ofGreen = new ArrayList<>();
            for (int day = 0; day < model.dayCount(); day++) {
                ofGreen.addAll(holes(problem, green, day, spotsOfGreen));
            }
            rest(problem, green, ofGreen);
            holes.addAll(ofGreen);
        }
        for (int day = 0; day < model.dayCount(); day++) {
            int today = day;
            List<Hole> ofDay = holes.stream().filter(hole -> hole.day == today).toList();
            balance(problem, ofDay, Split.THIRD, 300_000, model);
            balance(problem, ofDay, Split.LATERAL, 10_000, model);
            balance(problem, ofDay, Split.DIFFICULTY, 15_000, model);
        }
        ZeroOneAnswer answer = solver.solve(problem, mostWork);
        if (!answer.found()) {
            return Optional.empty();
        }
        Choices choices = new Choices(model);
        holes.stream()
                .filter(hole -> answer.yes().get(hole.decision))
                .forEach(hole -> choices.put(hole.green, hole.day, hole.spot));
        return Optional.of(worth(choices));
    }

    /** That a hole is there, rested or with the rule set aside. */
    private record Hole(int green, int day, int spot, boolean rested, int decision) {}

    private static int[] some(int[] offered, int count) {
        int wanted = Math.min(count, offered.length);
        return IntStream.range(0, wanted)
                .map(i -> offered[(int) ((long) i * offered.length / wanted)])
                .toArray();
    }

    private List<Hole> holes(ZeroOneProblem problem, int green, int day, int spotsOfGreen) {
        GreenTable table = model.table(green);
        List<Hole> holes = new ArrayList<>();
        for (int spot : some(table.offered(day), spotsOfGreen)) {
            long cost = table.own(spot) + (table.care(day, spot) ? 45_000 : 0) + room(table.room(spot));
            if (!model.green(green).onRestingPast(day, spot)) {
                holes.add(new Hole(green, day, spot, true, problem.decision(cost)));
            }
            holes.add(new Hole(green, day, spot, false, problem.decision(cost + 500_000)));
        }
        if (!holes.isEmpty()) {
            problem.exactlyOne(decisions(holes));
        }
        return holes;
    }

    private static int[] decisions(List<Hole> holes) {
        return holes.stream().mapToInt(Hole::decision).toArray();
    }

    private static long room(double metres) {
        return Math.round(1000 * ((metres < 0.457 ? 15 : 0) + 5 * Math.max(0, 1.83 - metres)));
    }

    /** Of each group of spots and window of days at most one rested hole. */
    private void rest(ZeroOneProblem problem, int green, List<Hole> holes) {
        int[] spots = holes.stream().mapToInt(Hole::spot).distinct().toArray();
        List<MapPoint> at =
                Arrays.stream(spots).mapToObj(model.table(green)::at).toList();
        List<BitSet> groups = new Packing(at, model.restMetres(), Optional.empty(), 0).groups();
        int before = -1;
        for (int day = 0; day < model.dayCount(); day++) {
            int from = day;
            int to = model.green(green).restsUntil(day);
            if (to == before) {
                continue;
            }
            before = to;
            for (BitSet group : groups) {
                BitSet spotsOfGroup = new BitSet();
                group.stream().forEach(i -> spotsOfGroup.set(spots[i]));
                List<Hole> together = holes.stream()
                        .filter(hole -> hole.rested && spotsOfGroup.get(hole.spot))
                        .filter(hole -> hole.day >= from && hole.day <= to)
                        .toList();
                if (together.size() > 1) {
                    problem.atMostOne(decisions(together));
                }
            }
        }
    }

    /** No part has more than its share rounded up, or each hole more is paid for. */
    private static void balance(ZeroOneProblem problem, List<Hole> ofDay, Split split, long price, WeeksModel model) {
        int open = (int) ofDay.stream().mapToInt(Hole::green).distinct().count();
        int most = (open + 2) / 3;
        for (int part = 0; part < 3; part++) {
            int number = part;
            List<Integer> counted = new ArrayList<>();
            ofDay.stream()
                    .filter(hole -> split.parts(model.table(hole.green).tally(hole.spot))
                                    .count(number)
                            > 0)
                    .forEach(hole -> counted.add(hole.decision));
            // Payers that do not pay count too: so many holes above the share need so many that do.
            for (int payer = most; payer < open; payer++) {
                int not = problem.decision(0);
                problem.exactlyOne(problem.decision(price), not);
                counted.add(not);
            }
            problem.between(
                    0, open, counted.stream().mapToInt(Integer::intValue).toArray());
        }
    }

    private Worth worth(Choices choices) {
        List<List<Optional<Candidate>>> plan = new ArrayList<>();
        BitSet days = new BitSet();
        int resting = 0;
        RestingHoles counted = new RestingHoles(model);
        for (int green = 0; green < model.greenCount(); green++) {
            List<Optional<Candidate>> holes = new ArrayList<>();
            for (int day = 0; day < model.dayCount(); day++) {
                int spot = choices.chosen(green, day);
                holes.add(
                        spot == GreenTable.NONE
                                ? Optional.empty()
                                : Optional.of(model.table(green).spot(spot)));
                if (counted.rests(choices, green, day)) {
                    resting++;
                    days.set(day);
                }
            }
            plan.add(holes);
        }
        double points = new SlowWeeks(request, plan).points();
        double searched = choices.total() / 1000.0;
        if (Math.abs(points - searched) > 0.01 * (model.greenCount() * model.dayCount() + 5)) {
            throw new IllegalStateException("worked out anew a plan has " + points + " points, not " + searched);
        }
        int thirds = IntStream.range(0, model.dayCount())
                .map(day -> model.aims(day).thirdsOff(choices.tally(day)))
                .sum();
        return new Worth(points, resting, days.cardinality(), thirds);
    }
}
