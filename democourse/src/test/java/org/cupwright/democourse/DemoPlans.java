package org.cupwright.democourse;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.Fact;
import org.cupwright.green.Green;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.GreenLattice;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.OnConvention;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.GoodWithin;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.holelocation.judging.OtherGround;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.DayPlanner;
import org.cupwright.rotation.DayRequest;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.SharedGreen;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.EasedCandidates;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.GreenSpots;
import org.cupwright.rotation.candidate.JudgedSpot;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.rotation.weeks.GreenDay;
import org.cupwright.rotation.weeks.GreenWeeks;
import org.cupwright.rotation.weeks.PastHole;
import org.cupwright.rotation.weeks.RestDays;
import org.cupwright.rotation.weeks.WeeksRequest;
import org.cupwright.testing.Suite;
import org.cupwright.turf.state.CupInGround;
import org.cupwright.turf.state.HolesOnGreen;
import org.cupwright.turf.state.TurfState;
import org.cupwright.turf.today.Clocks;
import org.cupwright.turf.today.ComingGround;
import org.cupwright.turf.today.TurfDay;
import org.cupwright.turf.weather.WeatherOutlook;
import org.cupwright.units.GreenSpeed;

/**
 * Plans days of the invented course one by one, at 10 ft and with the settings as they come; its greens are measured
 * once.
 *
 * <p>Of the lattice's spots every so many-th along and across are offered to the plan: fewer make it faster and its
 * choice smaller.
 */
public final class DemoPlans {
    static final DemoCourse DEMO = new DemoCourse(1);
    static final Course COURSE = DEMO.course();
    public static final ZoneId ZONE = COURSE.frame().zone();
    public static final Policy POLICY = Policy.defaults();
    private static final GreenSpeed SPEED = new GreenSpeed(10);

    /**
     * Fewer spots than this are offered whole (our choice): where ground is scarce, thinning could lose the last of it.
     */
    private static final int FEW = 200;

    /** As the program has it. */
    private static final int FEW_FOR_WEEKS = 400;

    private static final List<SharedGreen> SHARED = List.of(new SharedGreen("9", "18"));

    private static final Set<Verdict> GOOD = EnumSet.of(Verdict.PASS, Verdict.CAUTION);

    private final Map<String, GreenJudge> judges;
    private final Map<String, List<Candidate>> lasting = new ConcurrentHashMap<>();
    private final Map<String, List<Candidate>> eased = new ConcurrentHashMap<>();
    private final int every;

    public DemoPlans(int every) {
        this.every = every;
        this.judges =
                COURSE.holes().parallelStream().collect(Collectors.toConcurrentMap(Hole::id, DemoPlans::measured));
    }

    private static GreenJudge measured(Hole hole) {
        GroundOnDay clear = GroundOnDay.clear(DemoCourse.TODAY);
        return new GreenJudge(new Green(hole, DemoGrounds.of(DEMO, hole, POLICY)), conditions(clear), POLICY);
    }

    private static DayConditions conditions(GroundOnDay ground) {
        return new DayConditions(SPEED, false, false, ground);
    }

    /**
     * A day's plan.
     *
     * @param conceded by hole, what had to be conceded for its green; greens on which nothing had to be are missing
     */
    public record Planned(DayPlan plan, Map<String, List<ConcessionStep>> conceded) {}

    /** A day's plan on the ground that a state leaves, in weather as far as it is known. */
    public Planned plan(LocalDate day, TurfState state, WeatherOutlook outlook) {
        ComingGround coming = new ComingGround(TurfDay.of(state, day, outlook, POLICY));
        Map<String, GroundOnDay> grounds =
                COURSE.holes().stream().collect(Collectors.toMap(Hole::id, hole -> ground(hole, day, coming)));
        Map<String, GreenJudge> judged = COURSE.holes().parallelStream()
                .collect(Collectors.toConcurrentMap(
                        Hole::id, hole -> judges.get(hole.id()).onDay(conditions(grounds.get(hole.id())))));
        List<GreenCandidates> greens = COURSE.holes().parallelStream()
                .map(hole -> new GreenCandidates(
                        hole.id(),
                        candidates(hole, judged.get(hole.id()), grounds.get(hole.id())),
                        state.green(hole.id()).cup().map(CupInGround::at),
                        Wishes.none()))
                .toList();
        DayPlan plan = new DayPlanner(POLICY).plan(new DayRequest(day, greens, SHARED, false, Suite.seed()));
        Map<String, List<ConcessionStep>> conceded = new TreeMap<>();
        judged.forEach((hole, judge) -> conceded.put(hole, judge.judgeGreen().concessions()));
        conceded.values().removeIf(List::isEmpty);
        return new Planned(plan, conceded);
    }

    /**
     * What spots are on a morning, on the ground as it is by then; nothing is conceded for it.
     *
     * @param spots by hole, judged with nothing lying on the green
     */
    public Map<String, Judgement> onTheMorning(
            LocalDate day, Map<String, Candidate> spots, TurfState state, WeatherOutlook outlook) {
        ComingGround coming = new ComingGround(TurfDay.of(state, day, outlook, POLICY));
        Map<String, Judgement> found = new TreeMap<>();
        spots.forEach((hole, spot) -> {
            GroundOnDay ground = ground(COURSE.find(hole).orElseThrow(), day, coming);
            found.put(hole, new OtherGround(ground, POLICY).of(spot.judgement()));
        });
        return found;
    }

