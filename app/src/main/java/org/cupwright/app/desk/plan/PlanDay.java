package org.cupwright.app.desk.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cupwright.app.desk.ChangedMeanwhile;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.GreensOfDay;
import org.cupwright.app.desk.green.Judging;
import org.cupwright.app.desk.turf.WeeksWeather;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredHole.Other;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.Basis;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.Versions;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.green.Third;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import org.cupwright.policy.EnumNames;
import org.cupwright.rotation.Alternative;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.DayPlanner;
import org.cupwright.rotation.DayRequest;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.rotation.SharedGreen;
import org.cupwright.rotation.Term;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.turf.weather.WeatherBasis;

/** Decides the hole locations of one day and keeps them as a draft. */
public record PlanDay(Session session, String engineVersion) {
    /**
     * A stored plan.
     *
     * @param day the day it is for
     * @param plan the plan
     * @param weather what the weather rests on by which old holes rest
     * @param paper what its paper is made from, greens judged; empty for a plan that stood already, as nothing was
     *     judged then
     */
    public record Answer(CourseDay day, StoredPlan plan, WeatherBasis weather, Optional<DayPaper> paper) {}

    private record Read(GreensOfDay greens, WeatherBasis weather, Versions versions) {}

    public Answer plan(DayQuestion question, long seed, Progress progress) {
        Read read = session.read(stores -> read(stores, question));
        GreensOfDay greens = read.greens();
        CourseDay day = greens.day();
        Map<String, Judging> judged = greens.judge(session.folder().cache(), progress);
        List<GreenCandidates> candidates = day.course().holes().stream()
                .parallel()
                .map(hole -> candidates(hole, judged, greens))
                .toList();
        DayRequest request = new DayRequest(day.date(), candidates, sharedGreens(day.course()), false, seed);
        DayPlan plan = new DayPlanner(day.policy()).plan(request);
        StoredPlan stored = session.decide(Right.PLAN, stores -> {
            refuseToReplace(stores, day);
            StoredPlan kept = stored(day, plan, judged, meanwhile(stores, day, read.versions()));
            stores.plans().add(kept);
            return kept;
        });
        return new Answer(
                day, stored, read.weather(), Optional.of(DayPaper.planned(day, stored, greens.onDay(judged))));
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
                    .map(plan -> new Answer(day, plan, WeeksWeather.of(stores, day), Optional.empty()));
        });
    }

    private static Optional<StoredPlan> standing(Stores stores, CourseDay day) {
        return PlanChoice.find(stores, day.course(), day.date()).filter(plan -> plan.state() != State.DRAFT);
    }

    private Read read(Stores stores, DayQuestion question) {
        CourseDay day = CourseDay.of(stores, question, session);
        refuseToReplace(stores, day);
        Versions versions = stores.versions(day.course().id(), day.date());
        return new Read(GreensOfDay.read(stores, day, question), WeeksWeather.of(stores, day), versions);
    }

    /** What was published stands until somebody withdraws it: the shop's sheet may hang already. */
    private static void refuseToReplace(Stores stores, CourseDay day) {
        standing(stores, day).ifPresent(plan -> {
            throw Problem.of(
                    Message.of("problem.planPublished", new Message.Day(day.date())),
                    "date",
                    day.date(),
                    plan.state() == State.DONE ? Message.of("try.planDone") : Message.of("try.withdraw"));
        });
    }

    private static List<SharedGreen> sharedGreens(Course course) {
        List<SharedGreen> pairs = new ArrayList<>();
        for (Hole hole : course.holes()) {
            for (Hole other : course.sharingGreenWith(hole)) {
                SharedGreen pair = new SharedGreen(hole.id(), other.id());
                if (!pairs.contains(new SharedGreen(other.id(), hole.id()))) {
                    pairs.add(pair);
                }
            }
        }
        return pairs;
    }

    private static GreenCandidates candidates(Hole hole, Map<String, Judging> judged, GreensOfDay greens) {
        Wishes wishes = greens.temporaryGreen(hole.id()) ? Wishes.greenClosed() : Wishes.none();
        return new GreenCandidates(
                hole.id(),
                judged.get(hole.id()).candidates(),
                greens.last(hole.id()),
                greens.roughly(hole.id())
                        .map(rough -> Third.valueOf(rough.part().depth().name())),
                wishes);
    }

    private StoredPlan stored(CourseDay day, DayPlan plan, Map<String, Judging> judged, List<Message> meanwhile) {
        Basis basis = new Basis(plan.seed(), day.speed(), day.rain(), day.policyVersion(), engineVersion);
        List<Message> findings = new ArrayList<>(meanwhile);
        findings.addAll(plan.findings());
        List<StoredHole> holes = plan.holes().stream()
                .map(hole -> stored(hole, judged.get(hole.hole())))
                .toList();
        return new StoredPlan(
                day.course().id(),
                plan.date(),
                State.DRAFT,
                basis,
                holes,
                plan.totals(),
                named(plan.terms()),
                named(plan.bounds()),
                findings);
    }

    private static StoredHole stored(PlannedHole hole, Judging judging) {
        return new StoredHole(
                hole.hole(),
                judging.told(hole.candidate().judgement()),
                hole.locked(),
                hole.reasons(),
                hole.alternative().map(other -> stored(other, judging)),
                judging.green().concessions());
    }

    private static Other stored(Alternative alternative, Judging judging) {
        return new Other(judging.told(alternative.candidate().judgement()), alternative.whyNot());
    }

    private static Map<String, Double> named(Map<Term, Double> terms) {
        Map<String, Double> named = new TreeMap<>();
        terms.forEach((term, value) -> named.put(EnumNames.lowerCamel(term), value));
        return named;
    }
}
