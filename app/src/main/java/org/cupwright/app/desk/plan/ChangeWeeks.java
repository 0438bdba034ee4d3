package org.cupwright.app.desk.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cupwright.app.desk.ChangedMeanwhile;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.GreensOfDay;
import org.cupwright.app.desk.green.Judging;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.desk.plan.WeeksAsked.WeekDay;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Asked;
import org.cupwright.app.storage.PlanChange;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.Versions;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.course.Course;
import org.cupwright.formats.items.GroundItems;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Said;
import org.cupwright.message.Problem;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.weeks.ChangeRequest;
import org.cupwright.rotation.weeks.ChangedWeeks;
import org.cupwright.rotation.weeks.Evenness;
import org.cupwright.rotation.weeks.WeeksChanger;

/**
 * Changes the plans of coming days as little as what is wanted of them now allows, and what the logbook says; days that
 * are published, and holes that are cut, stay as they are.
 */
public record ChangeWeeks(Session session, String engineVersion) {
    /**
     * What came of it.
     *
     * @param day the first day that is planned, as all were judged
     * @param changes the holes that are elsewhere, day by day in round order
     * @param stored the plans that were kept; none where nothing was to be changed
     * @param standing the days that are published or done, which stay as they are
     * @param before how even the days were of which holes are elsewhere
     * @param after how even they are
     */
    public record Answer(
            CourseDay day,
            List<ChangedHole> changes,
            List<StoredPlan> stored,
            List<LocalDate> standing,
            Evenness before,
            Evenness after) {}

    private record Read(
            GreensOfDay greens,
            CourseDay judgedAs,
            List<WeekDay> days,
            List<StoredPlan> plans,
            List<Versions> versions,
            Optional<HolesCut> today,
            int mayChange,
            GroundItems ground,
            List<Asked.Circle> spoiled) {
        Map<LocalDate, AskedOfDay> asked() {
            return days.stream().collect(Collectors.toMap(WeekDay::date, WeekDay::asked));
        }
    }

    /** @param question the first day that may be changed, today or later */
    public Answer change(DayQuestion question, ChangeAsked asked, Progress progress) {
        return change(question, asked, SeenPlans.NONE, progress);
    }

    /**
     * The same, for somebody who has looked at the plans.
     *
     * @throws org.cupwright.message.Problem where some of them are others by now
     */
    public Answer change(DayQuestion question, ChangeAsked asked, SeenPlans seen, Progress progress) {
        Read read = session.read(stores -> {
            seen.refuseIfOthers(stores, session.course(stores));
            return read(stores, question, asked);
        });
        Map<String, Judging> judged =
                read.greens().cleared(read.judgedAs()).judge(session.folder().cache(), progress);
        WeeksAsked weeks = new WeeksAsked(read.greens(), judged, read.days());
        ChangeRequest request = new WeeksStanding(weeks, read.plans(), read.today(), read.mayChange(), read.ground())
                .request(read.plans().get(0).basis().seed());
        ChangedWeeks found = new WeeksChanger(read.judgedAs().policy()).change(request, PlanWeeks.watch(progress));
        progress.checkStopped();
        List<StoredPlan> changed = changed(read, found);
        if (!changed.isEmpty()) {
            session.decide(Right.PLAN, stores -> {
                refuseIfChanged(stores, read);
                changed.forEach(stores.plans()::add);
                return changed;
            });
        }
        ChangeReasons reasons = new ChangeReasons(read.asked(), read.spoiled(), asked.swaps());
        return new Answer(
                read.judgedAs(),
                told(read, found, changed, reasons),
                changed,
                read.plans().stream()
                        .filter(plan -> plan.state() != State.DRAFT)
                        .map(StoredPlan::date)
                        .toList(),
                found.before(),
                found.after());
    }

    private Read read(Stores stores, DayQuestion question, ChangeAsked asked) {
        CourseDay first = CourseDay.of(stores, question, session);
        Course course = first.course();
        LocalDate today = CourseToday.of(course, session.clock());
        if (first.date().isBefore(today)) {
            throw Problem.of("dayIsPast", "date", first.date(), new Day(first.date()));
        }
        List<StoredPlan> plans =
                stores
                        .plans()
                        .between(course.id(), first.date(), first.date().plusDays(PlanWeeks.MOST_DAYS - 1L))
                        .stream()
                        .map(plan -> PlanChoice.plan(stores, course, plan.date()))
                        .toList();
        if (plans.isEmpty()) {
            throw PlanChoice.none(stores, course, first.date());
        }
        return read(stores, question, asked, course, today, plans);
    }

