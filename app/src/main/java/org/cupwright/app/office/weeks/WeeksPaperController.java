package org.cupwright.app.office.weeks;

import java.nio.charset.StandardCharsets;
import org.cupwright.app.answers.files.PlanCalendar;
import org.cupwright.app.answers.files.PlanTable;
import org.cupwright.app.desk.paper.PrepareWeeks;
import org.cupwright.app.desk.paper.WeeksPaper;
import org.cupwright.app.sheets.WeeksSheet;
import org.cupwright.app.visit.Visit;
import org.cupwright.formats.table.CsvText;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** Weeks of plans for the wall, for calendars and for tables. */
@Controller
public final class WeeksPaperController {
    /** As what they are taken along. */
    enum Kind {
        WALL("weeks-%s.pdf", "application/pdf"),
        CALENDAR("hole-locations-%s.ics", "text/calendar;charset=UTF-8"),
        TABLE("hole-locations-%s.csv", "text/csv;charset=UTF-8");

        private final String file;
        private final String type;

        Kind(String file, String type) {
            this.file = file;
            this.type = type;
        }
    }

    @GetMapping("/weeks/paper/{kind}")
    ResponseEntity<byte[]> paper(Visit visit, @PathVariable Kind kind, @RequestParam int days) {
        WeeksPaper paper = new PrepareWeeks(visit.session()).of(visit.question(), days);
        byte[] bytes = switch (kind) {
            case WALL -> new WeeksSheet(visit.texts()).pdf(paper);
            case CALENDAR -> utf8(new PlanCalendar(visit.texts(), visit.version()).of(paper));
            case TABLE -> utf8(CsvText.write(new PlanTable(visit.texts()).of(paper)));
        };
        ContentDisposition.Builder how =
                kind == Kind.WALL ? ContentDisposition.inline() : ContentDisposition.attachment();
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(kind.type))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        how.filename(kind.file.formatted(visit.date())).build().toString())
                .body(bytes);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
