package org.cupwright.app.office.sheet;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.cupwright.app.desk.paper.PublicSheet;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.OfficeHouse;
import org.cupwright.app.visit.Visits;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** Nobody is signed in here: what is given out is today's sheet and nothing else. */
@Controller
public final class SheetController {
    /** A hole that was moved is elsewhere at once, and so is the sheet: nobody is shown an old one. */
    private static final String NOT_KEPT = CacheControl.noStore().getHeaderValue();

    private final OfficeHouse house;

    public SheetController(OfficeHouse house) {
        this.house = house;
    }

    @GetMapping("/sheet/{link}")
    String sheet(HttpServletRequest request, HttpServletResponse response, @PathVariable String link, Model model) {
        try (DataFolder folder = house.folders().get()) {
            PublicSheet.Answer today = new PublicSheet(house.ofNobody(folder)).today(link);
            Texts words = Visits.words(request, today.policy());
            model.addAttribute("words", words);
            model.addAttribute("sheet", new SheetView(words).of(today));
        }
        response.setHeader(HttpHeaders.CACHE_CONTROL, NOT_KEPT);
        response.setHeader("X-Robots-Tag", "noindex"); // what nobody guesses, nobody is to find
        return "sheet";
    }
}
