package org.cupwright.app.storage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.items.ReadDrawn;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.rotation.candidate.Area;
import org.junit.jupiter.api.Test;

/** The course's own areas beside what people say of the ground. */
class DrawnAreasTest {
    private static ReadDrawn.Item area(String number, double east, String... holes) {
        PersonsOpinion word = new PersonsOpinion(
                Kind.AREA, Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(number));
        return new ReadDrawn.Item(Optional.empty(), List.of(holes), word, DrawnItem.disc(new MapPoint(east, 5), 3));
    }

    private static ReadDrawn.Item bad(double east) {
        PersonsOpinion word = new PersonsOpinion(Kind.BAD, Optional.empty(), Optional.empty(), Optional.empty());
        return new ReadDrawn.Item(Optional.empty(), List.of("7"), word, DrawnItem.disc(new MapPoint(east, 5), 3));
    }

    @Test
    void anAreaIsNothingThatAnybodySaysOfTheGround() {
        DrawnOnCourse drawn = DrawnOnCourse.none().with(area("3", 5, "7")).with(bad(5));
        assertThat(drawn.of("7")).extracting(DrawnItem::id).containsExactly("7-bad-1");
        assertThat(drawn.areas("7")).extracting(Area::number).containsExactly("3");
        assertThat(drawn.areas("8")).isEmpty();
        assertThat(drawn.find("7-area-3")).isPresent();
    }

    /** A number is one of a kind on its green: drawn again, the later place counts. */
    @Test
    void anAreaDrawnAgainTakesItsPlace() {
        DrawnOnCourse drawn = DrawnOnCourse.none()
                .with(area("3", 5, "7"))
                .with(area("3", 15, "7"))
                .with(area("3", 5, "8"));
        assertThat(drawn.areas("7")).singleElement().satisfies(area -> {
            assertThat(area.holds(new MapPoint(15, 5))).isTrue();
            assertThat(area.holds(new MapPoint(5, 5))).isFalse();
        });
        assertThat(drawn.areas("8")).hasSize(1);
    }

    @Test
    void theHolesOfADoubleGreenShareItsAreas() {
        DrawnOnCourse drawn = DrawnOnCourse.none().with(area("A", 5, "9", "18"));
        assertThat(drawn.areas("9")).isEqualTo(drawn.areas("18")).hasSize(1);
    }
}
