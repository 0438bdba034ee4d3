package org.cupwright.app.desk.paper;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.storage.Stores;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;

/** Today's hole locations for whoever asks, without signing in: of a course that gives them out, once published. */
public record PublicSheet(Session session) {
    /**
     * Today.
     *
     * @param course its name
     * @param date today on the course
     * @param policy by which it is said
     * @param paper the published plan; empty as long as there is none
     */
    public record Answer(String course, LocalDate date, Policy policy, Optional<DayPaper> paper) {}

    /** @throws Problem where there is no such course, and in the same words where it gives nothing out */
    public Answer today() {
        CourseDay day = session.read(this::open);
        Optional<DayPaper> paper = new ShowDay(session)
                .of(DayQuestion.of(day.date()), Progress.unheard())
                .paper();
        return new Answer(
                day.course().name(),
                day.date(),
                day.policy(),
                paper.filter(known -> known.plan().state() != State.DRAFT));
    }

    private CourseDay open(Stores stores) {
        if (!session.course().isMissingIn(stores)) {
            LocalDate today = CourseToday.of(session.course(stores), session.clock());
            CourseDay day = CourseDay.of(stores, DayQuestion.of(today), session);
            if (day.policy().get(PaperPolicy.PUBLIC_SHEET)) {
                return day;
            }
        }
        String asked = session.course().id().orElse("");
        throw Problem.of("noSheet", "course", asked, new Name(asked));
    }
}
