package org.cupwright.formats.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.formats.FileBounds;
import org.cupwright.formats.Separator;
import org.cupwright.message.Problem;

/**
 * Which column of a table is what, and in which unit: as its first line says, and as a person says where it does not.
 */
public final class Layout {
    /**
     * A unit in the column's name: "tmax (°F)", "rain_mm"; the degree sign may have been lost on the way (another
     * encoding).
     */
    private static final Pattern WITH_UNIT =
            Pattern.compile("(.*?)[ _(\\[]+[°º\uFFFD]?([A-Za-z/%]{1,5}[2\u00b2]?)[)\\]]?");

    private static final Unit AS_IT_IS = new Unit("", 0, 1);

    private final Table table;
    private final List<Column<?>> declared;
    private final Map<String, Integer> places = new HashMap<>();
    private final Map<String, Unit> units = new HashMap<>();

    /**
     * How a cell is written.
     *
     * @param field the cell as it stands there, blanks about it included
     */
    public record Writing(Separator separator, Unit unit, String field) {
        /** A number in the program's unit. */
        Optional<Double> number(String text) {
            double value = separator.number(text);
            return Double.isNaN(value) ? Optional.empty() : Optional.of(unit.toOwn(value));
        }
    }

    private Layout(Table table, List<Column<?>> declared) {
        this.table = table;
        this.declared = declared;
    }

    /**
     * Finds columns by the names of the first line; of two that mean the same the first counts.
     *
     * @param said by {@link Column#name()}: what the table calls it, where it is none of the usual names
     */
    public static Layout of(Table table, List<Column<?>> declared, Map<String, String> said) {
        Layout layout = new Layout(table, declared);
        List<String> names = table.names();
        for (int place = 0; place < names.size(); place++) {
            for (Column<?> column : declared) {
                layout.take(column, names.get(place), place, Optional.ofNullable(said.get(column.name())));
            }
        }
        return layout;
    }

    /**
     * Finds columns whose names are taken otherwise.
     *
     * @param meant the {@link Column#name()} that a name in the first line means, if any
     */
    public static Layout of(Table table, List<Column<?>> declared, Function<String, Optional<String>> meant) {
        Layout layout = new Layout(table, declared);
        for (int i = 0; i < table.names().size(); i++) {
            int place = i;
            meant.apply(table.names().get(i)).ifPresent(name -> layout.places.putIfAbsent(name, place));
        }
        return layout;
    }

    private void take(Column<?> column, String name, int place, Optional<String> said) {
        if (name.length() > FileBounds.LONGEST_NAME) {
            return; // no column is called so; to look for a unit at its end would take long
        }
        Matcher matcher = WITH_UNIT.matcher(name);
        boolean withUnit = matcher.matches() && isUnit(unit(matcher));
        boolean meant = said.map(name::equalsIgnoreCase)
                .orElseGet(() -> column.isCalled(name) || (withUnit && column.isCalled(matcher.group(1))));
        if (meant && places.putIfAbsent(column.name(), place) == null) {
            Optional<Unit> own = withUnit ? column.unit(unit(matcher)) : Optional.empty();
            own.or(() -> column.units().stream().findFirst()).ifPresent(found -> units.put(column.name(), found));
        }
    }

    /** {@code W/m²} is written {@code W/m2} where it is typed. */
    private static String unit(Matcher name) {
        return name.group(2).replace('\u00b2', '2');
    }

    private boolean isUnit(String written) {
        return declared.stream()
                .flatMap(column -> column.units().stream())
                .anyMatch(unit -> unit.name().equals(written));
    }

    /** The columns that the table has. */
    public List<Column<?>> found() {
        return declared.stream().filter(this::has).toList();
    }

    /** The names of the table's columns that belong to nothing, or to what an earlier one gives. */
    public List<String> unused() {
        List<String> names = new ArrayList<>();
        for (int place = 0; place < table.names().size(); place++) {
            if (!places.containsValue(place)) {
                names.add(table.names().get(place));
            }
        }
        return names;
    }

    public boolean has(Column<?> column) {
        return places.containsKey(column.name());
    }

    /** The names of columns that must be there and are not. */
    public List<String> missing() {
        return declared.stream()
                .filter(column -> column.isNeeded() && !has(column))
                .map(Column::name)
                .toList();
    }

    /**
     * The same as the table's own failure.
     *
     * @throws org.cupwright.finding.UnreadableFile if one that must be there is not
     */
    public Layout complete() {
        if (!missing().isEmpty()) {
            throw table.without(missing());
        }
        return this;
    }

    /** The unit of each column that has one, by {@link Column#name()}. */
    public Map<String, String> unitNames() {
        Map<String, String> names = new LinkedHashMap<>();
        for (Column<?> column : declared) {
            Optional.ofNullable(units.get(column.name())).ifPresent(unit -> names.put(column.name(), unit.name()));
        }
        return names;
    }

    /** Takes a column to be in another unit than its name says. */
    public void set(Column<?> column, Unit unit) {
        units.put(column.name(), unit);
    }

    /** What looks wrong of the columns, in their order, by the lines that read. */
    public List<Question> questions(Reading<?> reading) {
        List<Row> rows = reading.lines().stream().map(this::row).toList();
        return found().stream()
                .flatMap(column -> question(column, rows).stream())
                .toList();
    }

    private static <T> Optional<Question> question(Column<T> column, List<Row> rows) {
        return column.question()
                .apply(rows.stream().flatMap(row -> row.read(column).stream()).toList());
    }

    /** A line with the cells of some columns as something makes them, which is given them without blanks about them. */
    public Line with(Line line, List<? extends Column<?>> columns, UnaryOperator<String> made) {
        List<String> fields = new ArrayList<>(line.fields());
        for (Column<?> column : columns) {
            int place = places.getOrDefault(column.name(), fields.size());
            if (place < fields.size()) {
                fields.set(place, made.apply(line.field(place)));
            }
        }
        return new Line(line.number(), line.text(), fields);
    }

    /** A line of the table by its columns. */
    public Row row(Line line) {
        return new Row(line);
    }

    /** A line by the table's columns. */
    public final class Row {
        private final Line line;

        private Row(Line line) {
            this.line = line;
        }

        /**
         * What stands in a column without the blanks about it; empty where nothing does, or there is no such column.
         */
        public String text(Column<?> column) {
            return line.field(places.getOrDefault(column.name(), -1));
        }

        /**
         * The value in a column; empty where nothing stands in it.
         *
         * @throws Problem where what stands there is none, in the column's own words
         */
        public <T> Optional<T> find(Column<T> column) {
            String text = text(column);
            if (text.isEmpty() || column.nothing().contains(text.toLowerCase(Locale.ROOT))) {
                return Optional.empty();
            }
            Unit unit = units.getOrDefault(column.name(), AS_IT_IS);
            return Optional.of(column.type()
                    .read(
                            text,
                            new Writing(table.separator(), unit, line.fields().get(places.get(column.name())))));
        }

        /** The same of a number. */
        public OptionalDouble number(Column<Double> column) {
            return find(column).stream().mapToDouble(value -> value).findFirst();
        }

        /** The same, empty also where it is none. */
        private <T> Optional<T> read(Column<T> column) {
            try {
                return find(column);
            } catch (Problem none) {
                return Optional.empty();
            }
        }
    }
}
