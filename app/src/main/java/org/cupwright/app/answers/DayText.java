package org.cupwright.app.answers;

import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.texts.Texts;

/** What counts for a day, in words. */
public final class DayText {
    private final Texts texts;

    public DayText(Texts texts) {
        this.texts = texts;
    }

    public String speed(CourseDay day) {
        return speed(day.fastest().feet(), day.rain());
    }

    public String speed(double feet, boolean rain) {
        String shown = texts.number(feet, feet == Math.rint(feet) ? 0 : 1);
        return texts.say("day.speed", shown) + (rain ? " · " + texts.say("day.rain") : "");
    }
}
