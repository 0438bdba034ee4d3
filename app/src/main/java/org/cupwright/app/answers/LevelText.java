package org.cupwright.app.answers;

import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.green.LevelReading;
import org.cupwright.green.PlaneFit;
import org.cupwright.message.Message.Direction;

/** What the level read, in words. */
public final class LevelText {
    private final Texts texts;

    public LevelText(Texts texts) {
        this.texts = texts;
    }

    /** How much the ground falls, and which way. */
    public String falls(Hole hole, LevelReading reading) {
        PlaneFit plane = reading.plane();
        String slope = texts.slope(plane.slopePercent());
        return plane.downhill()
                .map(down -> new Direction(down, hole.lineOfPlay().map(LineOfPlay::atGreen)))
                .map(down -> texts.say("level.falls", slope, texts.way(down)))
                .orElse(slope);
    }

    /** A slope, and by how much it may err: two standard errors. */
    public String withError(PlaneFit plane) {
        return texts.say(
                "level.withError",
                texts.slope(plane.slopePercent()),
                texts.number(2 * 100 * plane.slopeStandardError(), 1));
    }
}
