package org.cupwright.app.office.frame;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.cupwright.app.office.frame.Frame.Place;
import org.cupwright.app.session.Session;
import org.cupwright.app.visit.OfficeHouse;
import org.cupwright.app.visit.SignedIn;
import org.cupwright.app.visit.Visit;
import org.cupwright.app.visit.VisitArgument;
import org.cupwright.app.visit.Wishes;
import org.cupwright.message.Message;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;

/** Puts the frame about every page that answers a visit. */
public record FrameAround(OfficeHouse house) implements HandlerInterceptor {
    private static final String NAME = "frame";

    @Override
    public void postHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler, ModelAndView page) {
        if (page != null && page.getViewName() != null && !page.getViewName().startsWith("redirect:")) {
            put(page, request);
        }
    }

    /** The frame of a visit's page; what is outside of it still keeps to what was chosen on that machine. */
    void put(ModelAndView page, HttpServletRequest request) {
        page.addObject("here", here(request));
        page.addObject("theme", Wishes.theme(request).orElse(null));
        Set<Message> besides = page.getModel().get(Besides.NAME) instanceof Besides read ? read.remarks() : Set.of();
        VisitArgument.of(request).ifPresent(visit -> page.addObject(NAME, of(visit, request, besides)));
    }

    /**
     * The frame of a visit's page.
     *
     * @param besides remarks of what was read apart from the visit
     */
    Frame of(Visit visit, HttpServletRequest request, Set<Message> besides) {
        Session session = visit.session();
        return new Frame(
                visit.texts(),
                session.speech().language(),
                Wishes.theme(request).orElse(""),
                visit.courseName(),
                session.course().id().orElse(""),
                CourseNames.of(visit),
                visit.date(),
                visit.today(),
                session.person().name(),
                SignedIn.of(request)
                        .filter(person -> person.by() != SignedIn.By.PASSWORD)
                        .isPresent(),
                places(visit, request.getRequestURI()),
                Stream.concat(session.folder().remarks().stream(), besides.stream())
                        .distinct()
                        .map(visit.texts()::say)
                        .toList(),
                here(request),
                house.demo());
    }

    /** What was asked for; after a form, what it was sent from is not known. */
    private static String here(HttpServletRequest request) {
        String more = request.getQueryString() == null ? "" : "?" + request.getQueryString();
        boolean page = request.getDispatcherType() == DispatcherType.REQUEST
                && request.getMethod().equals("GET");
        return page ? request.getRequestURI() + more : "/";
    }

    private static List<Place> places(Visit visit, String here) {
        LocalDate date = visit.date();
        return Pages.IN_ORDER.stream()
                .filter(page -> page.right().isEmpty() || visit.may(page.right().get()))
                .map(page -> new Place(page.key(), page.address() + "?date=" + date, page.isAt(here)))
                .toList();
    }
}
