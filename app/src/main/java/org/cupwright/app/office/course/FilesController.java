package org.cupwright.app.office.course;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.office.course.Parcel.What;
import org.cupwright.app.office.work.Piece;
import org.cupwright.app.office.work.Works;
import org.cupwright.app.session.Right;
import org.cupwright.app.visit.Told;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Problem;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * Files that bring what is known of a course: handed in, looked at, brought in. A survey is looked at and brought in as
 * long work, everything else while the page waits.
 */
@Controller
public final class FilesController {
    private final HandedIn handedIn;
    private final FilesAtWork atWork;
    private final Works works;

    FilesController(HandedIn handedIn, FilesAtWork atWork, Works works) {
        this.handedIn = handedIn;
        this.atWork = atWork;
        this.works = works;
    }

    /**
     * The page.
     *
     * @param parcel what was handed in and is to be read of
     * @param work the work that has just been done
     */
    @GetMapping("/course/files")
    ModelAndView files(Visit visit, @RequestParam Optional<UUID> parcel, @RequestParam Optional<UUID> work) {
        ModelAndView page = page(visit);
        Optional<Parcel> known = parcel.flatMap(id -> handedIn.find(id, name(visit)));
        if (known.isPresent()) {
            handedIn.found(known.get()).ifPresent(read -> read(page, known.get(), read));
        } else {
            work.flatMap(id -> works.known(id, visit.session().person()))
                    .flatMap(Piece::answer)
                    .ifPresent(said -> brought(page, said));
        }
        return page;
    }

    private static ModelAndView page(Visit visit) {
        return new ModelAndView("files")
                .addObject("mayBring", true)
                .addObject("maySet", visit.may(Right.SET))
                .addObject("courseId", visit.session().course().id().orElse(""));
    }

    private static String name(Visit visit) {
        return visit.session().person().name();
    }

    private static void brought(ModelAndView page, Lines said) {
        page.addObject("brought", FilesRead.Told.all(said));
    }

    private static ModelAndView read(ModelAndView page, Parcel parcel, FilesRead.Read read) {
        return page.addObject("parcel", parcel.id()).addObject("read", read);
    }

    /** Reads what was handed in, and keeps nothing of it but the files, for a while. */
    @PostMapping("/course/files/look")
    ModelAndView look(
            Visit visit,
            @RequestParam What what,
            @RequestParam Map<String, String> fields,
            @RequestParam MultiValueMap<String, MultipartFile> files) {
        Parcel parcel =
                handedIn.keep(name(visit), what, fields, files, visit.session().now());
        if (parcel.isLong()) {
            return atWork.look(visit, parcel);
        }
        try {
            return read(page(visit), parcel, handedIn.look(parcel, FilesRead.during(visit)));
        } catch (Problem bad) {
            return told(visit, bad);
        }
    }

    /**
     * Brings in what was looked at.
     *
     * @param parcel its id
     * @param accept what looks wrong and is right
     */
    @PostMapping("/course/files/bring")
    ModelAndView bring(
            Visit visit,
            @RequestParam UUID parcel,
            @RequestParam(required = false) Set<String> accept,
            RedirectAttributes next) {
        Parcel found = handedIn.find(parcel, name(visit)).orElseThrow(() -> Problem.of("files.gone", "request", ""));
        if (found.isLong()) {
            return atWork.bring(visit, found);
        }
        Set<String> accepted = accept == null ? Set.of() : accept;
        try {
            Lines said = handedIn.bring(found, FilesRead.during(visit), accepted);
            next.addFlashAttribute("brought", FilesRead.Told.all(said));
            return new ModelAndView("redirect:/course/files?date=" + visit.date());
        } catch (Problem bad) {
            ModelAndView page = told(visit, bad);
            handedIn.found(found).ifPresent(read -> read(page, found, read));
            return page;
        }
    }

    private ModelAndView told(Visit visit, Problem bad) {
        ModelAndView page = page(visit).addObject("told", Told.of(bad, visit.texts()));
        page.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
        return page;
    }
}
