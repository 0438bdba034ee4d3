package org.cupwright.app.desk.findings;

import java.util.List;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.MeasuredGreen;
import org.cupwright.app.session.Session;
import org.cupwright.policy.Policy;

/** Finds what is doubtful about the ground of greens, as they are known now. */
public record FindDoubts(Session session) {
    /**
     * What was found.
     *
     * @param day the day whose policy says how what was measured is taken
     * @param greens in round order
     */
    public record Answer(CourseDay day, List<GreenFindings> greens) {
        public Answer {
            greens = List.copyOf(greens);
        }
    }

    /**
     * Looks at the ground of some greens, side by side.
     *
     * @param holes the holes; none, or "all": every hole
     */
    public Answer of(DayQuestion question, List<String> holes, Progress progress) {
        MeasuredGreen.Several some = session.read(stores -> MeasuredGreen.several(stores, question, holes, session));
        Policy policy = some.day().policy();
        return new Answer(
                some.day(), progress.sideBySide("greens", some.greens(), green -> GreenFindings.of(green, policy)));
    }
}
