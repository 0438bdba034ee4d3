package org.cupwright.app.office.today;

import java.time.LocalDate;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.paper.PrepareSheets;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.sheets.ChangersCard;
import org.cupwright.app.sheets.DaySheet;
import org.cupwright.app.sheets.HoleLocationSheet;
import org.cupwright.app.visit.Visit;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The papers of a day. */
@Controller
public final class PaperController {
    @GetMapping("/paper/{kind}")
    ResponseEntity<byte[]> paper(Visit visit, @PathVariable PaperKind kind) {
        DayPaper paper = new PrepareSheets(visit.session()).of(visit.question(), Progress.unheard());
        DaySheet day = DaySheet.of(paper, visit.texts());
        byte[] pdf = switch (kind) {
            case CARD -> new ChangersCard(visit.texts()).pdf(day);
            case SHEET -> new HoleLocationSheet(visit.texts()).pdf(day);
        };
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(HttpHeaders.CONTENT_DISPOSITION, named(kind, visit.date()))
                .body(pdf);
    }

    /** Shown in the browser, and saved under its name with the day. */
    private static String named(PaperKind kind, LocalDate date) {
        return ContentDisposition.inline()
                .filename(kind.file() + "-" + date + ".pdf")
                .build()
                .toString();
    }
}
