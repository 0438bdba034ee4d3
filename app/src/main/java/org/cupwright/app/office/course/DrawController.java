package org.cupwright.app.office.course;

import java.util.Objects;
import java.util.Optional;
import org.cupwright.app.desk.ground.DrawGround;
import org.cupwright.app.desk.ground.GroundWish;
import org.cupwright.app.session.Right;
import org.cupwright.app.visit.Told;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Problem;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The edge of a green and what lies about it: looked at, drawn, kept, taken back. */
@Controller
public final class DrawController {
    private static final String ADDRESS = "/course/ground/{hole}";

    /** What is drawn upon another course than was seen has no place on it. */
    private static final String CHANGED = "problem.changedMeanwhile";

    @GetMapping("/course/ground")
    String first(Visit visit, RedirectAttributes on) {
        if (visit.courses().isEmpty()) {
            return "redirect:/course";
        }
        String hole =
                visit.session().read(visit.session()::course).holes().get(0).id();
        return back(visit, hole, on);
    }

    /**
     * The page.
     *
     * @param draw what is to be drawn, if anything: see {@link DrawWish}
     */
    @GetMapping(ADDRESS)
    ModelAndView ground(Visit visit, @PathVariable String hole, @RequestParam(defaultValue = "") String draw) {
        return page(visit, hole, new DrawWish(draw, ""));
    }

    /** Says what a drawing would change. */
    @PostMapping(ADDRESS + "/look")
    ModelAndView look(
            Visit visit,
            @PathVariable String hole,
            @RequestParam String draw,
            @RequestParam(required = false) String corners,
            @RequestParam long version) {
        DrawWish wish = new DrawWish(draw, Objects.requireNonNullElse(corners, ""));
        DrawGround ground = new DrawGround(visit.session());
        try {
            DrawGround.Answer green = ground.show(hole);
            DrawView.Change change = new DrawView(visit, green).change(ground.look(hole, meant(wish), version));
            return page(visit, hole, wish)
                    .addObject("change", change)
                    .addObject("draw", wish.draw())
                    .addObject("corners", wish.corners());
        } catch (Problem refused) {
            return refused(visit, hole, wish, refused);
        }
    }

    /** Keeps a drawing. */
    @PostMapping(ADDRESS + "/keep")
    ModelAndView keep(
            Visit visit,
            @PathVariable String hole,
            @RequestParam String draw,
            @RequestParam(required = false) String corners,
            @RequestParam long version,
            RedirectAttributes on) {
        DrawWish wish = new DrawWish(draw, Objects.requireNonNullElse(corners, ""));
        DrawGround ground = new DrawGround(visit.session());
        try {
            DrawGround.Answer green = ground.show(hole);
            on.addFlashAttribute("kept", new DrawView(visit, green).change(ground.keep(hole, meant(wish), version)));
            return new ModelAndView(back(visit, hole, on));
        } catch (Problem refused) {
            return refused(visit, hole, wish, refused);
        }
    }

    /** Takes back what was drawn last. */
    @PostMapping(ADDRESS + "/back")
    ModelAndView takeBack(Visit visit, @PathVariable String hole, @RequestParam long version, RedirectAttributes on) {
        try {
            new DrawGround(visit.session()).takeBack(hole, version);
            on.addFlashAttribute("takenBack", true);
            return new ModelAndView(back(visit, hole, on));
        } catch (Problem refused) {
            return refused(visit, hole, DrawWish.NOTHING, refused);
        }
    }

    private static GroundWish meant(DrawWish wish) {
        return wish.wish().orElseThrow(() -> Problem.of("ground.nothing", "draw", wish.draw()));
    }

    private static ModelAndView page(Visit visit, String hole, DrawWish wish) {
        DrawGround.Answer green = new DrawGround(visit.session()).show(hole);
        return new ModelAndView("course-ground")
                .addObject("mayBring", visit.may(Right.SURVEY))
                .addObject("maySet", visit.may(Right.SET))
                .addObject("page", new DrawView(visit, green).page(wish));
    }

    /** The page comes back with what was drawn, unless that was drawn upon what is no longer there. */
    static ModelAndView refused(Visit visit, String hole, DrawWish wish, Problem why) {
        boolean changed = why.what().key().equals(CHANGED);
        ModelAndView page =
                page(visit, hole, Optional.of(wish).filter(any -> !changed).orElse(DrawWish.NOTHING));
        page.setStatus(changed ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
        return page.addObject("told", Told.of(why, visit.texts()));
    }

    static String back(Visit visit, String hole, RedirectAttributes on) {
        on.addAttribute("hole", hole);
        on.addAttribute("date", visit.date().toString());
        return "redirect:" + ADDRESS;
    }
}
