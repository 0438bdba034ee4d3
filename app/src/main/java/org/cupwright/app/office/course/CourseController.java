package org.cupwright.app.office.course;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.findings.FindDoubts;
import org.cupwright.app.desk.findings.KnowGround;
import org.cupwright.app.office.work.Piece.Way;
import org.cupwright.app.office.work.Searches;
import org.cupwright.app.office.work.Sought;
import org.cupwright.app.session.Right;
import org.cupwright.app.visit.Visit;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.util.UriComponentsBuilder;

/** The page of the course, and what is doubtful about its ground. */
@Controller
public final class CourseController {
    private final Searches searches;

    public CourseController(Searches searches) {
        this.searches = searches;
    }

    /** @param doubts {@code later}: what is doubtful is looked for only when somebody says so */
    @GetMapping("/course")
    String course(Visit visit, @RequestParam(defaultValue = "") String doubts, Model model) {
        if (visit.courses().isEmpty()) {
            return visit.may(Right.SURVEY) ? "redirect:/begin" : "no-course";
        }
        KnowGround.Answer known = new KnowGround(visit.session()).of(visit.question());
        mayBring(visit, model);
        model.addAttribute("later", doubts.equals("later"));
        model.addAttribute("page", new CourseView(visit.texts()).of(known));
        return "course";
    }

    /** What was looked for, and of one green a picture. */
    private record Looked(FindDoubts.Answer found, Optional<String> map) {}

    /**
     * What is doubtful: of one green in words, or of every green how much. Every green's takes seconds, so the page of
     * the course fetches it when it stands.
     *
     * @param hole the hole; empty for all
     * @param again whether it is asked only whether it is found by now
     * @param part set when it is fetched into another page
     */
    @GetMapping("/course/findings")
    String findings(
            Visit visit,
            Model model,
            @RequestParam(defaultValue = "") String hole,
            @RequestParam(defaultValue = "false") boolean again,
            @RequestHeader(name = "HX-Request", required = false) String part,
            HttpServletResponse answer) {
        Sought<Looked> sought = sought(visit, hole);
        if (sought.found().isPresent()) {
            found(visit, model, sought.found().get(), !hole.isBlank());
            model.addAttribute("besides", sought.besides());
            if (again) {
                Sought.instead(answer, "#doubts", "innerHTML");
            }
            return part == null ? "course-findings" : "course-findings :: counts";
        }
        if (part == null) {
            return "redirect:" + sought.address();
        }
        if (again) {
            return sought.far(visit.texts(), model, answer);
        }
        model.addAttribute("work", sought.page(visit.texts()));
        model.addAttribute("asks", visit.inCourse(address(visit, hole) + "&again=true"));
        return "work :: going";
    }

    private Sought<Looked> sought(Visit visit, String hole) {
        List<String> holes = hole.isBlank() ? List.of() : List.of(hole);
        String title = visit.texts().say(hole.isBlank() ? "course.doubts.work.all" : "course.doubts.work.one", hole);
        Way way = new Way(
                hole.isBlank() ? "/course?date=" + visit.date() : address(visit, hole),
                "/course?doubts=later&date=" + visit.date());
        return searches.sought(visit, title, way, (session, progress) -> {
            FindDoubts.Answer found = new FindDoubts(session).of(visit.question(), holes, progress);
            DoubtsMap maps = new DoubtsMap(session, visit.question(), visit.texts());
            return new Looked(
                    found,
                    holes.isEmpty() ? Optional.empty() : maps.of(found.greens().get(0)));
        });
    }

    private static String address(Visit visit, String hole) {
        return UriComponentsBuilder.fromPath("/course/findings")
                .queryParam("hole", "{hole}")
                .queryParam("date", visit.date())
                .encode()
                .buildAndExpand(hole)
                .toUriString();
    }

    private static void found(Visit visit, Model model, Looked looked, boolean one) {
        CourseView view = new CourseView(visit.texts());
        List<CourseView.Doubts> doubts = view.doubts(looked.found());
        model.addAttribute("greens", doubts);
        model.addAttribute("counted", view.counted(doubts));
        model.addAttribute("one", one);
        model.addAttribute("map", looked.map().orElse(null));
        mayBring(visit, model);
    }

    /** Whether whoever looks may bring in files and give the sheet out, for the ways there. */
    private static void mayBring(Visit visit, Model model) {
        model.addAttribute("mayBring", visit.may(Right.SURVEY));
        model.addAttribute("maySet", visit.may(Right.SET));
    }
}
