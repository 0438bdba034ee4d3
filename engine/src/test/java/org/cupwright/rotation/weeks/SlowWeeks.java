package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.OtherGround;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.Candidate;

/**
 * What a plan of weeks costs, the slow way: each hole by the rules of its day's ground, dates and distances worked out
 * anew, terms as docs/guide and the settings say them. Shares no code with the search: the weights below are the
 * settings' defaults, written out.
 */
final class SlowWeeks {
    private final WeeksRequest request;
    private final Policy policy;
    private final double evenDays;

    /** By green and day where the hole is; empty where there is none. */
    private final List<List<Optional<Candidate>>> plan;

    /** By green and day, on which day of the plan the hole of the day was first there. */
    private final List<List<Integer>> begins;

    /** A plan of which every day has a hole of its own. */
    SlowWeeks(WeeksRequest request, List<List<Optional<Candidate>>> plan) {
        this(
                request,
                plan,
                plan.stream()
                        .map(green -> IntStream.range(0, green.size()).boxed().toList())
                        .toList());
    }

    SlowWeeks(WeeksRequest request, List<List<Optional<Candidate>>> plan, List<List<Integer>> begins) {
        this(request, plan, begins, 200);
    }

    /** @param evenDays points for each per cent that a day is harder or easier than usual */
    SlowWeeks(WeeksRequest request, List<List<Optional<Candidate>>> plan, List<List<Integer>> begins, double evenDays) {
        this.evenDays = evenDays;
        this.request = request;
        this.policy = Policy.defaults();
        this.plan = plan;
        this.begins = begins;
    }

    /** Whether the hole of a day is one that is cut that day, and not one that stays. */
    private boolean cut(int green, int day) {
        return begins.get(green).get(day) == day && !(day == 0 && stays(green));
    }

    /** Whether the hole in use before the plan stays on its first day. */
    private boolean stays(int green) {
        GreenWeeks of = request.greens().get(green);
        GreenDay today = of.days().get(0);
        return !today.changes()
                && !of.past().isEmpty()
                && of.past().get(of.past().size() - 1).leftOn().isEmpty()
                && today.wishes().locked().isPresent()
                && today.wishes()
                        .locked()
                        .get()
                        .at()
                        .equals(of.past().get(of.past().size() - 1).at());
    }

    double points() {
        double points = holes();
        for (int day = 0; day < request.days().size(); day++) {
            points += balance(day);
        }
        return points;
    }

    /** What the holes cost by themselves and for each other on their green. */
    double holes() {
        double points = 0;
        for (int day = 0; day < request.days().size(); day++) {
            for (int green = 0; green < plan.size(); green++) {
                if (plan.get(green).get(day).isPresent() && cut(green, day)) {
                    points += hole(green, day);
                }
            }
        }
        return points;
    }

    /** @param last the last day on which it was played to */
    private record Old(MapPoint at, LocalDate last, LocalDate left, boolean own) {}

