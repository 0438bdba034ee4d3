package org.cupwright.app.maps;

import java.util.Locale;
import org.locationtech.jts.geom.Envelope;

/**
 * Writes an SVG document element by element; text is escaped, numbers have three decimals and a point.
 *
 * <p>Shapes stand in groups, which carry a class, by which pages style them, and the attributes of their paint.
 */
final class Svg {
    private final StringBuilder out = new StringBuilder();

    Svg(int width, int height, String title) {
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "\" height=\"" + height
                + "\" viewBox=\"0 0 " + width + " " + height + "\"");
        out.append(" role=\"img\" font-family=\"'Open Sans', sans-serif\"><title>");
        out.append(escaped(title)).append("</title>");
    }

    Svg group(String name, String attributes) {
        out.append("<g class=\"").append(name).append("\" ").append(attributes).append('>');
        return this;
    }

    Svg end() {
        out.append("</g>");
        return this;
    }

    Svg path(Object... data) {
        out.append("<path d=\"").append(data(data)).append("\"/>");
        return this;
    }

    Svg circle(double x, double y, double radius) {
        return shape("circle", "cx", x, "cy", y, "r", radius);
    }

    Svg box(Envelope box) {
        return shape(
                "rect", "x", box.getMinX(), "y", box.getMinY(), "width", box.getWidth(), "height", box.getHeight());
    }

    private Svg shape(String tag, Object... namesAndValues) {
        out.append('<').append(tag);
        for (int i = 0; i < namesAndValues.length; i += 2) {
            out.append(' ').append(namesAndValues[i]).append("=\"");
            out.append(number((double) namesAndValues[i + 1])).append('"');
        }
        out.append("/>");
        return this;
    }

    /** A text that begins at a point, or has it under its middle. */
    Svg text(OpenSans letters, double size, boolean middle, double x, double y, String text) {
        out.append("<text x=\"").append(number(x)).append("\" y=\"").append(number(y));
        out.append("\" font-size=\"").append(number(size)).append('"');
        out.append(letters == OpenSans.SEMIBOLD ? " font-weight=\"600\"" : "");
        out.append(middle ? " text-anchor=\"middle\"" : "");
        out.append('>').append(escaped(text)).append("</text>");
        return this;
    }

    String done() {
        return out.append("</svg>").toString();
    }

    /** Path data or another list: texts as they are, numbers with a blank between two of them. */
    static String data(Object... parts) {
        StringBuilder data = new StringBuilder();
        boolean afterNumber = false;
        for (Object part : parts) {
            boolean number = part instanceof Double;
            data.append(number && afterNumber ? " " : "").append(number ? number((double) part) : part);
            afterNumber = number;
        }
        return data.toString();
    }

    private static String number(double value) {
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
