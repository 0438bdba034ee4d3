package org.cupwright.app.visit;

import jakarta.servlet.http.HttpServletRequest;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.policy.DeskPolicy;
import org.cupwright.app.desk.policy.PolicyKeys;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.DayRange;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PlacePolicy;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;

/** Settles for a request who asks, about which course and day, and in which words. */
public record Visits(OfficeHouse house) {
    /** What is read of the folder for it, at one moment. */
    private record Basis(List<String> courses, CourseChoice course, String name, LocalDate today, Policy policy) {}

    /** The visit of somebody who is signed in; the folder is closed with the request. */
    public Visit of(HttpServletRequest request, SignedIn person, DataFolder folder) {
        Basis basis = folder.read(stores -> basis(stores, request));
        Speech speech = speech(request, basis.policy());
        Session session = new Session(folder, person.person(), basis.course(), house.clock(), UUID::randomUUID, speech);
        return new Visit(
                session,
                words(speech),
                basis.today(),
                date(request, basis.today()),
                basis.courses(),
                basis.name(),
                house.version());
    }

    private Basis basis(Stores stores, HttpServletRequest request) {
        List<String> courses = stores.courses().ids();
        CourseChoice course = new CourseChoice(
                Wishes.course(request, courses).or(() -> courses.stream().findFirst()));
        boolean missing = course.isMissingIn(stores);
        String name = missing ? "" : course.in(stores).name();
        LocalDate today = CourseToday.of(stores, course, house.clock());
        Policy policy =
                missing ? Policy.defaults() : PolicyKeys.history(stores, course).at(today);
        return new Basis(courses, course, name, today, policy);
    }

    private static Speech speech(HttpServletRequest request, Policy policy) {
        return new Speech(
                Door.PAGES,
                Wishes.language(request).orElseGet(() -> policy.get(DeskPolicy.LANGUAGE)),
                policy.get(DeskPolicy.UNITS),
                policy.get(PlacePolicy.PACE_METRES));
    }

    /** The words of a course, for somebody of whom nothing else is known. */
    public static Texts words(HttpServletRequest request, Policy policy) {
        return words(speech(request, policy));
    }

    /** The words for somebody of whom nothing is known but what was asked. */
    public static Texts words(HttpServletRequest request) {
        String language = Wishes.language(request).orElse("en");
        return words(new Speech(Door.PAGES, language, UnitSystem.PACES, Paces.STANDARD_METRES));
    }

    /** The words of a language; where there are none in it, English. */
    private static Texts words(Speech speech) {
        return words(speech, speech.language()).or(() -> words(speech, "en")).orElseThrow();
    }

    private static Optional<Texts> words(Speech speech, String language) {
        return Texts.find(language, speech.door(), speech.units(), speech.paceMetres());
    }

    private static LocalDate date(HttpServletRequest request, LocalDate today) {
        String asked = request.getParameter("date");
        if (asked == null || asked.isBlank()) {
            return today;
        }
        try {
            return DayRange.upTo(today).within(LocalDate.parse(asked), "date");
        } catch (DateTimeParseException wrong) {
            throw Problem.of("notADay", "date", asked, new Name(asked));
        }
    }
}
