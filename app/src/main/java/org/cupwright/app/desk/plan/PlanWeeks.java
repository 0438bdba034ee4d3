package org.cupwright.app.desk.plan;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.cupwright.app.desk.ChangedMeanwhile;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.first.FirstOfDay;
import org.cupwright.app.desk.green.GreensOfDay;
import org.cupwright.app.desk.green.Judging;
import org.cupwright.app.desk.plan.WeeksAsked.WeekDay;
import org.cupwright.app.desk.turf.WeeksWeather;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Asked;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.Basis;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.Versions;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Problem;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.shortage.Shortage;
import org.cupwright.rotation.solver.CpSat;
import org.cupwright.rotation.weeks.SearchWatch;
import org.cupwright.rotation.weeks.WeeksBounds;
import org.cupwright.rotation.weeks.WeeksPlan;
import org.cupwright.rotation.weeks.WeeksPlanner;
import org.cupwright.turf.weather.WeatherBasis;

/**
 * Decides the hole locations of many days together and keeps them as drafts; days that are published stay as they are.
 *
 * <p>All days are judged at the fastest green speed known of any of them, and as for rain if it is foretold for one:
 * each is planned anew on its own morning, when more is known.
 */
public record PlanWeeks(Session session, String engineVersion) {
    /** Twelve weeks: our choice; farther ahead nobody knows the weather or the ground. */
    public static final int MOST_DAYS = 84;

    private static final int PERCENT = 100;

    /**
     * Stored plans of many days.
     *
     * @param day the first of them
     * @param plans one for each day, in order, those that stood already among them
     * @param weather for each day, what the weather rests on by which old holes rest
     * @param first what has to be known on the first day
     * @param stopped whether the search was stopped before its end; the plans are the best it had found
     * @param found what the search says of all days together
     */
    public record Answer(
            CourseDay day,
            List<StoredPlan> plans,
            List<WeatherBasis> weather,
            FirstOfDay first,
            boolean stopped,
            Found found) {}

    /**
     * What holds for all days together.
     *
     * @param shortages why rules could not be kept to; of the days as they were planned together, published ones among
     *     them
     * @param bounds what no plan of these days is better than
     * @param ceiling the time allowed, where that stopped the search
     */
    public record Found(List<Shortage> shortages, WeeksBounds bounds, Optional<Duration> ceiling) {}

    private record Read(
            GreensOfDay greens,
            CourseDay judgedAs,
            List<WeekDay> days,
            List<Versions> versions,
            List<WeatherBasis> weather,
            FirstOfDay first) {}

    /**
     * @param days how many days from the first, at most {@link #MOST_DAYS}
     * @param ceiling how long the search may take at most; equal requests have equal plans only without
     */
    public Answer plan(DayQuestion question, int days, long seed, Optional<Duration> ceiling, Progress progress) {
        return plan(question, days, seed, ceiling, SeenPlans.NONE, progress);
    }

    /**
     * The same, for somebody who has looked at the plans that there are.
     *
     * @throws Problem where some of them are others by now
     */
    public Answer plan(
            DayQuestion question, int days, long seed, Optional<Duration> ceiling, SeenPlans seen, Progress progress) {
        if (days < 1 || days > MOST_DAYS) {
            throw Problem.of("daysToPlan", "days", days, new Count(MOST_DAYS));
        }
        Read read = session.read(stores -> {
            seen.refuseIfOthers(stores, session.course(stores));
            return read(stores, question, days);
        });
        Map<String, Judging> judged =
                read.greens().cleared(read.judgedAs()).judge(session.folder().cache(), progress);
        WeeksAsked asked = new WeeksAsked(read.greens(), judged, read.days());
        Ceiling until = Ceiling.from(ceiling);
        WeeksPlan plan = new WeeksPlanner(read.judgedAs().policy(), Optional.of(new CpSat()))
                .plan(asked.request(seed), until.before(watch(progress)));
        List<StoredPlan> stored = session.decide(Right.PLAN, stores -> {
            refuseIfChanged(stores, read);
            List<StoredPlan> kept = new ArrayList<>();
            for (int day = 0; day < read.days().size(); day++) {
                kept.add(kept(stores, read, plan.days().get(day), day));
            }
            return kept;
        });
        Found found = new Found(plan.shortages(), plan.bounds(), ceiling.filter(time -> until.reached()));
        return new Answer(read.judgedAs(), stored, read.weather(), read.first(), plan.stopped(), found);
    }

    /** Whoever waits is told of every hundredth part; who stops it has the best plan so far. */
    static SearchWatch watch(Progress progress) {
        return (done, all) -> progress.goesOn("weeks", (int) (PERCENT * done / Math.max(1, all)), PERCENT);
    }

