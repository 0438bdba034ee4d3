package org.cupwright.app.desk;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Course;

/** Brings together what the paper of a day needs, from the newest plan that is stored for it. */
public final class PrepareSheets {
    private final DataFolder folder;
    private final Clock clock;

    public PrepareSheets(DataFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /** What was read from the folder. */
    private record Read(StoredPlan plan, GreensOfDay greens) {}

    /**
     * The paper of a day. Speed and weather are those of its plan, whatever the question says.
     *
     * @throws Problem when there is no plan for the day
     */
    public DayPaper of(DayQuestion question, Progress progress) {
        Read read = folder.read(stores -> read(stores, question));
        List<GreenOnDay> greens = read.greens().onDay(read.greens().judge(folder.cache(), progress));
        return DayPaper.planned(read.greens().day(), read.plan(), greens);
    }

    private Read read(Stores stores, DayQuestion question) {
        Course course = CourseChoice.course(stores, question.course());
        LocalDate date = question.date().orElseGet(() -> CourseToday.of(course, clock));
        StoredPlan plan = PlanChoice.plan(stores, course, date);
        DayQuestion asPlanned = new DayQuestion(
                Optional.of(course.id()),
                Optional.of(date),
                Optional.of(plan.basis().speedFeet()),
                plan.basis().rain(),
                question.ground());
        return new Read(plan, GreensOfDay.read(stores, CourseDay.of(stores, asPlanned, clock), asPlanned));
    }
}
