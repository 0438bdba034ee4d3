package org.cupwright.app.desk.resurvey;

import java.time.Clock;
import java.util.List;
import org.cupwright.app.desk.CourseChoice;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.course.Hole;

/** Lists the surveys that are kept of each green. */
public final class ListSurveys {
    private final DataFolder folder;
    private final Clock clock;

    public ListSurveys(DataFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * One green's surveys.
     *
     * @param hole the hole
     * @param versions the oldest first; none where the green was never surveyed
     */
    public record OfGreen(Hole hole, List<SurveyVersion> versions) {
        public OfGreen {
            versions = List.copyOf(versions);
        }
    }

    /** The surveys of some greens, in round order. */
    public record Answer(CourseDay day, List<OfGreen> greens) {
        public Answer {
            greens = List.copyOf(greens);
        }
    }

    /** The surveys of some holes; none named, or "all": of every hole. */
    public Answer of(DayQuestion question, List<String> holes) {
        return folder.read(stores -> {
            CourseDay day = CourseDay.of(stores, question, clock);
            String course = day.course().id();
            List<OfGreen> greens = CourseChoice.holes(day.course(), holes).stream()
                    .map(hole -> new OfGreen(hole, stores.surveys().versions(course, hole.id())))
                    .toList();
            return new Answer(day, greens);
        });
    }
}
