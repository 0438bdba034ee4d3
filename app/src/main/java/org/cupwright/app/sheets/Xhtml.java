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
