package org.cupwright.app.desk.paper;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.storage.Stores;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;

/** Today's hole locations for whoever has the link, without signing in: where they are given out, once published. */
public record PublicSheet(Session session) {
    /**
     * Today.
     *
     * @param course its name
     * @param date today on the course
     * @param now the time of day there
     * @param policy by which it is said
     * @param paper the published plan; empty as long as there is none
     * @param cut where the holes are, as far as the logbook says
     */
    public record Answer(
            String course, LocalDate date, LocalTime now, Policy policy, Optional<DayPaper> paper, HolesCut cut) {}

    /**
     * What a link leads to.
     *
     * @throws Problem where it leads nowhere, in the same words whether it never did or does no more
     */
    public Answer today(String link) {
        Open course = session.read(stores -> open(stores, link));
        ShowDay.Answer day =
                new ShowDay(session.about(course.id())).of(DayQuestion.of(course.today()), Progress.unheard());
        return new Answer(
                day.day().course().name(),
                day.day().date(),
                LocalTime.ofInstant(session.now(), day.day().course().frame().zone())
                        .truncatedTo(ChronoUnit.MINUTES),
                day.day().policy(),
                day.paper().filter(known -> known.plan().state() != State.DRAFT),
                day.cut());
    }

    /** A course that is open, and which day it is there. */
    private record Open(String id, LocalDate today) {}

    private Open open(Stores stores, String link) {
        for (String id : stores.courses().ids()) {
            LocalDate today = CourseToday.of(stores, new CourseChoice(Optional.of(id)), session.clock());
            if (SheetLink.leads(link, stores.policies().history(id).at(today))) {
                return new Open(id, today);
            }
        }
        throw Problem.of(Message.of("problem.noSheet"), Message.of("try.noSheet"));
    }
}
