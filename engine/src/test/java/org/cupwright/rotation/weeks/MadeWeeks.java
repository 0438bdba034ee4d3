package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.Difficulty;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.SharedGreen;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;

/** Invented greens over some days, for the tests of weeks. */
final class MadeWeeks {
    static final LocalDate FIRST = LocalDate.of(2027, 5, 3);

    private MadeWeeks() {}

    static List<LocalDate> days(int count) {
        return IntStream.range(0, count).mapToObj(FIRST::plusDays).toList();
    }

    /** Ground rests and plugs show for so many days, the day on which the hole was left included. */
    static RestDays rests(int rest, int plug) {
        return new RestDays(left -> left.plusDays(rest - 1L), left -> left.plusDays(plug - 1L));
    }

    static WeeksRequest request(int days, RestDays rests, GreenWeeks... greens) {
        return new WeeksRequest(days(days), List.of(greens), List.of(), rests, Set.of(), 1);
    }

    /** A green with nothing on it and no past. */
    static GreenWeeks green(String hole, int days, List<Candidate> candidates) {
        return new GreenWeeks(hole, candidates, List.of(), Optional.empty(), clear(days));
    }

    static List<GreenDay> clear(int days) {
        return days(days).stream()
                .map(day -> new GreenDay(GroundOnDay.clear(day), Wishes.none()))
                .toList();
    }

    /** The same green, of which one day is otherwise. */
    static GreenWeeks with(GreenWeeks green, int day, GreenDay other) {
        List<GreenDay> days = new ArrayList<>(green.days());
        days.set(day, other);
        return green.withDays(days);
    }

    /** Good spots all over a green of thirty metres, so many metres apart, easier in front and harder at the back. */
    static List<Candidate> lattice(double apart) {
        List<Candidate> spots = new ArrayList<>();
        for (double north = 4; north <= 26; north += apart) {
            for (double east = 4; east <= 26; east += apart) {
                int rank = Math.min(2, (int) (north / 10));
                spots.add(MadeGreens.good(east, north, DifficultyClass.values()[rank]));
            }
        }
        return spots;
    }

    /** As odd as greens get: of mixed spots, with a past, days on which they are closed, locked, marked or saved. */
    static WeeksRequest odd(Random random, int days, int greens, int spots) {
        List<GreenWeeks> made = new ArrayList<>();
        for (int i = 0; i < greens; i++) {
            made.add(odd(random, Integer.toString(i + 1), days, spots));
        }
        boolean shared = greens > 1 && random.nextBoolean();
        return new WeeksRequest(
                days(days),
                made,
                shared ? List.of(new SharedGreen("1", "2")) : List.of(),
                rests(1 + random.nextInt(days), 1 + random.nextInt(days)),
                random.nextBoolean() ? Set.of(FIRST.plusDays(random.nextInt(days))) : Set.of(),
                random.nextLong());
    }

    /** The same weeks of which no two holes are played to one green. */
    static WeeksRequest unshared(WeeksRequest weeks) {
        return new WeeksRequest(weeks.days(), weeks.greens(), List.of(), weeks.rests(), weeks.busy(), weeks.seed());
    }

    /** The same weeks of which every hole is changed every day. */
    static WeeksRequest changedDaily(WeeksRequest weeks) {
        List<GreenWeeks> greens = weeks.greens().stream()
                .map(green -> green.withDays(green.days().stream()
                        .map(day -> new GreenDay(day.ground(), day.wishes()))
                        .toList()))
                .toList();
        return new WeeksRequest(weeks.days(), greens, weeks.sharedGreens(), weeks.rests(), weeks.busy(), weeks.seed());
    }

    /** Holes that stand anywhere on their greens, some nowhere. */
    static Map<String, List<Optional<Stand>>> anyStands(WeeksRequest weeks, Random random) {
        Map<String, List<Optional<Stand>>> stands = new HashMap<>();
        for (GreenWeeks green : weeks.greens()) {
            List<Optional<Stand>> days = new ArrayList<>();
            for (int day = 0; day < weeks.days().size(); day++) {
                Candidate spot =
                        green.candidates().get(random.nextInt(green.candidates().size()));
                days.add(random.nextInt(5) == 0 ? Optional.empty() : Optional.of(new Stand(spot, false)));
            }
            stands.put(green.hole(), days);
        }
        return stands;
    }

    /** The same day on which only one of some spots may have the hole. */
    static GreenDay only(GreenDay day, List<Candidate> all, Candidate... may) {
        List<Wishes.Circle> out = all.stream()
                .filter(spot -> !List.of(may).contains(spot))
                .map(spot -> new Wishes.Circle(spot.at(), 0.01))
                .toList();
        return new GreenDay(day.ground(), new Wishes(Optional.empty(), out, false), day.changes());
    }

