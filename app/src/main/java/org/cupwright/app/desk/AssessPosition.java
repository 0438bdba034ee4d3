package org.cupwright.app.desk;

import java.time.Clock;
import org.cupwright.app.desk.AssessGreen.OneGreen;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.PlacePolicy;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.units.Paces;

/** Judges one position for a day. */
public final class AssessPosition {
    private final DataFolder folder;
    private final Clock clock;

    public AssessPosition(DataFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /** A position as it is on a day. */
    public record Answer(CourseDay day, Hole hole, JudgedPosition position) {}

    public Answer of(DayQuestion question, String holeId, Spot spot) {
        OneGreen one = OneGreen.of(folder, question, holeId, clock);
        MapPoint point = SpotOnGreen.of(one.hole(), one.day().policy(), spot);
        return new Answer(one.day(), one.hole(), one.judged().at(point));
    }
}
