package org.cupwright.testing;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.PersonsOpinion.Kind;

/** Ground as invented people drew it. */
public final class DrawnShapes {
    public static final String PERSON = "Invented Person";
    public static final LocalDate DATE = LocalDate.of(2026, 5, 31);

    private DrawnShapes() {}

    public static PersonsOpinion word(Kind kind) {
        return new PersonsOpinion(kind, Optional.empty(), Optional.of(PERSON), Optional.of(DATE));
    }

    public static DrawnItem area(Kind kind, double west, double south, double east, double north) {
        return new DrawnItem("made", word(kind), Shapes.area(west, south, east, south, east, north, west, north));
    }

    public static DrawnItem usual(double east, double north) {
        return new DrawnItem("made-usual", word(Kind.USUAL), DrawnItem.spot(new MapPoint(east, north)));
    }
}
