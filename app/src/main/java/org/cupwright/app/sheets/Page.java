package org.cupwright.app.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.desk.paper.PaperSize;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.Policy;

/**
 * Paper that is being written, as well-formed XHTML: size, style and heading are those of all paper; text is escaped.
 */
final class Page {
    private final StringBuilder out = new StringBuilder();
    private final String course;
    private final LocalDate date;
    private final PaperSize paper;
    private final Texts texts;

    /**
     * Begins a document.
     *
     * @param kind the style sheet's class of the whole
     * @param margin of every page
     */
    Page(String kind, String margin, String course, LocalDate date, Policy policy, Texts texts) {
        this(kind, margin, course, date, policy, texts, false);
    }

    /** The same; the paper may lie on its longer side. */
    Page(String kind, String margin, String course, LocalDate date, Policy policy, Texts texts, boolean lying) {
        this.course = course;
        this.date = date;
        this.paper = policy.get(PaperPolicy.PAPER);
        this.texts = texts;
        String upright = millimetres(paper.widthMillimetres());
        String along = millimetres(paper.heightMillimetres());
        raw("<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>").text(course);
        raw("</title><style>@page { size: " + (lying ? along + " " + upright : upright + " " + along));
        raw("; margin: " + margin + "; }" + style());
        raw("</style></head>").open("body", kind);
    }

    private static String style() {
        try (InputStream style = Page.class.getResourceAsStream("paper.css")) {
            return new String(style.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    PaperSize paper() {
        return paper;
    }

    /** Course and day. */
    Page heading() {
        return heading(Optional.empty());
    }

    /** Course, a part of it, and day. */
    Page heading(Optional<String> part) {
        open("div", "heading").element("span", "day", texts.day(date));
        return element("span", "course", part.map(name -> course + " · " + name).orElse(course))
                .close("div");
    }

    /** Opens an element with up to two attributes: its class in the style sheet, and a style of its own. */
    Page open(String tag, String... classAndStyle) {
        raw("<" + tag);
        for (int i = 0; i < classAndStyle.length; i++) {
            raw((i == 0 ? " class=\"" : " style=\"") + classAndStyle[i] + "\"");
        }
        return raw(">");
    }

    Page close(String tag) {
        return raw("</" + tag + ">");
    }

    Page text(String text) {
        return raw(text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"));
    }

    Page element(String tag, String cssClass, String text) {
        return open(tag, cssClass).text(text).close(tag);
    }

    /** An element with the words of a key. */
    Page say(String tag, String cssClass, String key, Object... plain) {
        return element(tag, cssClass, texts.say(key, plain));
    }

    /** A box to be ticked, and what it stands for. */
    Page box(String text) {
        return element("span", "box", "").element("span", "boxed", text);
    }

    /** A line to write on. */
    Page line(String length) {
        return element("span", "line " + length, "");
    }

    /** Markup that is well formed already. */
    Page raw(String markup) {
        out.append(markup);
        return this;
    }

    /** The document, ended. */
    String done() {
        return close("body").close("html").out.toString();
    }

    static String millimetres(double length) {
        return String.format(Locale.ROOT, "%.2fmm", length);
    }
}
