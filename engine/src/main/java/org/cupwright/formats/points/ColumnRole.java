package org.cupwright.formats.points;

import java.util.Locale;
import java.util.Optional;

/** What a column of a points file holds, by the names people give it. */
enum ColumnRole {
    EAST("x|e|east|easting|lon|long|longitude|x_?coord"),
    NORTH("y|n|north|northing|lat|latitude|y_?coord"),
    HEIGHT("z|h|height|elev|elevation|alt|altitude|z_?coord"),
    CLASS("class|c|cls|classification|classif"),
    STRIP("(strip|line|flight[_ ]?(line|strip)|set[_ -]?up)([_ ]?(no|nr|number|id))?"
            + "|(point|pt)[_ ]?(source|src)([_ ]?id)?"),
    TIME("(gps[_ ]?)?(time|seconds)");

    private final String names;

    ColumnRole(String names) {
        this.names = names;
    }

    /** The role of a column; empty for columns that are not needed: point number, description, intensity. */
    static Optional<ColumnRole> find(String name) {
        String plain = name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s*[(\\[].*", "");
        for (ColumnRole role : values()) {
            if (plain.matches(role.names)) {
                return Optional.of(role);
            }
        }
        return Optional.empty();
    }
}
