package org.cupwright.green.survey.points;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What a column of a points file holds, by the names people give it. */
enum ColumnRole {
    EAST("x", "e", "east", "easting", "lon", "long", "longitude", "x_coord", "xcoord"),
    NORTH("y", "n", "north", "northing", "lat", "latitude", "y_coord", "ycoord"),
    HEIGHT("z", "h", "height", "elev", "elevation", "alt", "altitude", "z_coord", "zcoord"),
    CLASS("class", "c", "cls", "classification", "classif");

    private final Set<String> names;

    ColumnRole(String... names) {
        this.names = Set.of(names);
    }

    /** The role of a column; empty for columns that are not needed: point number, description, intensity. */
    static Optional<ColumnRole> find(String name) {
        String plain = name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s*[(\\[].*", "");
        for (ColumnRole role : values()) {
            if (role.names.contains(plain)) {
                return Optional.of(role);
            }
        }
        return Optional.empty();
    }
}
