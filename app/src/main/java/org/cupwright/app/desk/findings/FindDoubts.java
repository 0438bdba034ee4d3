package org.cupwright.app.desk.findings;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.cupwright.app.desk.CourseChoice;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.MeasuredGreen;
import org.cupwright.app.storage.DataFolder;

/** Finds what is doubtful about the ground of greens, as they are known now. */
public final class FindDoubts {
    private final DataFolder folder;
    private final Clock clock;

    public FindDoubts(DataFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

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

    private record Read(CourseDay day, List<MeasuredGreen> greens) {}

    /**
     * Looks at the ground of some greens, side by side.
     *
     * @param holes the holes; none, or "all": every hole
     */
    public Answer of(DayQuestion question, List<String> holes, Progress progress) {
        Read read = folder.read(stores -> {
            CourseDay day = CourseDay.of(stores, question, clock);
            List<MeasuredGreen> greens = CourseChoice.holes(day.course(), holes).stream()
                    .map(hole -> MeasuredGreen.of(stores, day.course().id(), hole))
                    .toList();
            return new Read(day, greens);
        });
        Map<String, GreenFindings> found = new ConcurrentHashMap<>();
        AtomicInteger done = new AtomicInteger();
        read.greens().stream().parallel().forEach(green -> {
            String hole = green.hole().id();
            found.put(hole, GreenFindings.of(green, read.day().policy()));
            progress.finished(hole, done.incrementAndGet(), read.greens().size());
        });
        return new Answer(
                read.day(),
                read.greens().stream()
                        .map(green -> found.get(green.hole().id()))
                        .toList());
    }
}