    private static GreenWeeks odd(Random random, String hole, int days, int spots) {
        Map<MapPoint, Candidate> candidates = new HashMap<>();
        while (candidates.size() < spots) {
            Candidate spot = spot(random);
            candidates.put(spot.at(), spot);
        }
        List<Candidate> all = new ArrayList<>(candidates.values());
        all.sort((a, b) -> Double.compare(a.at().east() * 100 + a.at().north(), b.at().east() * 100 + b.at().north()));
        List<Candidate> strict = all.subList(random.nextInt(3) == 0 ? all.size() / 3 : 0, all.size());
        List<Candidate> eased = all.subList(0, all.size() - strict.size()).stream()
                .map(spot -> MadeGreens.eased(spot, EASED.get(random.nextInt(EASED.size()))))
                .toList();
        List<PastHole> past = past(random);
        List<GreenDay> known = new ArrayList<>();
        boolean everyDay = random.nextBoolean();
        for (LocalDate day : days(days)) {
            boolean changes = everyDay || random.nextInt(3) == 0;
            known.add(new GreenDay(ground(random, day), wishes(random), changes));
        }
        boolean inUse = !past.isEmpty() && past.get(past.size() - 1).leftOn().isEmpty();
        if (inUse && !known.get(0).changes()) {
            MapPoint at = past.get(past.size() - 1).at();
            Candidate there = MadeGreens.good(at.east(), at.north(), DifficultyClass.MEDIUM);
            Wishes stays = new Wishes(Optional.of(there), List.of(), false);
            known.set(0, new GreenDay(known.get(0).ground(), stays, false));
        }
        return new GreenWeeks(hole, strict, eased, past, Optional.empty(), known);
    }

    private static final List<Set<RuleId>> EASED = List.of(
            Set.of(RuleId.EDGE),
            Set.of(RuleId.HAZARD),
            Set.of(RuleId.EDGE, RuleId.HAZARD),
            Set.of(RuleId.LEVEL),
            Set.of(RuleId.HOLLOW, RuleId.RIDGE));

    private static Candidate spot(Random random) {
        double east = 4 + random.nextInt(23);
        double north = 4 + random.nextInt(23);
        Verdict verdict = random.nextInt(4) > 0 ? Verdict.PASS : Verdict.CAUTION;
        Optional<DifficultyClass> rank = Optional.of(DifficultyClass.values()[random.nextInt(3)]);
        Candidate spot = MadeGreens.candidate(east, north, verdict, rank, true, 3 * random.nextDouble());
        return random.nextInt(4) > 0 ? withLeave(spot, 0.5 + random.nextDouble()) : spot;
    }

    /** The same spot, of which it is known how far off it leaves a ball. */
    static Candidate withLeave(Candidate spot, double metres) {
        Judgement known = spot.judgement();
        Judgement judged = new Judgement(
                known.position(),
                known.verdict(),
                known.restsOn(),
                known.rules(),
                known.setAside(),
                new Difficulty(
                        OptionalDouble.empty(),
                        known.difficulty().rank(),
                        OptionalDouble.of(metres),
                        OptionalDouble.of(2 * metres)),
                known.word());
        return new Candidate(judged, spot.place(), spot.goodWithinMetres(), spot.onSavedGround());
    }

    private static List<PastHole> past(Random random) {
        List<PastHole> past = new ArrayList<>();
        int holes = random.nextInt(4);
        for (int i = holes; i > 0; i--) {
            boolean inUse = i == 1 && random.nextBoolean();
            past.add(new PastHole(
                    new MapPoint(4 + random.nextInt(23), 4 + random.nextInt(23)),
                    FIRST.minusDays(i + 1L),
                    inUse ? Optional.empty() : Optional.of(FIRST.minusDays(i))));
        }
        return past;
    }

    private static GroundOnDay ground(Random random, LocalDate day) {
        MapPoint at = new MapPoint(4 + random.nextInt(23), 4 + random.nextInt(23));
        return switch (random.nextInt(6)) {
            case 0 -> new GroundOnDay(day, List.of(item(Kind.PLUG, at, day)));
            case 1 -> new GroundOnDay(day, List.of(area(Kind.OUT_OF_USE, at, day)));
            case 2 -> new GroundOnDay(day, List.of(area(Kind.SAVED, at, day), area(Kind.LIGHT_USE, at, day)));
            default -> GroundOnDay.clear(day);
        };
    }

    private static GroundItem item(Kind kind, MapPoint at, LocalDate until) {
        return new GroundItem(kind, at.toPoint(), Optional.empty(), Optional.of(until));
    }

    private static GroundItem area(Kind kind, MapPoint at, LocalDate until) {
        return new GroundItem(kind, at.toPoint().buffer(4), Optional.empty(), Optional.of(until));
    }

    private static Wishes wishes(Random random) {
        return switch (random.nextInt(12)) {
            case 0 -> Wishes.greenClosed();
            case 1 -> new Wishes(Optional.of(MadeGreens.good(5.5, 6.5, DifficultyClass.EASIER)), List.of(), false);
            case 2 -> new Wishes(Optional.empty(), List.of(new Wishes.Circle(new MapPoint(15, 15), 5)), false);
            default -> Wishes.none();
        };
    }
}
