package org.cupwright.formats.calendar;

import java.nio.charset.StandardCharsets;

/** Lines of a calendar, escaped and folded (RFC 5545, 3.1 and 3.3.11). */
final class ContentLines {
    /** Of a line, its end not counted (3.1). */
    private static final int MOST_OCTETS = 75;

    private static final String END = "\r\n";

    private final StringBuilder out = new StringBuilder();

    /** A line whose value needs no escaping. */
    void add(String name, String value) {
        fold(name + ":" + value);
    }

    /** A line with a text of people's. */
    void addText(String name, String text) {
        add(name, escaped(text));
    }

    String text() {
        return out.toString();
    }

    /** Signs that part values and lines are written so that they do not; other control characters may not stand. */
    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        text.replace(END, "\n").codePoints().forEach(sign -> {
            if (sign == '\n') {
                escaped.append("\\n");
            } else if (sign == '\\' || sign == ';' || sign == ',') {
                escaped.append('\\').appendCodePoint(sign);
            } else {
                escaped.appendCodePoint(isWritten(sign) ? sign : ' ');
            }
        });
        return escaped.toString();
    }

    /** Half of a pair has no octets of its own. */
    private static boolean isWritten(int sign) {
        return !Character.isISOControl(sign) && Character.getType(sign) != Character.SURROGATE;
    }

    /** Goes on in a new line, begun with a blank, before it is too long; no sign is torn apart. */
    private void fold(String line) {
        int used = 0;
        for (int at = 0; at < line.length(); ) {
            String sign = Character.toString(line.codePointAt(at));
            int octets = sign.getBytes(StandardCharsets.UTF_8).length;
            if (used + octets > MOST_OCTETS) {
                out.append(END).append(' ');
                used = 1;
            }
            out.append(sign);
            used += octets;
            at += sign.length();
        }
        out.append(END);
    }
}
