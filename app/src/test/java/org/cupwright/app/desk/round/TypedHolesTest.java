package org.cupwright.app.desk.round;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.message.Problem;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** Holes as they are typed, and as they are told. */
class TypedHolesTest {
    private static TypedHoles holes(List<String> names) {
        List<Hole> made = IntStream.range(0, names.size())
                .mapToObj(i -> Hole.of(names.get(i), Shapes.rectangle(100 * i, 0, 100 * i + 20, 30)))
                .toList();
        return new TypedHoles(new Course("made-up", "Invented", new CourseFrame(25832, ZoneOffset.UTC), made));
    }

    private static final TypedHoles EIGHTEEN =
            holes(IntStream.rangeClosed(1, 18).mapToObj(Integer::toString).toList());

    @Test
    void rowsAndSingleHolesAreReadOnceAndInOrder() {
        assertThat(EIGHTEEN.read("14, 1-3")).containsExactly("1", "2", "3", "14");
        assertThat(EIGHTEEN.read("3;3 2–4")).containsExactly("2", "3", "4");
        assertThat(EIGHTEEN.read(" 1 - 3 ")).containsExactly("1", "2", "3");
        assertThat(EIGHTEEN.read("")).isEmpty();
        assertThat(EIGHTEEN.read("all")).hasSize(18);
    }

    @Test
    void namesOfHolesMayHaveLetters() {
        TypedHoles named = holes(List.of("L1", "L2", "L3", "F1"));
        assertThat(named.read("L1-L3")).containsExactly("L1", "L2", "L3");
        assertThat(named.read("L2, F1,")).containsExactly("L2", "F1");
        assertThat(named.told(List.of("L2", "L3", "F1"))).isEqualTo("L2–F1");
    }

    @Test
    void aHoleThatThereIsNotIsTold() {
        for (String typed : List.of("19", "0-3", "9-1", "1-", "-", "front", "1-3-5")) {
            assertThatThrownBy(() -> EIGHTEEN.read(typed)).as(typed).isInstanceOf(Problem.class);
        }
    }

    @Test
    void threeInARowAreToldByTheFirstAndTheLast() {
        assertThat(EIGHTEEN.told(List.of("1", "2", "3", "14"))).isEqualTo("1–3, 14");
        assertThat(EIGHTEEN.told(List.of("4", "5"))).isEqualTo("4, 5");
        assertThat(EIGHTEEN.told(List.of())).isEmpty();
        assertThat(EIGHTEEN.read(EIGHTEEN.told(List.of("1", "2", "3", "9", "17", "18"))))
                .containsExactly("1", "2", "3", "9", "17", "18");
    }
}
