package org.cupwright.formats;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What stands between the fields of a line, found from a line itself. */
public enum Separator {
    SEMICOLON(';'),
    TAB('\t'),
    COMMA(','),
    /** Any run of blanks. */
    BLANKS(' ');

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,3})?");

    private final char character;

    Separator(char character) {
        this.character = character;
    }

    public char character() {
        return character;
    }

    /**
     * The separator a line uses. Semicolons and tabs go first; a comma separates unless it can only be a decimal comma:
     * blanks between numbers that hold one comma at most, in the middle.
     */
    public static Separator of(String line) {
        if (line.indexOf(';') >= 0) {
            return SEMICOLON;
        }
        if (line.strip().indexOf('\t') >= 0) {
            return TAB;
        }
        if (line.indexOf(',') < 0) {
            return BLANKS;
        }
        List<String> blocks = BLANKS.split(line);
        boolean decimals = blocks.size() >= 3 && isDecimal(blocks.get(0)) && isDecimal(blocks.get(1));
        return decimals ? BLANKS : COMMA;
    }

    private static boolean isDecimal(String block) {
        return block.matches("[+-]?[0-9]+(,[0-9]+)?");
    }

    /** The fields of a line without quotation marks; a quoted field may hold the separator. */
    public List<String> split(String line) {
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (char next : line.strip().toCharArray()) {
            if (next == '"') {
                quoted = !quoted;
            } else if (!quoted && separates(next)) {
                endField(fields, field);
            } else {
                field.append(next);
            }
        }
        fields.add(field.toString().strip());
        return fields;
    }

    private boolean separates(char next) {
        return this == BLANKS ? Character.isWhitespace(next) : next == character;
    }

    private void endField(List<String> fields, StringBuilder field) {
        if (this != BLANKS || !field.isEmpty()) {
            fields.add(field.toString().strip());
        }
        field.setLength(0);
    }

    /**
     * A number of a field, NaN when it is none: a decimal comma is read as such wherever the comma is not the
     * separator.
     */
    public double number(String field) {
        boolean decimalComma = this != COMMA && field.indexOf('.') < 0;
        String text = decimalComma ? field.replace(',', '.') : field;
        if (!NUMBER.matcher(text).matches()) {
            return Double.NaN;
        }
        double value = Double.parseDouble(text);
        return Double.isFinite(value) ? value : Double.NaN;
    }

    /** The same as a person types it, who writes no powers of ten as programs do. */
    public double plainNumber(String field) {
        return field.matches("[^eE]*") ? number(field) : Double.NaN;
    }
}
