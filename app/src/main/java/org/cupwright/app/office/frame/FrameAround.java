package org.cupwright.app.office.frame;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.List;
import org.cupwright.app.office.frame.Frame.Place;
import org.cupwright.app.office.visit.OfficeHouse;
import org.cupwright.app.office.visit.Visit;
import org.cupwright.app.office.visit.VisitArgument;
import org.cupwright.app.office.visit.Wishes;
import org.cupwright.app.session.Session;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;

/** Puts the frame about every page that answers a visit. */
public record FrameAround(OfficeHouse house) implements HandlerInterceptor {
    private static final String NAME = "frame";

    @Override
    public void postHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler, ModelAndView page) {
        if (page != null && page.getViewName() != null && !page.getViewName().startsWith("redirect:")) {
            VisitArgument.of(request).ifPresent(visit -> page.addObject(NAME, of(visit, request)));
        }
    }

    /** The frame of a visit's page. */
    Frame of(Visit visit, HttpServletRequest request) {
        Session session = visit.session();
        return new Frame(
                visit.texts(),
                session.speech().language(),
                Wishes.theme(request).orElse(""),
                visit.courseName(),
                visit.courses(),
                visit.date(),
                visit.today(),
                session.person().name(),
                places(visit, request.getRequestURI()),
                session.folder().remarks().stream().map(visit.texts()::say).toList(),
                house.demo());
    }

    private static List<Place> places(Visit visit, String here) {
        LocalDate date = visit.date();
        return Pages.IN_ORDER.stream()
                .filter(page -> page.right().isEmpty() || visit.may(page.right().get()))
                .map(page -> new Place(page.key(), page.address() + "?date=" + date, page.isAt(here)))
                .toList();
    }
}
