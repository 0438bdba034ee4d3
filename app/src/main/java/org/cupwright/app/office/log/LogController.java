package org.cupwright.app.office.log;

import org.cupwright.app.desk.entry.CorrectFact;
import org.cupwright.app.desk.entry.SeeToOdd;
import org.cupwright.app.visit.Visit;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The page of the logbook. */
@Controller
public final class LogController {
    @GetMapping("/log")
    ModelAndView day(
            Visit visit,
            @RequestParam(name = "do", defaultValue = "") String chosen,
            @RequestParam(defaultValue = "") String correct,
            @RequestParam(defaultValue = "") String withdraw) {
        LogPage page = new LogPage(visit);
        if (!withdraw.isBlank()) {
            return page.withdrawing(withdraw);
        }
        if (correct.isBlank()) {
            return page.adding(Chosen.of(chosen));
        }
        CorrectFact.Standing standing = new CorrectFact(visit.session()).standing(correct);
        return page.with(course -> new EntryFormView(visit, course).standing(standing, correct), "");
    }

    @GetMapping("/log/photo/{id}")
    ResponseEntity<byte[]> photo(Visit visit, @PathVariable String id) {
        byte[] bytes = new SeeToOdd(visit.session()).photo(id).bytes();
        boolean jpeg = bytes[0] == (byte) 0xff; // it is one of the two, or it would not be kept
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=" + (jpeg ? "photo.jpg" : "photo.png"))
                .contentType(jpeg ? MediaType.IMAGE_JPEG : MediaType.IMAGE_PNG)
                .body(bytes);
    }
}
