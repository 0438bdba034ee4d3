package org.cupwright.formats.table;

/**
 * Texts in the cells of a table. A text that a spreadsheet would take for a formula, and one that would lose blanks at
 * its ends or be taken for nothing, begins with an apostrophe, which is taken off again when the table is read.
 */
public final class CellText {
    /** What a formula, or what some programs take for one, begins with (OWASP, CSV injection). */
    private static final String FORMULA = "=+-@";

    private CellText() {}

    public static String guarded(String text) {
        return isTaken(text) ? "'" + text : text;
    }

    public static String plain(String cell) {
        boolean guarded = cell.startsWith("'") && isTaken(cell.substring(1));
        return guarded ? cell.substring(1) : cell.strip();
    }

    private static boolean isTaken(String text) {
        int start = 0;
        while (start < text.length() && text.charAt(start) == '\'') {
            start++;
        }
        return start == text.length() || FORMULA.indexOf(text.charAt(start)) >= 0 || !isStripped(text, start);
    }

    private static boolean isStripped(String text, int start) {
        return !Character.isWhitespace(text.charAt(start)) && !Character.isWhitespace(text.charAt(text.length() - 1));
    }
}
