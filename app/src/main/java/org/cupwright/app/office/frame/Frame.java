package org.cupwright.app.office.frame;

import java.time.LocalDate;
import java.util.List;
import org.cupwright.app.texts.Texts;

/**
 * What stands about every page.
 *
 * @param words all words of the page come from here
 * @param language as in {@code en}
 * @param theme {@code light}, {@code dark}, or empty: as the machine is set
 * @param course the course's name; empty as long as there is none
 * @param courseId its id; empty as long as there is none
 * @param courses all courses to choose from; none where there is only one
 * @param date the day that is looked at
 * @param today today on the course
 * @param person who is signed in
 * @param byPhone whether that person is signed in by a phone, and may do more by typing the password
 * @param places where one can go
 * @param remarks what has to be known of what was read: rows that are damaged
 * @param here the address of the page, to which a wish for another language leads back
 * @param demo whether the course is the invented one, open to whoever sits at this machine
 */
public record Frame(
        Texts words,
        String language,
        String theme,
        String course,
        String courseId,
        List<CourseName> courses,
        LocalDate date,
        LocalDate today,
        String person,
        boolean byPhone,
        List<Place> places,
        List<String> remarks,
        String here,
        boolean demo) {
    /** A course to choose: its id, and its name, with the id where others have that name too. */
    public record CourseName(String id, String name) {}

    /**
     * A page one can go to.
     *
     * @param key its name among the pages
     * @param address where it is
     * @param here whether one is there
     */
    public record Place(String key, String address, boolean here) {}
}