    private double hole(int green, int day) {
        LocalDate today = request.days().get(day);
        Candidate spot = plan.get(green).get(day).orElseThrow();
        List<Old> old = old(green, day);
        double points = 0;
        boolean onPlug = false;
        List<GroundItem> items = new ArrayList<>(
                request.greens().get(green).days().get(day).ground().items());
        for (Old hole : old) {
            LocalDate rests = request.rests().restsUntil(hole.left);
            items.add(new GroundItem(Kind.OLD_HOLE, hole.at.toPoint(), Optional.of(hole.last), Optional.of(rests)));
            boolean resting = !rests.isBefore(today);
            if (resting && spot.at().distanceMetres(hole.at) < 2.74) {
                double whole = ChronoUnit.DAYS.between(hole.left, rests) + 1;
                double ahead = ChronoUnit.DAYS.between(today, rests) + 1;
                double left = Math.min(1, ahead / whole);
                points += 1300 * (spot.at().distanceMetres(hole.at) < 2.44 ? 1.5 + left : 0.88 + 0.01 * left);
            }
            long daysAfter = ChronoUnit.DAYS.between(rests, today);
            boolean foreseen =
                    !rests.isBefore(hole.left) && !rests.isBefore(request.days().get(0));
            if (foreseen && daysAfter >= 1 && daysAfter <= 3 && spot.at().distanceMetres(hole.at) < 2.74) {
                points += List.of(30.0, 20.0, 10.0).get((int) daysAfter - 1);
            }
            boolean plugged = hole.left.isBefore(today)
                    && !hole.left.isBefore(request.days().get(0));
            LocalDate plug = request.rests().plugShowsUntil(hole.left);
            if (plugged) {
                items.add(new GroundItem(Kind.PLUG, hole.at.toPoint(), Optional.of(hole.left), Optional.of(plug)));
                onPlug |= !plug.isBefore(today) && spot.at().distanceMetres(hole.at) < 0.15;
            }
        }
        points += onPlug ? 4 * 1300 : 0;
        points += request.greens().get(green).eased().contains(spot) ? eased(spot) : 0;
        GroundOnDay ground = new GroundOnDay(today, items);
        OtherGround rules = new OtherGround(ground, policy);
        boolean care = rules.setAside(spot.judgement()).verdict() != Verdict.PASS;
        points += care ? 45 : 0;
        points += spot.doubtful() ? 60 : 0;
        points += spot.judgement().vouchedFor() ? 0 : 20;
        points += room(spot, ground, care);
        points += yesterday(green, day, spot);
        return points + shared(green, day, spot);
    }

    /** By the rule that the settings, as they come, set aside last; each further one adds a little. */
    private static double eased(Candidate spot) {
        Map<RuleId, Double> shares = Map.of(
                RuleId.HOLLOW, 0.82,
                RuleId.EVEN_GRADE, 0.84,
                RuleId.HAZARD, 0.86,
                RuleId.RIDGE, 0.90,
                RuleId.EDGE, 0.92,
                RuleId.LEVEL, 0.94,
                RuleId.HOLDABLE, 0.96);
        Set<RuleId> rules = spot.judgement().setAside();
        double dearest = rules.stream().mapToDouble(shares::get).max().orElseThrow();
        return 1300 * (dearest + 0.005 * (rules.size() - 1));
    }

    private double room(Candidate spot, GroundOnDay ground, boolean care) {
        double room = Math.min(spot.goodWithinMetres(), nearest(spot, points(ground, Kind.OLD_HOLE)) - 2.74);
        if (!care) {
            room = Math.min(room, nearest(spot, ground.lastHoles(4, 28)) - 4.88);
            room = Math.min(room, nearest(spot, points(ground, Kind.PLUG)) - 0.91);
        }
        room = Math.max(0, room);
        return (room < 0.914 / 2 ? 15 : 0) + 5 * Math.max(0, 1.83 - room);
    }

    private static List<MapPoint> points(GroundOnDay ground, Kind kind) {
        return ground.counting(kind).stream()
                .map(item -> MapPoint.of(item.place().getCoordinate()))
                .toList();
    }

    private static double nearest(Candidate spot, List<MapPoint> points) {
        return points.stream().mapToDouble(spot.at()::distanceMetres).min().orElse(1e9);
    }

    private double yesterday(int green, int day, Candidate spot) {
        List<PastHole> past = request.greens().get(green).past();
        Optional<MapPoint> before = day > 0
                ? plan.get(green).get(day - 1).map(Candidate::at)
                : past.stream().reduce((a, b) -> b).map(PastHole::at);
        double away = before.map(spot.at()::distanceMetres).orElse(1e9);
        return 20 * Math.max(0, 5 - away) + Math.max(0, 10 - away);
    }

    /** Each of two holes on one green pays, as each is priced by itself. */
    private double shared(int green, int day, Candidate spot) {
        double points = 0;
        for (int other = 0; other < plan.size(); other++) {
            if (shares(green, other) && plan.get(other).get(day).isPresent()) {
                double apart =
                        spot.at().distanceMetres(plan.get(other).get(day).get().at());
                points += 20 * Math.max(0, 18.3 - apart) + (apart < 9.15 ? 1300 : 0);
            }
        }
        return points;
    }