    private Read read(Stores stores, DayQuestion question, int count) {
        CourseDay first = CourseDay.of(stores, question, session);
        List<CourseDay> days = IntStream.range(0, count)
                .mapToObj(day -> CourseDay.of(stores, on(question, first.date().plusDays(day)), session))
                .toList();
        List<WeekDay> known = days.stream().map(day -> known(stores, day)).toList();
        String course = first.course().id();
        GreensOfDay greens = GreensOfDay.read(stores, first, question);
        return new Read(
                greens,
                judgedAs(days),
                known,
                known.stream().map(day -> stores.versions(course, day.date())).toList(),
                days.stream().map(day -> WeeksWeather.of(stores, day)).toList(),
                FirstOfDay.of(stores, first, greens.turf(), CourseToday.of(first.course(), session.clock())));
    }

    static DayQuestion on(DayQuestion question, LocalDate date) {
        return new DayQuestion(Optional.of(date), question.speed(), question.rain(), question.ground());
    }

    private static WeekDay known(Stores stores, CourseDay day) {
        Optional<StoredPlan> plan = PlanChoice.find(stores, day.course(), day.date());
        return new WeekDay(
                day.date(), AskedOfDay.of(stores, day, plan), plan.filter(kept -> kept.state() != State.DRAFT));
    }

    /** The first day at the fastest speed of all, and with rain if any day has it. */
    static CourseDay judgedAs(List<CourseDay> days) {
        CourseDay first = days.get(0);
        CourseDay fastest = days.stream()
                .max(Comparator.comparingDouble(day -> day.speed().feet()))
                .orElse(first);
        CourseDay wettest =
                days.stream().filter(day -> day.rain().expected()).findFirst().orElse(first);
        return new CourseDay(
                first.course(),
                first.date(),
                first.policy(),
                first.policyVersion(),
                fastest.speed(),
                wettest.rain(),
                first.log());
    }

    private static void refuseIfChanged(Stores stores, Read read) {
        String course = read.judgedAs().course().id();
        for (int day = 0; day < read.days().size(); day++) {
            Versions now = stores.versions(course, read.days().get(day).date());
            new ChangedMeanwhile(stores, course, read.versions().get(day), now)
                    .refuse(Part.COURSE, Part.SURVEYS, Part.LEVELS, Part.DRAWN, Part.POLICY, Part.PLAN);
        }
    }

    private StoredPlan kept(Stores stores, Read read, DayPlan plan, int day) {
        WeekDay known = read.days().get(day);
        return known.stands().orElseGet(() -> {
            StoredPlan stored = stored(read.judgedAs(), known.asked(), plan);
            stores.plans().add(stored);
            return stored;
        });
    }

    private StoredPlan stored(CourseDay day, AskedOfDay asked, DayPlan plan) {
        return new StoredPlan(
                day.course().id(),
                plan.date(),
                State.DRAFT,
                new Basis(
                        plan.seed(),
                        day.speed(),
                        day.rain(),
                        day.policyVersion(),
                        engineVersion,
                        day.policy().get(RotationPolicy.SCHEME)),
                plan.holes().stream()
                        .map(hole -> stored(hole, asked.of(hole.hole())))
                        .toList(),
                plan.totals(),
                PlanDay.named(plan.terms()),
                PlanDay.named(plan.bounds()),
                plan.findings(),
                asked.kept());
    }

    static StoredHole stored(PlannedHole hole, Asked asked) {
        Optional<String> by = asked.at().map(spot -> asked.person());
        return new StoredHole(
                hole.hole(),
                hole.since().isPresent() ? stays(hole.candidate()) : position(hole.candidate()),
                hole.locked() && hole.since().isEmpty(),
                by,
                hole.reasons().stream()
                        .map(reason -> HoleRequests.askedBy(reason, by))
                        .toList(),
                hole.alternative().map(other -> new StoredHole.Other(position(other.candidate()), other.whyNot())),
                List.of(),
                hole.since(),
                hole.area());
    }

    /** Nobody paces out where a hole is already. */
    static JudgedPosition stays(Candidate candidate) {
        return new JudgedPosition(candidate.judgement(), candidate.place(), OptionalDouble.empty());
    }

    private static JudgedPosition position(Candidate candidate) {
        OptionalDouble within =
                candidate.usable() ? OptionalDouble.of(candidate.goodWithinMetres()) : OptionalDouble.empty();
        return new JudgedPosition(candidate.judgement(), candidate.place(), within);
    }
}