    /** Days to be planned together on the ground that a state leaves on their first morning. */
    public WeeksRequest weeks(List<LocalDate> days, TurfState state, WeatherOutlook outlook, long seed) {
        TurfDay today = TurfDay.of(state, days.get(0), outlook, POLICY);
        ComingGround coming = new ComingGround(today);
        Clocks clocks = new Clocks(today);
        List<GreenWeeks> greens = COURSE.holes().parallelStream()
                .map(hole -> new GreenWeeks(
                        hole.id(),
                        lasting.computeIfAbsent(hole.id(), id -> lasting(hole)),
                        eased.computeIfAbsent(hole.id(), id -> eased(hole)),
                        past(state.green(hole.id()).holes()),
                        Optional.empty(),
                        days.stream()
                                .map(day -> new GreenDay(withoutHoles(ground(hole, day, coming)), Wishes.none()))
                                .toList()))
                .toList();
        return new WeeksRequest(
                days, greens, SHARED, new RestDays(clocks::restsUntil, clocks::plugShowsUntil), Set.of(), seed);
    }

    /** On a small green more of its spots, so that some fit between the ground that rests. */
    private List<Candidate> lasting(Hole hole) {
        GroundOnDay clear = GroundOnDay.clear(DemoCourse.TODAY);
        GreenJudge judge = judges.get(hole.id());
        double square = POLICY.get(RotationPolicy.CANDIDATE_SQUARE_METRES);
        List<Candidate> some = candidates(hole, offered(judge, every), judge, clear, square);
        return some.size() >= FEW_FOR_WEEKS ? some : candidates(hole, offered(judge, 1), judge, clear, square / 2);
    }

    /** Ground for days on which all else is used up, as the program has it. */
    private List<Candidate> eased(Hole hole) {
        double square = 2 * POLICY.get(RotationPolicy.CANDIDATE_SQUARE_METRES);
        List<JudgedSpot> spots = judged(hole, judges.get(hole.id()).eased());
        return EasedCandidates.of(spots, GroundOnDay.clear(DemoCourse.TODAY), square);
    }

    private static List<JudgedSpot> judged(Hole hole, List<Judgement> spots) {
        GreenFrame frame = GreenFrame.of(hole, OnConvention.ALONG_CHORD).orElseThrow();
        return spots.stream()
                .map(spot -> new JudgedSpot(spot, Optional.of(frame.place(spot.position()))))
                .toList();
    }

    private static List<PastHole> past(HolesOnGreen holes) {
        List<PastHole> past = new ArrayList<>();
        holes.old().forEach(old -> past.add(new PastHole(old.at(), old.cutOn(), Optional.of(old.leftOn()))));
        holes.now().ifPresent(now -> past.add(new PastHole(now.at(), now.cutOn(), Optional.empty())));
        return past;
    }

    private static GroundOnDay withoutHoles(GroundOnDay ground) {
        return new GroundOnDay(
                ground.day(),
                ground.items().stream()
                        .filter(item -> item.kind() != GroundItem.Kind.OLD_HOLE)
                        .toList());
    }

    private static GroundOnDay ground(Hole hole, LocalDate day, ComingGround coming) {
        List<GroundItem> items = new ArrayList<>(coming.on(hole.id(), day).items());
        COURSE.sharingGreenWith(hole)
                .forEach(other -> items.addAll(coming.on(other.id(), day).items()));
        return new GroundOnDay(day, items);
    }

    private List<Candidate> candidates(Hole hole, GreenJudge judge, GroundOnDay ground) {
        return candidates(hole, offered(judge), judge, ground, POLICY.get(RotationPolicy.CANDIDATE_SQUARE_METRES));
    }

    private static List<Candidate> candidates(
            Hole hole, List<Judgement> offered, GreenJudge judge, GroundOnDay ground, double squareMetres) {
        GreenJudgement green = judge.judgeGreen();
        return new GreenSpots(judged(hole, offered), ground)
                .thinned(squareMetres).stream()
                        .map(one -> new Candidate(
                                one.judgement(),
                                one.place(),
                                GoodWithin.of(one.judgement(), green).metres(),
                                one.onSavedGround()))
                        .toList();
    }

    /** Where there is little good ground, all of its spots. */
    private List<Judgement> offered(GreenJudge judge) {
        List<Judgement> some = offered(judge, every);
        return some.size() < FEW ? offered(judge, 1) : some;
    }

    private static List<Judgement> offered(GreenJudge judge, int every) {
        GreenJudgement green = judge.judgeGreen();
        GreenLattice lattice = green.lattice();
        List<Judgement> offered = new ArrayList<>();
        for (int row = 0; row < lattice.rows(); row += every) {
            for (int column = 0; column < lattice.columns(); column += every) {
                int cell = row * lattice.columns() + column;
                if (green.findVerdict(cell).filter(GOOD::contains).isPresent()) {
                    offered.add(judge.judge(lattice.spot(cell)));
                }
            }
        }
        return offered;
    }

    /** The fact that a hole was cut where it was planned. */
    public static Fact cut(LocalDate day, PlannedHole hole) {
        return cut(day, hole.hole(), hole.candidate());
    }

    /** The fact that a hole was cut at a spot. */
    public static Fact cut(LocalDate day, String hole, Candidate spot) {
        Instant at = day.atTime(6, 0).atZone(ZONE).toInstant();
        UUID id = UUID.nameUUIDFromBytes((day + " hole " + hole).getBytes(StandardCharsets.UTF_8));
        CupChanged changed = CupChanged.asPlanned(spot.at());
        return new Fact(id, 1, at, at, Optional.empty(), "invented", COURSE.id(), Optional.of(hole), changed);
    }
}
