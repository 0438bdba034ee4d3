package org.cupwright.app.desk.paper;

import java.util.Optional;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.first.FirstOfDay;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.desk.plan.PlanChoice;
import org.cupwright.app.desk.turf.DayTurf;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Stores;

/** How a day stands: what to know first, its plan if there is one, and what has been cut of it. */
public record ShowDay(Session session) {
    /**
     * A day as it stands.
     *
     * @param day at the speed and in the weather of its plan, or what is known of it as long as there is none
     * @param first what has to be known before anybody goes out
     * @param paper the plan with its greens judged; empty as long as there is none
     * @param cut where the holes are, as far as the logbook says
     */
    public record Answer(CourseDay day, FirstOfDay first, Optional<DayPaper> paper, HolesCut cut) {}

    public Answer of(DayQuestion question, Progress progress) {
        Optional<Answer> unplanned = session.read(stores -> {
            CourseDay day = CourseDay.of(stores, question, session);
            return PlanChoice.find(stores, day.course(), day.date()).isPresent()
                    ? Optional.empty()
                    : Optional.of(withoutPlan(stores, day));
        });
        return unplanned.orElseGet(() -> planned(question, progress));
    }

    /** The day without its plan: at once, where judging the greens takes a while. */
    public Answer withoutPlan(DayQuestion question) {
        return session.read(stores -> withoutPlan(stores, CourseDay.of(stores, question, session)));
    }

    private Answer withoutPlan(Stores stores, CourseDay day) {
        FirstOfDay first =
                FirstOfDay.of(stores, day, DayTurf.of(stores, day), CourseToday.of(day.course(), session.clock()));
        return new Answer(day, first, Optional.empty(), HolesCut.of(stores.facts(), day.course(), day.date()));
    }

    private Answer planned(DayQuestion question, Progress progress) {
        PrepareSheets.Prepared prepared = new PrepareSheets(session).prepare(question, progress);
        DayPaper paper = prepared.paper();
        return new Answer(paper.day(), paper.first(), Optional.of(paper), prepared.cut());
    }
}
