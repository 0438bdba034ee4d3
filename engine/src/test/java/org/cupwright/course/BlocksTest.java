package org.cupwright.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** Into which parts invented courses fall. */
class BlocksTest {
    private static List<String> numbered(String letter, int from, int to) {
        return IntStream.rangeClosed(from, to).mapToObj(i -> letter + i).toList();
    }

    /** A course whose hole of place i has the green of place i modulo {@code greens}. */
    private static Course course(List<String> holes, int greens, Loop... loops) {
        List<Hole> made = IntStream.range(0, holes.size())
                .mapToObj(i ->
                        Hole.of(holes.get(i), Shapes.rectangle(100 * (i % greens), 0, 100 * (i % greens) + 20, 30)))
                .toList();
        return new Course("made-up", "Invented", new CourseFrame(25832, ZoneOffset.UTC), made, List.of(loops));
    }

    private static List<List<String>> parts(Course course) {
        return course.blocks().stream().map(Loop::holes).toList();
    }

    private static List<String> both(List<String> first, List<String> then) {
        return Stream.concat(first.stream(), then.stream()).toList();
    }

    @Test
    void lettersMakeNinesOnlyIfEachHasNineOfThem() {
        List<String> a = numbered("A", 1, 9);
        List<String> b = numbered("B", 1, 9);
        assertThat(parts(course(both(a, b), 18))).containsExactly(a, b);
        List<String> nineteen = both(a, numbered("B", 1, 10));
        assertThat(parts(course(nineteen, 19))).containsExactly(nineteen);
        assertThat(parts(course(a, 9))).containsExactly(a);
        assertThat(course(both(a, b), 18).blocks()).allMatch(part -> part.name().isEmpty() && !part.practice());
    }

    @Test
    void withoutLettersManyHolesAreEighteensOrElseNines() {
        assertThat(parts(course(numbered("", 1, 18), 18))).containsExactly(numbered("", 1, 18));
        assertThat(parts(course(numbered("", 1, 27), 27)))
                .containsExactly(numbered("", 1, 9), numbered("", 10, 18), numbered("", 19, 27));
        assertThat(parts(course(numbered("", 1, 36), 36))).containsExactly(numbered("", 1, 18), numbered("", 19, 36));
        assertThat(parts(course(numbered("", 1, 12), 12))).containsExactly(numbered("", 1, 12));
        assertThat(parts(course(numbered("", 1, 20), 20))).containsExactly(numbered("", 1, 20));
        assertThat(parts(course(List.of(), 1))).isEmpty();
    }

    @Test
    void nineGreensWithTwoHolesEachAreTwoNines() {
        assertThat(parts(course(numbered("", 1, 18), 9))).containsExactly(numbered("", 1, 9), numbered("", 10, 18));
    }

    @Test
    void namedPartsComeFirstThenWhatNobodyNamedThenPracticeGreens() {
        List<String> practice = numbered("P", 1, 2);
        Loop green = new Loop("By the barn", practice, true);
        Loop nine = new Loop("Meadow", numbered("", 10, 18), false);
        Course course = course(both(numbered("", 1, 18), practice), 20, green, nine);
        assertThat(course.blocks()).containsExactly(nine, new Loop("", numbered("", 1, 9), false), green);
        assertThat(course.isPractice("P2")).isTrue();
        assertThat(course.isPractice("2")).isFalse();
    }

    @Test
    void holesShareAGreenIfTheirOutlinesHaveMoreThanHalfInCommon() {
        Outline green = Shapes.rectangle(0, 0, 20, 30);
        assertThat(green.isSameGreenAs(Shapes.rectangle(9, 0, 29, 30))).isTrue();
        assertThat(green.isSameGreenAs(Shapes.rectangle(10, 0, 30, 30))).isFalse(); // half exactly
        assertThat(green.isSameGreenAs(Shapes.rectangle(200, 0, 220, 30))).isFalse();
        Course course = course(numbered("", 1, 4), 2);
        assertThat(course.sharingGreenWith(course.find("1").orElseThrow()))
                .extracting(Hole::id)
                .containsExactly("3");
    }

    @Test
    void outlinesAreEqualIfDrawnAlike() {
        Outline green = Shapes.rectangle(0, 0, 20, 30);
        assertThat(green).isEqualTo(Shapes.rectangle(0, 0, 20, 30)).hasSameHashCodeAs(Shapes.rectangle(0, 0, 20, 30));
        assertThat(green).isNotEqualTo(Shapes.rectangle(0, 0, 20, 31)).isNotEqualTo("a green");
        assertThat(green.hashCode())
                .isNotEqualTo(Shapes.rectangle(0, 0, 200, 30).hashCode());
        assertThat(green.areaSquareMetres()).isEqualTo(600);
    }

    @Test
    void refusesWhatIsNoCourse() {
        assertThatThrownBy(() -> course(List.of("7", "7"), 2)).hasMessageContaining("two holes are called 7");
        assertThatThrownBy(() -> Hole.of("no. 7", Shapes.rectangle(0, 0, 1, 1))).hasMessageContaining("no. 7");
        assertThatThrownBy(() -> new WalkOff(List.of(new MapPoint(0, 0)))).hasMessageContaining("1 points");
        MapPoint twice = new MapPoint(1, 1);
        assertThatThrownBy(() -> new LineOfPlay(List.of(twice, twice))).hasMessageContaining("two different points");
        assertThatThrownBy(() -> new MapPoint(Double.NaN, 0)).hasMessageContaining("not a point");
    }
}
