package org.cupwright.app.desk.entry.table;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.formats.table.Column;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.Table;

/** The columns of a table of entries of one kind. */
record EntryColumns(EntryForm form, List<PartColumns> parts) {
    static final Column<UUID> ID = Column.of("id", (text, writing) -> {
        if (!text.matches("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}")) {
            throw TableEntry.not("id", text);
        }
        return UUID.fromString(text);
    });
    static final Column<LocalDate> DATE = Column.day("date");
    static final Column<String> TIME = Column.text("time");
    static final Column<String> HOLE = Column.text("hole");
    static final Column<String> PERSON = Column.text("person");
    static final Column<String> RECORDED = Column.text("recorded");

    /** What an entry says, in words, for those who read the table. */
    private static final Column<String> WORDS = Column.text("words");

    static final Column<String> ON = Column.text("on");
    static final Column<String> SIDE = Column.text("side");
    static final Column<Double> EAST = PartColumns.number("east");
    static final Column<Double> NORTH = PartColumns.number("north");
    static final Column<Double> RADIUS = PartColumns.number("radius");

    static EntryColumns of(EntryForm form) {
        return new EntryColumns(form, form.parts().stream().map(PartColumns::of).toList());
    }

    /** The first line of the table of the kind. */
    List<String> header() {
        Stream<Column<?>> written = parts.stream().flatMap(part -> part.written().stream());
        return Stream.of(Stream.of(ID, TIME, HOLE, PERSON), written, Stream.of(RECORDED))
                .flatMap(columns -> columns)
                .map(Column::name)
                .toList();
    }

    /** Where a table has them; their names are taken as people type them, a beginning that fits one only will do. */
    Layout in(Table table) {
        List<Column<?>> declared = new ArrayList<>(List.of(ID, DATE, TIME, HOLE, PERSON, RECORDED, WORDS));
        if (form.place().isPresent()) {
            declared.addAll(List.of(ON, SIDE, EAST, NORTH, RADIUS));
        }
        parts.forEach(part -> part.all().forEach(declared::add));
        List<String> names = declared.stream().map(Column::name).toList();
        return Layout.of(table, declared, given -> meant(given, names));
    }

    private static Optional<String> meant(String given, List<String> names) {
        List<String> fitting = EntryForm.fitting(given.replace(" ", "").toLowerCase(Locale.ROOT), names);
        return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
    }

    /** Whether the table says anything of what its kind of entry says, or when it happened. */
    static boolean fit(Layout layout) {
        return layout.found().stream().anyMatch(column -> !column.equals(WORDS) && !column.equals(PERSON));
    }

    /** Those in which days stand, or times that may begin with one. */
    List<Column<?>> days() {
        Stream<Column<?>> said = parts.stream()
                .filter(part -> List.of(LocalDate.class, Instant.class)
                        .contains(part.part().type()))
                .map(PartColumns::whole);
        return Stream.concat(Stream.of(DATE, TIME, RECORDED), said).toList();
    }

    /** The day of which the entries of a kind speak. */
    Optional<PartColumns> day() {
        return parts.stream().filter(part -> part.part().name().equals("day")).findFirst();
    }
}
