package org.cupwright.app.office.sheet;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.concurrent.TimeUnit;
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
    /** Players look again and again; what is a minute old is new enough for them. Our choice. */
    private static final String KEPT =
            CacheControl.maxAge(1, TimeUnit.MINUTES).cachePrivate().getHeaderValue();

    private final OfficeHouse house;

    public SheetController(OfficeHouse house) {
        this.house = house;
    }

    @GetMapping("/sheet/{course}")
    String sheet(HttpServletRequest request, HttpServletResponse response, @PathVariable String course, Model model) {
        try (DataFolder folder = house.folders().get()) {
            PublicSheet.Answer today = new PublicSheet(house.ofNobody(folder, course)).today();
            Texts words = Visits.words(request, today.policy());
            model.addAttribute("words", words);
            model.addAttribute("sheet", new SheetView(words).of(today));
        }
        response.setHeader(HttpHeaders.CACHE_CONTROL, KEPT);
        return "sheet";
    }
}
