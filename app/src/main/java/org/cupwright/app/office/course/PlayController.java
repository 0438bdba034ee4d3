package org.cupwright.app.office.course;

import org.cupwright.app.desk.TypedHeading;
import org.cupwright.app.desk.ground.TurnPlay;
import org.cupwright.app.visit.HeadingWords;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Problem;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** From where a green is played to is said anew. */
@Controller
public final class PlayController {
    private static final String FIELD = "play";

    /**
     * Keeps a direction.
     *
     * @param play degrees, or one of the eight winds in words; empty: nobody knows
     */
    @PostMapping("/course/ground/{hole}/play")
    ModelAndView keep(
            Visit visit,
            @PathVariable String hole,
            @RequestParam(defaultValue = "") String play,
            @RequestParam long version,
            RedirectAttributes on) {
        String degrees = new HeadingWords(visit.texts()).inDegrees(play);
        try {
            TurnPlay.Answer turned =
                    new TurnPlay(visit.session()).keep(hole, TypedHeading.read(FIELD, degrees), version);
            on.addFlashAttribute("turned", new PlayView(visit.texts()).turned(turned));
            return new ModelAndView(DrawController.back(visit, hole, on));
        } catch (Problem refused) {
            return DrawController.refused(visit, hole, DrawWish.NOTHING, refused)
                    .addObject("typedPlay", play);
        }
    }
}
