package org.cupwright.app.desk.paper;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.first.FirstOfDay;
import org.cupwright.app.desk.first.SpotNotices;
import org.cupwright.app.desk.green.GreensOfDay;
import org.cupwright.app.desk.green.Judging;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.desk.plan.PlanChoice;
import org.cupwright.app.desk.plan.ShowHole;
import org.cupwright.app.desk.round.RoundOfDay;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.MapPoint;

/** Brings together what the paper of a day needs, from the newest plan that is stored for it. */
public record PrepareSheets(Session session) {
    /** What was read from the folder. */
    private record Read(StoredPlan plan, GreensOfDay greens, HolesCut cut, FirstOfDay first, RoundOfDay round) {}

    /**
     * A day's paper.
     *
     * @param cut where the holes are, as far as the logbook says
     */
    record Prepared(DayPaper paper, HolesCut cut) {}

    /**
     * The paper of a day. Speed and weather are those of its plan, whatever the question says.
     *
     * @throws Problem when there is no plan for the day
     */
    public DayPaper of(DayQuestion question, Progress progress) {
        return prepare(question, progress).paper();
    }

    Prepared prepare(DayQuestion question, Progress progress) {
        Read read = session.read(stores -> read(stores, question));
        Map<String, Judging> judged = read.greens().judge(session.folder().cache(), progress);
        CourseDay day = read.greens().day();
        Map<String, JudgedPosition> positions = positions(read, judged);
        DayPaper paper = new DayPaper(
                day,
                read.plan(),
                read.greens().onDay(judged),
                positions,
                CutSoFar.of(read.plan(), read.cut()),
                read.first().with(SpotNotices.of(day.course(), positions, day.policy())),
                read.round());
        return new Prepared(paper, read.cut());
    }

    /** Where the plan has the holes, and where they really are once the logbook says so. */
    private static Map<String, JudgedPosition> positions(Read read, Map<String, Judging> judged) {
        Map<String, JudgedPosition> positions = DayPaper.planned(read.plan());
        read.cut().holes().forEach((hole, cut) -> {
            Optional<MapPoint> at = cut.at().or(() -> read.greens().last(hole));
            JudgedPosition planned = positions.remove(hole);
            at.filter(place -> judged.get(hole).isOnGreen(place))
                    .map(place ->
                            planned != null && place.equals(planned.judgement().position())
                                    ? planned
                                    : judged.get(hole).at(place))
                    .ifPresent(position -> positions.put(hole, position));
        });
        return positions;
    }

    private Read read(Stores stores, DayQuestion question) {
        Course course = session.course(stores);
        LocalDate date = question.date().orElseGet(() -> CourseToday.of(course, session.clock()));
        StoredPlan plan = PlanChoice.plan(stores, course, date);
        DayQuestion asPlanned = ShowHole.asPlanned(question, plan);
        CourseDay day = CourseDay.of(stores, asPlanned, session);
        GreensOfDay greens = GreensOfDay.read(stores, day, asPlanned);
        return new Read(
                plan,
                greens,
                HolesCut.of(stores.facts(), course, date),
                FirstOfDay.of(stores, day, greens.turf(), CourseToday.of(day.course(), session.clock())),
                RoundOfDay.of(stores, day.course(), date, day.policy()));
    }
}
