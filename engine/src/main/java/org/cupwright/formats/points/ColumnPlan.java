package org.cupwright.formats.points;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.Excerpt;
import org.cupwright.formats.Separator;
import org.cupwright.message.Message;

/**
 * Which columns of a points file hold x, y, z, the class, and the strip or the time of a point.
 *
 * @param separator between the fields
 * @param columns column of each role, the first being 0; only x, y and z are needed
 * @param firstLineIsHeader whether the first line names columns and holds no point
 */
record ColumnPlan(Separator separator, Map<ColumnRole, Integer> columns, boolean firstLineIsHeader) {
    private static final int POINT_NUMBER_LAYOUT_FIELDS = 5;

    /**
     * Finds the plan from the file's first line and what the person says.
     *
     * @param firstLine a header or a point
     * @param lineNumber its number
     * @param said roles in the order of the columns ({@code x,y,z,class}, {@code p,n,e,z,d}), or the header's own names
     *     of x, y, z and, if wanted, class, strip and time; empty: from the header, else three columns x, y, z or five
     *     and more: point number, northing, easting, height, description
     * @throws UnreadableFile if the columns cannot be told
     */
    static ColumnPlan of(String firstLine, long lineNumber, Optional<String> said) {
        Separator separator = Separator.of(firstLine);
        List<String> fields = separator.split(firstLine);
        Map<ColumnRole, Integer> columns =
                said.map(text -> said(text, fields)).orElseGet(() -> guessed(separator, fields));
        boolean complete = columns.keySet().containsAll(List.of(ColumnRole.EAST, ColumnRole.NORTH, ColumnRole.HEIGHT));
        if (!complete) {
            Message.Argument line = new Message.Name(Excerpt.of(firstLine));
            throw Finding.of(FindingKind.COLUMNS_UNKNOWN, Where.line(lineNumber), line)
                    .trying(fields.size())
                    .failure();
        }
        boolean header = columns.values().stream()
                .anyMatch(column -> column < fields.size() && isWord(separator, fields.get(column)));
        return new ColumnPlan(separator, columns, header);
    }

    private static boolean isWord(Separator separator, String field) {
        boolean notANumberAtAll = field.equalsIgnoreCase("nan") || field.isEmpty();
        return !notANumberAtAll && Double.isNaN(separator.number(field)) && field.matches(".*\\p{L}.*");
    }

    private static Map<ColumnRole, Integer> said(String text, List<String> header) {
        List<String> names = Arrays.stream(text.split("[,;\\s]+")).toList();
        Map<ColumnRole, Integer> byRole = byRole(names);
        if (byRole.keySet().containsAll(List.of(ColumnRole.EAST, ColumnRole.NORTH, ColumnRole.HEIGHT))) {
            return byRole;
        }
        List<String> lower =
                header.stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
        Map<ColumnRole, Integer> byName = new EnumMap<>(ColumnRole.class);
        Iterator<String> inOrder = names.iterator();
        for (ColumnRole role : ColumnRole.values()) {
            int column = inOrder.hasNext() ? lower.indexOf(inOrder.next().toLowerCase(Locale.ROOT)) : -1;
            if (column >= 0) {
                byName.put(role, column);
            }
        }
        return byName;
    }

    private static Map<ColumnRole, Integer> guessed(Separator separator, List<String> fields) {
        if (fields.stream().limit(4).anyMatch(field -> isWord(separator, field))) {
            return byRole(fields);
        }
        if (fields.size() == 3) {
            return byRole(List.of("x", "y", "z"));
        }
        boolean numberFirst = fields.get(0).matches("[0-9]{1,9}");
        if (fields.size() >= POINT_NUMBER_LAYOUT_FIELDS && numberFirst) {
            return byRole(List.of("p", "n", "e", "z", "d"));
        }
        return Map.of();
    }

    private static Map<ColumnRole, Integer> byRole(List<String> names) {
        Map<ColumnRole, Integer> columns = new EnumMap<>(ColumnRole.class);
        for (int i = 0; i < names.size(); i++) {
            int column = i;
            ColumnRole.find(names.get(i)).ifPresent(role -> columns.putIfAbsent(role, column));
        }
        return columns;
    }

    /** Whether there is a column for the strips of points, or for their times. */
    boolean saysStrips() {
        return columns.containsKey(ColumnRole.STRIP) || columns.containsKey(ColumnRole.TIME);
    }

    /** What a line says of a role; empty where it says nothing. */
    String text(ColumnRole role, List<String> fields) {
        Integer column = columns.get(role);
        return column == null || column >= fields.size() ? "" : fields.get(column);
    }

    /** The number of a role in a line's fields; NaN where there is none. */
    double number(ColumnRole role, List<String> fields) {
        Integer column = columns.get(role);
        return column == null || column >= fields.size() ? Double.NaN : separator.number(fields.get(column));
    }
}