    private boolean shares(int green, int other) {
        String one = request.greens().get(green).hole();
        String two = request.greens().get(other).hole();
        return request.sharedGreens().stream()
                .anyMatch(pair -> pair.first().equals(one) && pair.second().equals(two)
                        || pair.first().equals(two) && pair.second().equals(one));
    }

    /** The holes of a green before a day's are cut, its own first. */
    private List<Old> old(int green, int day) {
        List<Old> old = new ArrayList<>();
        for (int source = 0; source < plan.size(); source++) {
            if (source != green && !shares(green, source)) {
                continue;
            }
            for (PastHole past : request.greens().get(source).past()) {
                LocalDate left = past.leftOn().orElse(request.days().get(0));
                LocalDate last = left.isAfter(past.cutOn()) ? left.minusDays(1) : past.cutOn();
                if (past.leftOn().isPresent() || !stays(source)) {
                    old.add(new Old(past.at(), last, left, source == green));
                }
            }
            // A hole is left where another day's takes its place.
            for (int earlier = 0; earlier < day; earlier++) {
                if (!begins.get(source).get(earlier).equals(begins.get(source).get(earlier + 1))) {
                    LocalDate last = request.days().get(earlier);
                    LocalDate left = request.days().get(earlier + 1);
                    boolean own = source == green;
                    plan.get(source).get(earlier).ifPresent(spot -> old.add(new Old(spot.at(), last, left, own)));
                }
            }
        }
        old.sort(Comparator.comparing((Old hole) -> !hole.own));
        return old;
    }

    /** What the greens of a day cost together. */
    double balance(int day) {
        int[] thirds = new int[3];
        int[] sides = new int[3];
        int[] ranks = new int[3];
        double off = 0;
        double usual = 0;
        for (int green = 0; green < plan.size(); green++) {
            double mean = request.greens().get(green).candidates().stream()
                    .flatMapToDouble(spot -> spot.judgement().difficulty().meanLeaveMetres().stream())
                    .average()
                    .orElse(0);
            usual += mean;
            Optional<Candidate> spot = plan.get(green).get(day);
            if (spot.isPresent()) {
                thirds[spot.get().third().map(Third::ordinal).orElseThrow()]++;
                sides[spot.get().lateral().orElseThrow().ordinal()]++;
                spot.get().rank().map(DifficultyClass::ordinal).ifPresent(rank -> ranks[rank]++);
                off += spot.get().judgement().difficulty().meanLeaveMetres().orElse(mean) - mean;
            }
        }
        boolean busy = request.busy().contains(request.days().get(day));
        double points = 300 * off(thirds, 1, 1, 1)
                + 60 * Math.max(0, Math.abs(sides[0] - sides[2]) - 2)
                + 10 * off(sides, 1, 1, 1)
                + 15 * (busy ? off(ranks, 3, 2, 1) : off(ranks, 1, 1, 1));
        return points + (busy || usual == 0 ? 0 : evenDays * 100 * Math.abs(off) / usual);
    }

    /** How many holes of a day would have to be in another third. */
    int thirdsOff(int day) {
        int[] thirds = new int[3];
        for (List<Optional<Candidate>> green : plan) {
            green.get(day).ifPresent(spot -> thirds[spot.third().orElseThrow().ordinal()]++);
        }
        return off(thirds, 1, 1, 1);
    }

    /** How many have to be in another part, so that each part is its share rounded down or up. */
    private static int off(int[] counts, int... shares) {
        int all = counts[0] + counts[1] + counts[2];
        double parts = shares[0] + shares[1] + shares[2];
        int over = 0;
        int under = 0;
        for (int part = 0; part < 3; part++) {
            double share = all * shares[part] / parts;
            over += (int) Math.max(0, counts[part] - Math.ceil(share - 1e-9));
            under += (int) Math.max(0, Math.floor(share + 1e-9) - counts[part]);
        }
        return Math.max(over, under);
    }
}
