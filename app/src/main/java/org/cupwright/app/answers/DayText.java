package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.storage.DayRain;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;

/** What counts for a day, in words. */
public record DayText(Texts texts) {
    /** A heading that names the course and the day, with what counts for it. */
    public String title(String key, CourseDay day) {
        return texts.say(key, day.course().name(), texts.day(day.date())) + " · " + speed(day);
    }

    public String speed(CourseDay day) {
        return speed(day.speed(), day.rain());
    }

    /** The speed that is judged for, and whether in rain. */
    public String speed(DaySpeed speed, DayRain rain) {
        return texts.say("day.speed", texts.number(speed.feet())) + rain(rain);
    }

    private String rain(DayRain rain) {
        return rain.expected() ? " · " + texts.say("day.rain." + EnumNames.lowerCamel(rain)) : "";
    }

    /** The speed that is judged for, with where it comes from, and whether in rain. */
    public String whence(DaySpeed speed, DayRain rain) {
        return whence(speed) + rain(rain);
    }

    /** The speed that is judged for, with where it comes from. */
    public String whence(DaySpeed speed) {
        return speed.from() == DaySpeed.From.NOT_KEPT
                ? texts.say("day.speed", texts.number(speed.feet()))
                : texts.say("day.speedFrom", texts.number(speed.feet()), from(speed));
    }

    private String from(DaySpeed speed) {
        List<String> parts = new ArrayList<>();
        parts.add(speed.reading().map(read -> reading(speed, read)).orElseGet(() -> texts.say(key(speed))));
        speed.added()
                .forEach(more -> parts.add(
                        texts.say("day.added." + EnumNames.lowerCamel(more.by()), texts.number(more.feet()))));
        return String.join(", ", parts);
    }

    private String reading(DaySpeed speed, DaySpeed.Reading read) {
        if (speed.from() == DaySpeed.From.CARRIED) {
            return texts.say(key(speed), texts.number(read.feet()), texts.weekday(read.day()));
        }
        return read.time()
                .map(time -> texts.say(key(speed), texts.number(read.feet()), time.toString()))
                .orElseGet(() -> texts.say("day.from.readThatDay", texts.number(read.feet())));
    }

    private static String key(DaySpeed speed) {
        return "day.from." + EnumNames.lowerCamel(speed.from());
    }
}
