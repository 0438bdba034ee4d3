package org.cupwright.app.desk.weather;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.cupwright.app.desk.table.TableFile;
import org.cupwright.app.desk.weather.WeatherColumn.Unit;
import org.cupwright.formats.Excerpt;
import org.cupwright.formats.Separator;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Which column of a table is what, and in which unit: as its first line says, and as a person says where it does not. */
final class WeatherFormat {
    /** A unit in the column's name: "tmax (°F)", "rain_mm"; the degree sign may have been lost on the way (another encoding). */
    private static final Pattern WITH_UNIT =
            Pattern.compile("(.*?)[ _(\\[]+[°º\uFFFD]?(C|F|mm|in|m/s|km/h|mph|%|min|h)[)\\]]?");

    private static final List<WeatherColumn> NEEDED =
            List.of(WeatherColumn.DATE, WeatherColumn.TMAX, WeatherColumn.TMIN);

    private final Separator separator;
    private final Map<WeatherColumn, Integer> places = new EnumMap<>(WeatherColumn.class);
    private final Map<WeatherColumn, Unit> units = new EnumMap<>(WeatherColumn.class);

    /**
     * What a person says of a table.
     *
     * @param columns by {@link WeatherColumn#typed()}: what the table calls it
     * @param units by {@link WeatherColumn#typed()}: its unit
     */
    record Said(Map<String, String> columns, Map<String, String> units) {}

    private WeatherFormat(Separator separator) {
        this.separator = separator;
    }

    /** @throws Problem when a column that is needed is not there, or what was said fits nothing */
    static WeatherFormat of(TableFile table, Said said) {
        WeatherFormat format = new WeatherFormat(table.separator());
        String header = table.header().text();
        List<String> names = table.names();
        for (int place = 0; place < names.size(); place++) {
            format.take(names.get(place), place, said);
        }
        said.columns().forEach((typed, name) -> format.requireNamed(typed, name, header));
        said.units().forEach(format::setUnit);
        List<String> missing = new ArrayList<>();
        NEEDED.stream()
                .filter(column -> !format.places.containsKey(column))
                .forEach(column -> missing.add(column.typed()));
        if (!missing.isEmpty()) {
            throw problem("columnMissing", String.join(", ", missing), Excerpt.of(header));
        }
        return format;
    }

    private void take(String name, int place, Said said) {
        Matcher withUnit = WITH_UNIT.matcher(name);
        String bare = withUnit.matches() ? withUnit.group(1) : name;
        for (WeatherColumn column : WeatherColumn.values()) {
            String saidName = said.columns().get(column.typed());
            boolean meant =
                    saidName == null ? column.isCalled(name) || column.isCalled(bare) : saidName.equalsIgnoreCase(name);
            if (meant
                    && places.putIfAbsent(column, place) == null
                    && !column.units().isEmpty()) {
                Optional<Unit> own = withUnit.matches() ? column.unit(withUnit.group(2)) : Optional.empty();
                units.put(column, own.orElse(column.units().get(0)));
            }
        }
    }

    private void requireNamed(String typed, String name, String header) {
        WeatherColumn column = column(typed);
        if (!places.containsKey(column)) {
            throw problem("columnMissing", name, Excerpt.of(header));
        }
    }

    private void setUnit(String typed, String name) {
        WeatherColumn column = column(typed);
        if (!units.containsKey(column)) {
            throw problem("unitOfNothing", typed, name);
        }
        String choices = column.units().stream().map(Unit::name).collect(Collectors.joining(", "));
        units.put(column, column.unit(name).orElseThrow(() -> problem("unit", choices, name)));
    }

    private static WeatherColumn column(String typed) {
        String all =
                Arrays.stream(WeatherColumn.values()).map(WeatherColumn::typed).collect(Collectors.joining(", "));
        return WeatherColumn.find(typed).orElseThrow(() -> problem("column", all, typed));
    }

    private static Problem problem(String kind, String named, String value) {
        return Problem.of(
                Message.of("problem.weather." + kind, new Name(named)),
                Message.of("where.weather"),
                value,
                Message.of("try.weather." + kind, new Name(named)));
    }

    Separator separator() {
        return separator;
    }

    /** The fields of a line by column, those that say nothing left out. */
    Map<WeatherColumn, String> fields(List<String> all) {
        Map<WeatherColumn, String> fields = new HashMap<>();
        places.forEach((column, place) -> {
            if (place < all.size() && !WeatherLine.isMissing(all.get(place).strip())) {
                fields.put(column, all.get(place).strip());
            }
        });
        return fields;
    }

    /** The unit of each column that has one, by {@link WeatherColumn#typed()}. */
    Map<String, String> unitNames() {
        Map<String, String> names = new LinkedHashMap<>();
        units.forEach((column, unit) -> names.put(column.typed(), unit.name()));
        return names;
    }

    Unit unit(WeatherColumn column) {
        return units.get(column);
    }
}
