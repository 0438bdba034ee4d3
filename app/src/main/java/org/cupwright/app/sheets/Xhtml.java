package org.cupwright.app.sheets;

/** Writes well-formed XHTML; text is escaped. */
final class Xhtml {
    private final StringBuilder out = new StringBuilder();

    Xhtml open(String tag) {
        out.append('<').append(tag).append('>');
        return this;
    }

    Xhtml open(String tag, String cssClass) {
        out.append('<').append(tag).append(" class=\"").append(cssClass).append("\">");
        return this;
    }

    Xhtml open(String tag, String cssClass, String style) {
        out.append('<').append(tag).append(" class=\"").append(cssClass);
        out.append("\" style=\"").append(style).append("\">");
        return this;
    }

    Xhtml close(String tag) {
        out.append("</").append(tag).append('>');
        return this;
    }

    Xhtml text(String text) {
        out.append(text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"));
        return this;
    }

    Xhtml element(String tag, String cssClass, String text) {
        return open(tag, cssClass).text(text).close(tag);
    }

    /** A box to be ticked, and what it stands for. */
    Xhtml box(String text) {
        return raw("<span class=\"box\"></span>").element("span", "boxed", text);
    }

    /** A line to write on. */
    Xhtml line(String cssClass) {
        return raw("<span class=\"line " + cssClass + "\"></span>");
    }

    /** Markup that is well formed already. */
    Xhtml raw(String markup) {
        out.append(markup);
        return this;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
