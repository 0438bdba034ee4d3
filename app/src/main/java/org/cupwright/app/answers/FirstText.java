package org.cupwright.app.answers;

import java.util.List;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.first.Notice;
import org.cupwright.app.texts.Texts;

/** What has to be known first, in words; the same on paper, on the screen and at every other door. */
public final class FirstText {
    private final Texts texts;
    private final PlaceText places;

    public FirstText(Texts texts, CourseDay day) {
        this.texts = texts;
        this.places = new PlaceText(texts, day.course(), day.policy());
    }

    /** The box's heading. */
    public String title() {
        return texts.say("first.title");
    }

    /** One notice as a sentence, with its place on the green where it is at one place. */
    public String says(Notice notice) {
        String says = texts.say(notice.says());
        return notice.place()
                .flatMap(place -> notice.hole().map(hole -> places.at(hole, place)))
                .map(place -> texts.say("first.at", says, place))
                .orElse(says);
    }

    /** The heading and a paragraph for each notice. */
    public Lines before(List<Notice> notices, Lines lines) {
        lines.line(title());
        notices.forEach(notice -> lines.wrapped("  ! ", says(notice)));
        return lines;
    }

    /** The notices of one hole, each a paragraph that hangs below a head. */
    Lines at(String head, List<Notice> notices, Lines lines) {
        notices.forEach(notice -> lines.wrapped(head, says(notice)));
        return lines;
    }
}