    private Read read(
            Stores stores,
            DayQuestion question,
            ChangeAsked asked,
            Course course,
            LocalDate today,
            List<StoredPlan> plans) {
        int mayChange = mayChange(asked, plans);
        List<CourseDay> days = plans.stream()
                .map(plan -> CourseDay.of(stores, PlanWeeks.on(question, plan.date()), session))
                .toList();
        List<AskedOfDay> askedOf = IntStream.range(0, plans.size())
                .mapToObj(day -> AskedOfDay.of(stores, days.get(day), Optional.of(plans.get(day))))
                .toList();
        Optional<HolesCut> cut = plans.get(0).date().equals(today)
                ? Optional.of(HolesCut.of(stores.facts(), course, today))
                : Optional.empty();
        ChangeWishes wishes = new ChangeWishes(
                stores, course, plans, askedOf, cut, mayChange, session.person().name());
        wishes.add(asked);
        List<WeekDay> known = IntStream.range(0, plans.size())
                .mapToObj(day -> new WeekDay(
                        plans.get(day).date(),
                        askedOf.get(day),
                        Optional.of(plans.get(day)).filter(plan -> plan.state() != State.DRAFT)))
                .toList();
        return new Read(
                GreensOfDay.read(stores, days.get(0), question),
                PlanWeeks.judgedAs(days),
                known,
                plans,
                plans.stream()
                        .map(plan -> stores.versions(course.id(), plan.date()))
                        .toList(),
                cut,
                mayChange,
                GreensOfDay.onGreens(question.ground(), course),
                wishes.spoiled());
    }

    private static int mayChange(ChangeAsked asked, List<StoredPlan> plans) {
        int days = asked.days().orElse(plans.size());
        if (days < 1) {
            throw Problem.of("daysToPlan", "days", days, new Count(PlanWeeks.MOST_DAYS));
        }
        return Math.min(days, plans.size());
    }

    /** The plans of days of which holes are elsewhere, or of which more is asked than was. */
    private List<StoredPlan> changed(Read read, ChangedWeeks found) {
        Map<LocalDate, DayPlan> plans =
                found.days().stream().collect(Collectors.toMap(DayPlan::date, Function.identity()));
        List<LocalDate> days = IntStream.range(0, read.plans().size())
                .filter(day -> read.plans().get(day).state() == State.DRAFT)
                .filter(day -> plans.containsKey(read.plans().get(day).date())
                        || !read.days()
                                .get(day)
                                .asked()
                                .kept()
                                .equals(read.plans().get(day).asked()))
                .mapToObj(day -> read.plans().get(day).date())
                .toList();
        PlanChange change = new PlanChange(
                session.ids().get(), session.now(), session.person().name(), days);
        ChangedPlans made = new ChangedPlans(read.judgedAs(), engineVersion, found.changes(), change);
        List<StoredPlan> changed = new ArrayList<>();
        for (int day = 0; day < read.plans().size(); day++) {
            StoredPlan before = read.plans().get(day);
            AskedOfDay asked = read.days().get(day).asked();
            if (days.contains(before.date())) {
                changed.add(Optional.ofNullable(plans.get(before.date()))
                        .map(plan -> made.stored(before, plan, asked))
                        .orElseGet(() -> made.stored(before, asked)));
            }
        }
        return changed;
    }

    private static void refuseIfChanged(Stores stores, Read read) {
        String course = read.judgedAs().course().id();
        refuseIfCut(stores, read);
        List<Message> deeds = new PlansMeanwhile(stores, course).since(read.plans());
        for (int day = 0; day < read.plans().size(); day++) {
            Versions now = stores.versions(course, read.plans().get(day).date());
            new ChangedMeanwhile(stores, course, read.versions().get(day), now)
                    .refuse(deeds, Part.COURSE, Part.SURVEYS, Part.LEVELS, Part.DRAWN, Part.POLICY, Part.PLAN);
        }
    }

    /** What the logbook says of today's holes is part of what the change rests on. */
    private static void refuseIfCut(Stores stores, Read read) {
        Course course = read.judgedAs().course();
        LocalDate first = read.plans().get(0).date();
        boolean cut = read.today()
                .filter(known -> !known.equals(HolesCut.of(stores.facts(), course, first)))
                .isPresent();
        if (cut) {
            Versions now = stores.versions(course.id(), first);
            List<Message> entries =
                    new ChangedMeanwhile(stores, course.id(), read.versions().get(0), now).entries();
            throw Problem.of(
                    Message.of("problem.changedMeanwhile", new Said(entries)), Message.of("try.changedMeanwhile"));
        }
    }

    private static List<ChangedHole> told(
            Read read, ChangedWeeks found, List<StoredPlan> changed, ChangeReasons reasons) {
        return found.changes().stream()
                .map(one -> new ChangedHole(
                        one.date(),
                        one.hole(),
                        hole(read.plans(), one.date(), one.hole()),
                        hole(changed, one.date(), one.hole()),
                        reasons.of(one)))
                .toList();
    }

    private static Optional<StoredHole> hole(List<StoredPlan> plans, LocalDate date, String hole) {
        return plans.stream()
                .filter(plan -> plan.date().equals(date))
                .findFirst()
                .flatMap(plan -> plan.find(hole));
    }
}
