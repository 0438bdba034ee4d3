package org.cupwright.app.desk.entry.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.entry.EntryForm;
import org.cupwright.app.desk.entry.Part;

/** Which column of a table of entries is what; names are taken as people type them. */
final class TableColumns {
    static final String ID = "id";
    static final String DATE = "date";
    static final String TIME = "time";
    static final String HOLE = "hole";
    static final String PERSON = "person";
    static final String RECORDED = "recorded";

    /** What an entry says, in words, for those who read the table. */
    static final String WORDS = "words";

    /** About the entry rather than in it. */
    private static final List<String> ABOUT = List.of(ID, DATE, TIME, HOLE, PERSON, RECORDED, WORDS);

    private static final List<String> PLACE = List.of("on", "side", "east", "north", "radius");

    private final List<PartColumn> parts;
    private final Map<String, Integer> columns = new HashMap<>();
    private final List<String> unused = new ArrayList<>();

    TableColumns(EntryForm form, List<String> header) {
        this.parts = PartColumn.of(form);
        List<String> known = new ArrayList<>(ABOUT);
        if (form.place().isPresent()) {
            known.addAll(PLACE);
        }
        parts.forEach(column -> known.add(column.name()));
        form.parts().stream()
                .map(Part::name)
                .filter(name -> !known.contains(name))
                .forEach(known::add);
        for (int i = 0; i < header.size(); i++) {
            String given = header.get(i).strip();
            Optional<String> meant = meant(given, known);
            if (meant.isEmpty() || columns.putIfAbsent(meant.get(), i) != null) {
                unused.add(given);
            }
        }
    }

    /** The first line of the table of a kind. */
    static List<String> header(EntryForm form) {
        List<String> names = new ArrayList<>(List.of(ID, TIME, HOLE, PERSON));
        PartColumn.of(form).forEach(column -> names.add(column.name()));
        names.add(RECORDED);
        return names;
    }

    private static Optional<String> meant(String given, List<String> known) {
        List<String> found = EntryForm.fitting(given.replace(" ", "").toLowerCase(Locale.ROOT), known);
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    List<PartColumn> parts() {
        return parts;
    }

    /** Columns that belong to nothing, or to what an earlier column gives. */
    List<String> unused() {
        return List.copyOf(unused);
    }

    /** Whether the table says anything of what its kind of entry says, or when it happened. */
    boolean fit() {
        return columns.keySet().stream().anyMatch(name -> !name.equals(WORDS) && !name.equals(PERSON));
    }

    /** What stands in a column, of a line; empty where nothing does. */
    Optional<String> find(List<String> fields, String column) {
        Integer at = columns.get(column);
        return Optional.ofNullable(at).map(fields::get).filter(field -> !field.isBlank());
    }
}
