package org.cupwright.app.desk.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cupwright.app.desk.ChangedMeanwhile;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.first.FirstOfDay;
import org.cupwright.app.desk.first.SpotNotices;
import org.cupwright.app.desk.green.GreensOfDay;
import org.cupwright.app.desk.green.Judging;
import org.cupwright.app.desk.round.RoundOfDay;
import org.cupwright.app.desk.turf.DayTurf;
import org.cupwright.app.desk.turf.WeeksWeather;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.Basis;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.Versions;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import org.cupwright.policy.EnumNames;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.DayPlanner;
import org.cupwright.rotation.DayRequest;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.SharedGreen;
import org.cupwright.rotation.Term;
import org.cupwright.turf.weather.WeatherBasis;

/** Decides the hole locations of one day and keeps them as a draft. */
public record PlanDay(Session session, String engineVersion) {
    /**
     * A stored plan.
     *
     * @param day the day it is for
     * @param plan the plan
     * @param weather what the weather rests on by which old holes rest
     * @param first what has to be known before anybody goes out
     * @param paper what its paper is made from, greens judged; empty for a plan that stood already, as nothing was
     *     judged then
     * @param changed the one hole that somebody wanted otherwise; empty where the whole day was planned
     */
    public record Answer(
            CourseDay day,
            StoredPlan plan,
            WeatherBasis weather,
            FirstOfDay first,
            Optional<DayPaper> paper,
            Optional<StoredHole> changed) {}

    private record Read(
            GreensOfDay greens,
            WeatherBasis weather,
            FirstOfDay first,
            Versions versions,
            AskedOfDay asked,
            Optional<StoredPlan> draft,
            RoundOfDay round) {}

    /** Plans the whole day; what was asked for single holes counts. */
    public Answer plan(DayQuestion question, long seed, Progress progress) {
        return planned(question, Optional.empty(), SeenPlans.NONE, seed, progress);
    }

    /** Plans one hole as a person wants it; where the day has a draft, its other holes stay as they are. */
    public Answer plan(DayQuestion question, HoleWish wish, long seed, Progress progress) {
        return planned(question, Optional.of(wish), SeenPlans.NONE, seed, progress);
    }

    /**
     * The same for somebody who has looked at the day's plan.
     *
     * @param seen its number when it was looked at; 0: there was none
     * @throws Problem when it is another by now
     */
    public Answer plan(DayQuestion question, HoleWish wish, long seen, long seed, Progress progress) {
        return planned(question, Optional.of(wish), seen(question, seen), seed, progress);
    }

    /** Plans the whole day for somebody who has looked at its plan. */
    public Answer plan(DayQuestion question, long seen, long seed, Progress progress) {
        return planned(question, Optional.empty(), seen(question, seen), seed, progress);
    }

    private static SeenPlans seen(DayQuestion question, long seen) {
        return new SeenPlans(Map.of(question.date().orElseThrow(), seen));
    }

    private Answer planned(
            DayQuestion question, Optional<HoleWish> wish, SeenPlans seen, long seed, Progress progress) {
        Read read = session.read(stores -> read(stores, question, wish, seen));
        GreensOfDay greens = read.greens();
        CourseDay day = greens.day();
        Map<String, Judging> judged = greens.judge(session.folder().cache(), progress);
        HoleRequests holes = new HoleRequests(greens, judged, read.asked(), read.draft(), wish.map(HoleWish::hole));
        DayRequest request = new DayRequest(day.date(), holes.candidates(), sharedGreens(day.course()), false, seed);
        DayPlan plan = new DayPlanner(day.policy()).plan(request);
        StoredPlan stored = session.decide(Right.PLAN, stores -> {
            refuseToReplace(stores, day);
            StoredPlan kept = stored(day, plan, holes, read.asked(), meanwhile(stores, day, read.versions()));
            stores.plans().add(kept);
            return kept;
        });
        FirstOfDay first = withSpots(read.first(), day, stored);
        DayPaper paper = DayPaper.planned(day, stored, greens.onDay(judged), first, read.round());
        Optional<StoredHole> changed = wish.flatMap(one -> stored.find(one.hole()));
        return new Answer(day, stored, read.weather(), first, Optional.of(paper), changed);
    }

