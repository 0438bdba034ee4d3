package org.cupwright.app.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.cupwright.app.desk.PaperPolicy;
import org.cupwright.app.texts.Texts;

/** What all paper has in common: size, style, heading, foot. */
final class Page {
    private final DaySheet day;
    private final Texts texts;

    Page(DaySheet day, Texts texts) {
        this.day = day;
        this.texts = texts;
    }

    Xhtml start(String kind) {
        Xhtml out = new Xhtml();
        out.raw("<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>")
                .text(day.course())
                .raw("</title><style>@page { size: "
                        + day.policy().get(PaperPolicy.PAPER).css() + "; }")
                .raw(style())
                .raw("</style></head>");
        return out.open("body", kind);
    }

    void heading(String title, Xhtml out) {
        out.open("div", "heading");
        out.element("span", "course", day.course());
        out.element("span", "day", texts.day(day.date()));
        out.close("div");
        out.element("h1", "title", title);
    }

    String end(Xhtml out) {
        return out.close("body").close("html").toString();
    }

    private static String style() {
        try (InputStream style = Page.class.getResourceAsStream("paper.css")) {
            return new String(style.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
