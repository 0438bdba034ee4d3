package org.cupwright.app.office.work;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.UUID;
import org.cupwright.app.visit.Visit;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/** The page of a piece of long work: how far it has come, and the way to stop it. */
@Controller
public final class WorkController {
    private final Works works;

    public WorkController(Works works) {
        this.works = works;
    }

    /** The page, or how far it has come where only that is asked for; once it is done, on to where it leads. */
    @GetMapping("/work/{id}")
    String work(
            Visit visit, @PathVariable UUID id, Model model, HttpServletRequest request, HttpServletResponse answer) {
        Piece piece = works.find(id, visit.session().person());
        boolean part = request.getHeader("HX-Request") != null;
        if (piece.outcome().isPresent() && part) {
            answer.setHeader("HX-Redirect", piece.answer().isPresent() ? piece.next() : WorkView.address(piece));
        } else if (piece.answer().isPresent()) {
            return "redirect:" + piece.next();
        }
        answer.setHeader("Cache-Control", "no-store");
        model.addAttribute("work", new WorkView(visit.texts()).of(piece, works.before(piece)));
        return part ? "work :: far" : "work";
    }

    @PostMapping("/work/{id}/stop")
    public String stop(Visit visit, @PathVariable UUID id) {
        Piece piece = works.find(id, visit.session().person());
        piece.stop();
        return "redirect:" + WorkView.address(piece);
    }
}
