package org.cupwright.app.desk.findings;

import java.util.List;
import java.util.Map;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.GroundKnown;
import org.cupwright.app.desk.green.MeasuredGreen;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.ResultCache;

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

    /** All that what is doubtful about a green rests on. */
    private record Doubted(GroundKnown known, Map<String, String> policy, String hole) {}

    /** The greens, and how far what is known of them has come. */
    private record Basis(MeasuredGreen.Several some, GroundKnown known) {}

    /**
     * Looks at the ground of some greens, side by side.
     *
     * @param holes the holes; none, or "all": every hole
     */
    public Answer of(DayQuestion question, List<String> holes, Progress progress) {
        Basis basis = session.read(stores -> {
            MeasuredGreen.Several some = MeasuredGreen.several(stores, question, holes, session);
            return new Basis(some, GroundKnown.of(stores, some.day()));
        });
        CourseDay day = basis.some().day();
        ResultCache cache = session.folder().cache();
        List<GreenFindings> found = progress.sideBySide(
                "looked",
                basis.some().greens(),
                green -> cache.remembered(
                        new Doubted(
                                basis.known(), day.policy().set(), green.hole().id()),
                        () -> GreenFindings.of(green, day.policy())));
        return new Answer(day, found);
    }
}