    /** Entries that came while the plan was worked out; anything else that changed keeps it from being kept. */
    private static List<Message> meanwhile(Stores stores, CourseDay day, Versions before) {
        String course = day.course().id();
        ChangedMeanwhile changed = new ChangedMeanwhile(stores, course, before, stores.versions(course, day.date()));
        changed.refuse(Part.COURSE, Part.SURVEYS, Part.LEVELS, Part.DRAWN, Part.POLICY, Part.PLAN);
        return changed.entries();
    }

    /** The day's plan if it is published or done: it stands, and is not made anew. */
    public Optional<Answer> standing(DayQuestion question) {
        return session.read(stores -> {
            CourseDay day = CourseDay.of(stores, question, session);
            return standing(stores, day)
                    .map(plan -> new Answer(
                            day,
                            plan,
                            WeeksWeather.of(stores, day),
                            first(stores, day, plan),
                            Optional.empty(),
                            Optional.empty()));
        });
    }

    private FirstOfDay first(Stores stores, CourseDay day, StoredPlan plan) {
        return withSpots(
                FirstOfDay.of(stores, day, DayTurf.of(stores, day), CourseToday.of(day.course(), session.clock())),
                day,
                plan);
    }

    private static FirstOfDay withSpots(FirstOfDay first, CourseDay day, StoredPlan plan) {
        return first.with(SpotNotices.of(day.course(), DayPaper.planned(plan), day.policy()));
    }

    private static Optional<StoredPlan> standing(Stores stores, CourseDay day) {
        return PlanChoice.find(stores, day.course(), day.date()).filter(plan -> plan.state() != State.DRAFT);
    }

    private Read read(Stores stores, DayQuestion question, Optional<HoleWish> wish, SeenPlans seen) {
        CourseDay day = CourseDay.of(stores, question, session);
        Versions versions = stores.versions(day.course().id(), day.date());
        seen.refuseIfOthers(stores, day.course());
        refuseToReplace(stores, day);
        GreensOfDay greens = GreensOfDay.read(stores, day, question);
        FirstOfDay first = FirstOfDay.of(stores, day, greens.turf(), CourseToday.of(day.course(), session.clock()));
        Optional<StoredPlan> draft = PlanChoice.find(stores, day.course(), day.date());
        AskedOfDay asked = AskedOfDay.of(stores, day, draft);
        wish.ifPresent(one -> asked.add(one, session.person().name()));
        WeatherBasis weather = WeeksWeather.of(stores, day);
        RoundOfDay round = RoundOfDay.of(stores, day.course(), day.date(), day.policy());
        return new Read(greens, weather, first, versions, asked, draft, round);
    }

    /** What was published stands until somebody withdraws it: the shop's sheet may hang already. */
    private static void refuseToReplace(Stores stores, CourseDay day) {
        standing(stores, day).ifPresent(plan -> {
            throw stands(plan);
        });
    }

    /** A plan that stands is not to be changed. */
    static Problem stands(StoredPlan plan) {
        return Problem.of(
                Message.of("problem.planPublished", new Message.Day(plan.date())),
                "date",
                plan.date(),
                plan.state() == State.DONE ? Message.of("try.planDone") : Message.of("try.withdraw"));
    }

    static List<SharedGreen> sharedGreens(Course course) {
        List<SharedGreen> pairs = new ArrayList<>();
        for (Hole hole : course.round()) {
            for (Hole other : course.sharingGreenWith(hole)) {
                SharedGreen pair = new SharedGreen(hole.id(), other.id());
                if (!pairs.contains(new SharedGreen(other.id(), hole.id()))) {
                    pairs.add(pair);
                }
            }
        }
        return pairs;
    }

    private StoredPlan stored(
            CourseDay day, DayPlan plan, HoleRequests holes, AskedOfDay asked, List<Message> meanwhile) {
        Basis basis = new Basis(
                plan.seed(),
                day.speed(),
                day.rain(),
                day.policyVersion(),
                engineVersion,
                day.policy().get(RotationPolicy.SCHEME));
        List<Message> findings = new ArrayList<>(meanwhile);
        findings.addAll(holes.findings(plan));
        return new StoredPlan(
                day.course().id(),
                plan.date(),
                State.DRAFT,
                basis,
                plan.holes().stream().map(holes::stored).toList(),
                plan.totals(),
                named(plan.terms()),
                named(plan.bounds()),
                findings,
                asked.kept());
    }

    static Map<String, Double> named(Map<Term, Double> terms) {
        Map<String, Double> named = new TreeMap<>();
        terms.forEach((term, value) -> named.put(EnumNames.lowerCamel(term), value));
        return named;
    }
}
