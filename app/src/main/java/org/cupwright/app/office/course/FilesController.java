package org.cupwright.app.office.course;

import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.cupwright.app.office.course.Parcel.What;
import org.cupwright.app.office.frame.ProblemPages;
import org.cupwright.app.office.visit.Visit;
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

/** Files that bring what is known of a course: handed in, looked at, brought in. */
@Controller
public final class FilesController {
    private final HandedIn handedIn;

    FilesController(HandedIn handedIn) {
        this.handedIn = handedIn;
    }

    @GetMapping("/course/files")
    ModelAndView files(Visit visit) {
        return new ModelAndView("files")
                .addObject("mayBring", true)
                .addObject("courseId", visit.session().course().id().orElse(""));
    }

    /** Reads what was handed in, and keeps nothing of it but the files, for a while. */
    @PostMapping("/course/files/look")
    ModelAndView look(
            Visit visit,
            @RequestParam What what,
            @RequestParam Map<String, String> fields,
            @RequestParam MultiValueMap<String, MultipartFile> files) {
        Parcel parcel = handedIn.keep(
                visit.session().person().name(),
                what,
                fields,
                files,
                visit.session().now());
        try {
            return looked(visit, parcel);
        } catch (Problem bad) {
            handedIn.drop(parcel);
            return told(visit, bad);
        }
    }

    private ModelAndView looked(Visit visit, Parcel parcel) {
        return files(visit)
                .addObject("parcel", parcel.id())
                .addObject("read", new FilesRead(visit).of(parcel, Set.of(), false));
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
        Parcel found = handedIn.find(parcel, visit.session().person().name())
                .orElseThrow(() -> Problem.of("files.gone", "request", ""));
        Set<String> accepted = accept == null ? Set.of() : accept;
        try {
            FilesRead.Read read = new FilesRead(visit).of(found, accepted, true);
            handedIn.drop(found);
            next.addFlashAttribute("brought", read.lines());
            return new ModelAndView("redirect:/course/files?date=" + visit.date());
        } catch (Problem bad) {
            return told(visit, bad)
                    .addObject("parcel", parcel)
                    .addObject("read", new FilesRead(visit).of(found, Set.of(), false));
        }
    }

    private ModelAndView told(Visit visit, Problem bad) {
        ModelAndView page = files(visit).addObject("told", ProblemPages.Told.of(bad, visit.texts()));
        page.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
        return page;
    }
}
