package org.cupwright.app.desk.weather;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cupwright.formats.Excerpt;
import org.cupwright.formats.table.Column;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.Table;
import org.cupwright.formats.table.Unit;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Which column of a table of weather is what, and in which unit. */
final class WeatherFormat {
    private WeatherFormat() {}

    /**
     * What a person says of a table.
     *
     * @param columns by the column's name: what the table calls it
     * @param units by the column's name: its unit
     */
    record Said(Map<String, String> columns, Map<String, String> units) {}

    /** @throws Problem when a column that is needed is not there, or what was said fits nothing */
    static Layout of(Table table, Said said) {
        Layout layout = Layout.of(table, WeatherColumn.ALL, said.columns());
        said.columns().forEach((typed, name) -> require(layout.has(column(typed)), name, table));
        said.units().forEach((typed, name) -> set(layout, column(typed), typed, name));
        List<String> missing = layout.missing();
        require(missing.isEmpty(), String.join(", ", missing), table);
        return layout;
    }

    private static void require(boolean there, String name, Table table) {
        if (!there) {
            throw problem("columnMissing", name, Excerpt.of(table.header().text()));
        }
    }

    private static void set(Layout layout, Column<?> column, String typed, String name) {
        if (!layout.has(column) || column.units().isEmpty()) {
            throw problem("unitOfNothing", typed, name);
        }
        String choices = column.units().stream().map(Unit::name).collect(Collectors.joining(", "));
        layout.set(column, column.unit(name).orElseThrow(() -> problem("unit", choices, name)));
    }

    private static Column<?> column(String typed) {
        return WeatherColumn.find(typed).orElseThrow(() -> problem("column", WeatherColumn.names(), typed));
    }

    private static Problem problem(String kind, String named, String value) {
        return Problem.of(
                Message.of("problem.weather." + kind, new Name(named)),
                Message.of("where.weather"),
                value,
                Message.of("try.weather." + kind, new Name(named)));
    }
}
