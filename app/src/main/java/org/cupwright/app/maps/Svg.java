package org.cupwright.app.maps;

import java.util.Locale;

/** Writes an SVG document element by element; text is escaped, numbers have three decimals and a point. */
final class Svg {
    private final StringBuilder out = new StringBuilder();

    Svg(int width, int height, String title) {
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(width)
                .append("\" height=\"")
                .append(height)
                .append("\" viewBox=\"0 0 ")
                .append(width)
                .append(' ')
                .append(height)
                .append("\" role=\"img\" font-family=\"'Open Sans', sans-serif\"><title>")
                .append(escaped(title))
                .append("</title>");
    }

    /** Opens a group; its elements share a class, by which pages style them, and attributes. */
    Svg group(String name, String attributes) {
        out.append("<g class=\"").append(name).append("\" ").append(attributes).append('>');
        return this;
    }

    Svg end() {
        out.append("</g>");
        return this;
    }

    Svg path(CharSequence data) {
        out.append("<path d=\"").append(data).append("\"/>");
        return this;
    }

    Svg circle(double x, double y, double radius) {
        out.append("<circle cx=\"").append(number(x)).append("\" cy=\"").append(number(y));
        out.append("\" r=\"").append(number(radius)).append("\"/>");
        return this;
    }

    Svg box(double left, double top, double width, double height) {
        out.append("<rect x=\"").append(number(left)).append("\" y=\"").append(number(top));
        out.append("\" width=\"").append(number(width)).append("\" height=\"").append(number(height));
        out.append("\"/>");
        return this;
    }

    Svg text(Lettering lettering, double x, double y, String text) {
        out.append("<text x=\"").append(number(x)).append("\" y=\"").append(number(y));
        out.append("\" font-size=\"").append(number(lettering.size())).append('"');
        if (lettering.letters() == OpenSans.SEMIBOLD) {
            out.append(" font-weight=\"600\"");
        }
        if (lettering.anchor() != Lettering.Anchor.START) {
            out.append(" text-anchor=\"")
                    .append(lettering.anchor().name().toLowerCase(Locale.ROOT))
                    .append('"');
        }
        out.append('>').append(escaped(text)).append("</text>");
        return this;
    }

    String done() {
        return out.append("</svg>").toString();
    }

    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value);
        return text.equals("-0.000") ? "0.000" : text;
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
