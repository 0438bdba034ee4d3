package org.cupwright.app.office.green;

import jakarta.servlet.http.HttpServletResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.cupwright.app.desk.green.AssessGreen;
import org.cupwright.app.desk.green.JudgedGreen;
import org.cupwright.app.desk.level.LevelRoundOfDay;
import org.cupwright.app.desk.plan.ShowHole;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.maps.MapFrame;
import org.cupwright.app.office.work.Sought;
import org.cupwright.app.visit.Visit;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The page of a green, and the part of it that says of a spot what there is to say. */
@Controller
public final class GreenController {
    /** A spot that is asked about goes into the address, so that it is there again when the page is. */
    private static final String ADDRESS = "HX-Replace-Url";

    private final LevelRounds rounds;

    GreenController(LevelRounds rounds) {
        this.rounds = rounds;
    }

    @GetMapping("/green")
    String first(Visit visit, RedirectAttributes on) {
        if (visit.courses().isEmpty()) {
            return "no-course";
        }
        on.addAttribute(
                "hole",
                visit.session().read(visit.session()::course).holes().get(0).id());
        on.addAttribute("date", visit.date().toString());
        return "redirect:/green/{hole}";
    }

    /** The page; where a level round is asked for that is not there in a moment, on to how far it has come. */
    @GetMapping("/green/{hole}")
    String green(Visit visit, @PathVariable String hole, AskedOfGreen asked, Model model) {
        ShowHole.Answer stands = new ShowHole(visit.session()).of(visit.question(), hole);
        LevelView.Shown level = LevelView.Shown.NOTHING;
        if (asked.levelAsked()) {
            Sought<LevelRoundOfDay.Answer> round = rounds.sought(visit, stands, asked);
            if (round.found().isEmpty()) {
                return "redirect:" + round.address();
            }
            model.addAttribute("besides", round.besides());
            level = new LevelView(visit, round.found().get()).shown();
        }
        JudgedGreen green = new AssessGreen(visit.session()).judged(stands.question(), hole);
        GreenView view = new GreenView(visit, stands, green);
        GreenDrawing drawing = view.drawing();
        MapFrame frame = new GreenMap(visit.texts()).frame(drawing);
        model.addAttribute("green", view.page(drawing));
        model.addAttribute("spot", new SpotView(visit, stands, green, asked, frame, level).part());
        return "green";
    }

    /** @param again whether it is asked only whether the level round is there by now */
    @GetMapping("/green/{hole}/spot")
    String spot(
            Visit visit,
            @PathVariable String hole,
            AskedOfGreen asked,
            @RequestParam(defaultValue = "false") boolean again,
            Model model,
            HttpServletResponse response) {
        ShowHole.Answer stands = new ShowHole(visit.session()).of(visit.question(), hole);
        LevelView.Shown level = LevelView.Shown.NOTHING;
        if (asked.levelAsked()) {
            Sought<LevelRoundOfDay.Answer> round = rounds.sought(visit, stands, asked);
            if (round.found().isEmpty() && again) {
                return round.far(visit.texts(), model, response);
            }
            if (again) {
                Sought.instead(response, "#spot", "innerHTML");
            }
            level = round.found()
                    .map(answer -> new LevelView(visit, answer).shown())
                    .orElseGet(() -> rounds.waited(visit, stands, asked, round));
        }
        JudgedGreen green = new AssessGreen(visit.session()).judged(stands.question(), hole);
        SpotView.Part part =
                new SpotView(visit, stands, green, asked, GreenMap.groundFrame(stands.hole()), level).part();
        model.addAttribute("spot", part);
        part.asked().ifPresent(one -> response.setHeader(ADDRESS, address(hole, visit, one, part)));
        return "spot :: answer";
    }

    private static String address(String hole, Visit visit, SpotView.Judged asked, SpotView.Part part) {
        String held = part.held().map(one -> "&hold=" + one.at()).orElse("");
        return visit.inCourse("/green/" + URLEncoder.encode(hole, StandardCharsets.UTF_8) + "?date=" + visit.date()
                + "&at=" + asked.at() + held);
    }
}
