package org.cupwright.app.cli;

import org.cupwright.app.desk.CourseDay;
import org.cupwright.app.texts.Texts;

/** What counts for a day, in words. */
final class DayText {
    private final Texts texts;

    DayText(Texts texts) {
        this.texts = texts;
    }

    String speed(CourseDay day) {
        return speed(day.fastest().feet(), day.rain());
    }

    String speed(double feet, boolean rain) {
        String shown = texts.number(feet, feet == Math.rint(feet) ? 0 : 1);
        return texts.say("day.speed", shown) + (rain ? " · " + texts.say("day.rain") : "");
    }
}
