package org.cupwright.app.office.course;

import java.util.List;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.findings.FindDoubts;
import org.cupwright.app.desk.findings.KnowGround;
import org.cupwright.app.office.visit.Visit;
import org.cupwright.app.session.Right;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;

/** The page of the course, and what is doubtful about its ground. */
@Controller
public final class CourseController {
    @GetMapping("/course")
    String course(Visit visit, Model model) {
        if (visit.courses().isEmpty()) {
            return visit.may(Right.SURVEY) ? "redirect:/begin" : "no-course";
        }
        KnowGround.Answer known = new KnowGround(visit.session()).of(visit.question());
        mayBring(visit, model);
        model.addAttribute("page", new CourseView(visit.texts()).of(known));
        return "course";
    }

    /**
     * What is doubtful: of one green in words, or of every green how much. Every green's takes seconds, so the page of
     * the course fetches it when it stands.
     *
     * @param hole the hole; empty for all
     * @param part set when it is fetched into another page
     */
    @GetMapping("/course/findings")
    String findings(
            Visit visit,
            Model model,
            @RequestParam(defaultValue = "") String hole,
            @RequestHeader(name = "HX-Request", required = false) String part) {
        List<String> holes = hole.isBlank() ? List.of() : List.of(hole);
        FindDoubts.Answer found = new FindDoubts(visit.session()).of(visit.question(), holes, Progress.unheard());
        CourseView view = new CourseView(visit.texts());
        List<CourseView.Doubts> doubts = view.doubts(found);
        model.addAttribute("greens", doubts);
        model.addAttribute("counted", view.counted(doubts));
        model.addAttribute("one", !holes.isEmpty());
        model.addAttribute("map", holes.isEmpty() ? null : map(visit, found));
        mayBring(visit, model);
        return part == null ? "course-findings" : "course-findings :: counts";
    }

    private static String map(Visit visit, FindDoubts.Answer found) {
        return found.greens().stream()
                .flatMap(green -> new DoubtsMap(visit).of(green).stream())
                .findFirst()
                .orElse(null);
    }

    /** Whether whoever looks may bring in files, for the way there. */
    private static void mayBring(Visit visit, Model model) {
        model.addAttribute("mayBring", visit.may(Right.SURVEY));
    }
}
