package org.cupwright.app.office.course;

import java.util.Set;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.office.work.LongWork;
import org.cupwright.app.office.work.Piece.Way;
import org.cupwright.app.office.work.Works;
import org.cupwright.app.session.Session;
import org.cupwright.app.visit.Visit;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.ModelAndView;

/** Looks at surveys, and brings them in, as long work. */
@Component
final class FilesAtWork {
    private final HandedIn handedIn;
    private final Works works;

    FilesAtWork(HandedIn handedIn, Works works) {
        this.handedIn = handedIn;
        this.works = works;
    }

    /** Leads to the work, and then to what was found. */
    ModelAndView look(Visit visit, Parcel parcel) {
        Way way = new Way(found(visit, parcel), page(visit));
        return begin(
                visit,
                "course.files.work.look",
                way,
                (session, progress) ->
                        handedIn.look(parcel, reading(visit, session, progress)).said());
    }

    /** Leads to the work, and then to what was brought in. */
    ModelAndView bring(Visit visit, Parcel parcel) {
        Way way = new Way(page(visit), found(visit, parcel));
        return begin(
                visit,
                "course.files.work.bring",
                way,
                (session, progress) -> handedIn.bring(parcel, reading(visit, session, progress), Set.of()));
    }

    private ModelAndView begin(Visit visit, String title, Way way, LongWork work) {
        return new ModelAndView("redirect:/work/"
                + works.begin(visit, visit.texts().say(title), way, work).id());
    }

    private static FilesRead reading(Visit visit, Session session, Progress progress) {
        return new FilesRead(session, visit.texts(), visit.today(), progress);
    }

    private static String page(Visit visit) {
        return "/course/files?date=" + visit.date();
    }

    private static String found(Visit visit, Parcel parcel) {
        return page(visit) + "&parcel=" + parcel.id();
    }
}
