package org.cupwright.app.office.begin;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.begin.BeginCourse;
import org.cupwright.app.desk.begin.GridStep;
import org.cupwright.app.desk.begin.HazardStep;
import org.cupwright.app.desk.begin.PictureStep;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.storage.SettingUp.Way;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.HeadingWords;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.Hazard;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Second step, on a grid of paces: greens of which there is no picture, and bunkers and water beside any green. */
@Controller
public final class GridController {
    private static final String ADDRESS = "/begin/greens/grid";

    /**
     * The grid.
     *
     * @param green what is drawn is of this green, or beside it; 0 for another green
     * @param kind what is drawn
     */
    @GetMapping(ADDRESS)
    ModelAndView grid(
            Visit visit,
            @RequestParam(defaultValue = "0") int green,
            @RequestParam(defaultValue = "green") String kind) {
        Evening evening = new Evening(visit, Step.GREENS);
        SettingUp stands = new BeginCourse(visit.session()).stands();
        Map<String, String> asked = Map.of(DrawnKinds.FIELD, kind);
        Map<String, String> values = new HashMap<>();
        stands.find(green).filter(known -> isEdge(asked, known)).ifPresent(known -> values(known, visit, values));
        return page(evening, green, asked, evening.form(values));
    }

    private static void values(BegunGreen green, Visit visit, Map<String, String> values) {
        values.put(PictureStep.HOLE, green.named() ? green.hole().id() : "");
        values.put(PictureStep.PLAY, GreensView.play(green));
        values.put(PictureStep.CORNERS, new GridView(visit.texts(), Optional.of(green), false, pace(visit)).edge());
    }

    /** Keeps a green, or what lies beside it. */
    @PostMapping(ADDRESS)
    ModelAndView keep(
            Visit visit,
            @RequestParam(defaultValue = "0") int green,
            @RequestParam Map<String, String> typed,
            RedirectAttributes next) {
        Evening evening = new Evening(visit, Step.GREENS);
        Optional<Hazard.Kind> hazard = DrawnKinds.hazard(typed);
        int[] kept = {green};
        ModelAndView page = evening.keep(
                typed,
                () -> {
                    if (hazard.isPresent()) {
                        HazardStep step = new HazardStep(visit.session());
                        DrawnKinds.kept(
                                visit, hazard.get(), step.onGrid(green, hazard.get(), typed, pace(visit)), next);
                    } else {
                        Map<String, String> inDegrees = new HeadingWords(visit.texts()).inDegrees(typed);
                        kept[0] = new GridStep(visit.session()).keep(green, inDegrees, pace(visit));
                        PictureController.kept(visit, kept[0], next);
                    }
                },
                ADDRESS,
                form -> page(evening, green, typed, form));
        boolean on = page.getViewName() != null && page.getViewName().startsWith("redirect:");
        return on ? beside(kept[0]) : page;
    }

    /** What lies beside a green is drawn next. */
    private static ModelAndView beside(int green) {
        return new ModelAndView("redirect:" + ADDRESS + "?green=" + green + "&kind=bunker");
    }

    /** Takes a bunker or water away. */
    @PostMapping(ADDRESS + "/away")
    ModelAndView away(Visit visit, @RequestParam int green, @RequestParam int hazard) {
        new HazardStep(visit.session()).remove(green, hazard);
        return beside(green);
    }

    private static double pace(Visit visit) {
        return visit.session().speech().paceMetres();
    }

    /** Whether the edge of a green is what is drawn: of one that came another way it stays as it is. */
    private static boolean isEdge(Map<String, String> typed, BegunGreen green) {
        return DrawnKinds.name(typed).equals(DrawnKinds.GREEN) && green.way() == Way.DRAWN;
    }

    private static ModelAndView page(Evening evening, int number, Map<String, String> typed, Form form) {
        Visit visit = evening.visit();
        Texts texts = visit.texts();
        SettingUp stands = new BeginCourse(visit.session()).stands();
        Optional<BegunGreen> green = stands.find(number);
        boolean edge = green.map(known -> isEdge(typed, known)).orElse(true);
        List<String> kinds = green.filter(known -> known.way() != Way.DRAWN).isPresent()
                ? DrawnKinds.ALL.subList(1, DrawnKinds.ALL.size())
                : DrawnKinds.ALL;
        String chosen = DrawnKinds.name(typed);
        String kind = edge ? DrawnKinds.GREEN : kinds.contains(chosen) ? chosen : kinds.get(0);
        GridView view = new GridView(texts, green, !edge, pace(visit));
        String name = green.map(known -> known.named() ? known.hole().id() : "#" + number)
                .orElse("");
        return evening.page("begin-grid", form)
                .addObject("heading", texts.say(green.isPresent() ? "begin.grid.of" : "begin.grid", name))
                .addObject("green", green.map(BegunGreen::number).orElse(0))
                .addObject("kind", kind)
                .addObject("kinds", kinds)
                .addObject("board", view.board())
                .addObject("hazards", view.hazards())
                .addObject("count", stands.greens().size())
                .addObject("pace", texts.number(pace(visit), 2))
                .addObject("winds", new HeadingWords(texts).all());
    }
}
