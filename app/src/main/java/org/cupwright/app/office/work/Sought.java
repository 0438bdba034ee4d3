package org.cupwright.app.office.work;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.cupwright.app.office.frame.Besides;
import org.cupwright.app.texts.Texts;
import org.springframework.ui.Model;

/**
 * What was sought for a page: found within a moment, or still being sought.
 *
 * @param found what was found
 * @param besides what has to be known of what was read for it
 * @param goesOn the work that seeks it, where it is not found yet
 */
public record Sought<T>(Optional<T> found, Besides besides, Optional<Piece> goesOn) {
    /** The page of the work, on which nothing else stands. */
    public String address() {
        return WorkView.address(goesOn.orElseThrow());
    }

    /** The work as it stands within another page. */
    public WorkView.Page page(Texts texts) {
        return new WorkView(texts).of(goesOn.orElseThrow(), 0);
    }

    /**
     * Answers a page that asked before and asks again: how far it has come. Work that failed has a page of its own.
     *
     * @return the part of the page
     */
    public String far(Texts texts, Model model, HttpServletResponse answer) {
        if (goesOn.orElseThrow().outcome().isPresent()) {
            answer.setHeader("HX-Redirect", address());
        }
        answer.setHeader("Cache-Control", "no-store");
        model.addAttribute("work", page(texts));
        return "work :: far";
    }

    /** Puts the part that was found where the work stood. */
    public static void instead(HttpServletResponse answer, String place, String how) {
        answer.setHeader("HX-Retarget", place);
        answer.setHeader("HX-Reswap", how);
    }
}
