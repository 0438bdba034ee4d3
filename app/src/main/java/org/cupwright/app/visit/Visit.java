package org.cupwright.app.visit;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.texts.Texts;

/**
 * One request for a page.
 *
 * @param session who asks, about which course
 * @param texts the words of the page
 * @param today today on the course
 * @param date the day that is asked about
 * @param courses the ids of all courses
 * @param courseName the name of the course asked about; empty as long as there is none
 * @param version of the program
 */
public record Visit(
        Session session,
        Texts texts,
        LocalDate today,
        LocalDate date,
        List<String> courses,
        String courseName,
        String version) {
    /** The day, with nothing said of its speed and weather. */
    public DayQuestion question() {
        return DayQuestion.of(date);
    }

    /** The unit in which lengths on the ground are typed. */
    public GroundUnit unit() {
        return GroundUnit.of(this);
    }

    /** An address of ours that says of which course it is, where there are several: as in every link of its pages. */
    public String inCourse(String address) {
        return courses.size() > 1
                ? session.course().id().map(id -> with(address, id)).orElse(address)
                : address;
    }

    private static String with(String address, String course) {
        return address + (address.contains("?") ? "&" : "?") + Wishes.COURSE_FIELD + "="
                + URLEncoder.encode(course, StandardCharsets.UTF_8);
    }

    public boolean may(Right right) {
        return session.person().role().may(right);
    }
}
