package org.cupwright.app.answers;

import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.texts.Texts;

/** What counts for a day, in words. */
public record DayText(Texts texts) {
    /** A heading that names the course and the day, with what counts for it. */
    public String title(String key, CourseDay day) {
        return texts.say(key, day.course().name(), texts.day(day.date())) + " · " + speed(day);
    }

    public String speed(CourseDay day) {
        return speed(day.fastest().feet(), day.rain());
    }

    public String speed(double feet, boolean rain) {
        String shown = texts.number(feet, feet == Math.rint(feet) ? 0 : 1);
        return texts.say("day.speed", shown) + (rain ? " · " + texts.say("day.rain") : "");
    }
}
