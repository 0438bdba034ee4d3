package org.cupwright.app.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Locale;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.desk.paper.PaperSize;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.Policy;

/** What all paper has in common: size, style, heading. */
final class Page {
    private final String course;
    private final LocalDate date;
    private final Policy policy;
    private final Texts texts;

    Page(String course, LocalDate date, Policy policy, Texts texts) {
        this.course = course;
        this.date = date;
        this.policy = policy;
        this.texts = texts;
    }

    Page(DaySheet day, Texts texts) {
        this(day.course(), day.date(), day.policy(), texts);
    }

    PaperSize paper() {
        return policy.get(PaperPolicy.PAPER);
    }

    /** The beginning of a document; the margin is that of every page. */
    Xhtml start(String kind, String margin) {
        Xhtml out = new Xhtml();
        out.raw("<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>")
                .text(course)
                .raw("</title><style>@page { size: " + millimetres(paper().widthMillimetres()) + " "
                        + millimetres(paper().heightMillimetres()) + "; margin: " + margin + "; }")
                .raw(style())
                .raw("</style></head>");
        return out.open("body", kind);
    }

    /** The speed that was judged for. */
    String speed(double feet) {
        return texts.say("sheet.greenSpeed", texts.number(feet, feet == Math.rint(feet) ? 0 : 1));
    }

    /** Whether the holes are where they were planned or where they were cut. */
    String state(DaySheet day) {
        String time = day.soFar().last().map(LocalTime::toString).orElse("");
        if (day.soFar().all()) {
            return texts.say("sheet.asCutAt", time);
        }
        return day.soFar().holes().isEmpty()
                ? texts.say("sheet.planned")
                : texts.say(
                        "sheet.partlyCut", time, String.join(", ", day.soFar().holes()));
    }

    /** Course and day. */
    void heading(Xhtml out) {
        out.open("div", "heading");
        out.element("span", "day", texts.day(date));
        out.element("span", "course", course);
        out.close("div");
    }

    String end(Xhtml out) {
        return out.close("body").close("html").toString();
    }

    static String millimetres(double length) {
        return String.format(Locale.ROOT, "%.2fmm", length);
    }

    private static String style() {
        try (InputStream style = Page.class.getResourceAsStream("paper.css")) {
            return new String(style.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
