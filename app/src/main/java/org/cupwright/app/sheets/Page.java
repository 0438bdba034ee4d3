package org.cupwright.app.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.util.Locale;
import org.cupwright.app.desk.PaperPolicy;
import org.cupwright.app.desk.PaperSize;
import org.cupwright.app.texts.Texts;

/** What all paper has in common: size, style, heading. */
final class Page {
    private final DaySheet day;
    private final Texts texts;

    Page(DaySheet day, Texts texts) {
        this.day = day;
        this.texts = texts;
    }

    PaperSize paper() {
        return day.policy().get(PaperPolicy.PAPER);
    }

    /** The beginning of a document; the margin is that of every page. */
    Xhtml start(String kind, String margin) {
        Xhtml out = new Xhtml();
        out.raw("<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>")
                .text(day.course())
                .raw("</title><style>@page { size: " + millimetres(paper().widthMillimetres()) + " "
                        + millimetres(paper().heightMillimetres()) + "; margin: " + margin + "; }")
                .raw(style())
                .raw("</style></head>");
        return out.open("body", kind);
    }

    /** The speed that was judged for. */
    String speed() {
        double feet = day.speedFeet();
        return texts.say("sheet.greenSpeed", texts.number(feet, feet == Math.rint(feet) ? 0 : 1));
    }

    /** Whether the holes are where they were planned or where they were cut. */
    String state() {
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
        out.element("span", "day", texts.day(day.date()));
        out.element("span", "course", day.course());
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
