package org.cupwright.app.office.weeks;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.answers.WhyText;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.plan.ExplainHole;
import org.cupwright.app.desk.plan.ShowWeeks;
import org.cupwright.app.office.frame.Paragraph;
import org.cupwright.app.office.work.Piece;
import org.cupwright.app.office.work.Works;
import org.cupwright.app.visit.Visit;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.format.annotation.DateTimeFormat.ISO;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;

/** The page of the weeks, and what is shown of one of its cells. */
@Controller
public final class WeeksController {
    private final Works works;

    public WeeksController(Works works) {
        this.works = works;
    }

    /**
     * The page, or only what is shown of a cell.
     *
     * @param asked among it {@code wish}, what was gathered to be changed
     * @param cell the cell that is chosen, as {@code 2026-06-21:7}
     * @param work the work that has just been done
     */
    @GetMapping("/weeks")
    String weeks(
            Visit visit,
            @RequestParam MultiValueMap<String, String> asked,
            @RequestParam Optional<String> cell,
            @RequestParam Optional<UUID> work,
            @RequestHeader("HX-Request") Optional<String> part,
            Model model) {
        ShowWeeks.Answer answer = new ShowWeeks(visit.session()).of(visit.question());
        Wished wished = Wished.of(visit.date(), asked);
        model.addAttribute("wished", wished);
        model.addAttribute(
                "chosen",
                cell.flatMap(one -> new CellView(visit, answer).of(one)).orElse(null));
        if (part.isPresent()) {
            return "weeks-cell :: chosen";
        }
        model.addAttribute("weeks", new WeeksView(visit, answer, wished).page());
        model.addAttribute(
                "done",
                work.flatMap(id -> works.known(id, visit.session().person()))
                        .flatMap(Piece::answer)
                        .map(Paragraph::all)
                        .orElse(null));
        return "weeks";
    }

    /**
     * Adds one thing to what is to be changed.
     *
     * @param more the other day, or how far about the spot in the units of the course
     */
    @GetMapping("/weeks/wish")
    String wish(
            Visit visit,
            @RequestParam MultiValueMap<String, String> asked,
            @RequestParam String kind,
            @RequestParam @DateTimeFormat(iso = ISO.DATE) LocalDate on,
            @RequestParam String hole,
            @RequestParam(defaultValue = "") String more) {
        boolean away = kind.equals(Wish.Kind.AWAY.key());
        String third = away ? Wish.written(visit.unit().radiusMetres(more)) : more;
        boolean longer = away || kind.equals(Wish.Kind.SWAP.key());
        Wish added = Wish.of(String.format(Locale.ROOT, "%s:%s:%s%s", kind, on, longer ? third + ":" : "", hole));
        return "redirect:" + Wished.of(visit.date(), asked).with(added).address() + "#" + WeeksView.id(on, hole);
    }

    /** All that can be said of why a hole is where it is. */
    @GetMapping("/weeks/why")
    String why(
            Visit visit,
            @RequestParam @DateTimeFormat(iso = ISO.DATE) LocalDate on,
            @RequestParam String hole,
            @RequestHeader("HX-Request") Optional<String> part,
            Model model) {
        ExplainHole.Answer answer = new ExplainHole(visit.session()).of(DayQuestion.of(on), hole);
        model.addAttribute("hole", hole);
        model.addAttribute("why", Paragraph.all(new WhyText(visit.texts(), answer.told()).lines(answer)));
        return part.isPresent() ? "weeks-why :: why" : "weeks-why";
    }
}
