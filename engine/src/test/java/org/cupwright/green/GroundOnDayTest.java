package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

class GroundOnDayTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 31);

    private static GroundItem item(GroundItem.Kind kind, double east, LocalDate since, LocalDate until) {
        return new GroundItem(
                kind, new MapPoint(east, 0).toPoint(), Optional.ofNullable(since), Optional.ofNullable(until));
    }

    private static GroundItem hole(double east, LocalDate since) {
        return item(GroundItem.Kind.OLD_HOLE, east, since, null);
    }

    @Test
    void whatCountsIsOfTheKindAndNotOver() {
        GroundItem endsToday = item(GroundItem.Kind.PLUG, 1, null, DAY);
        GroundItem over = item(GroundItem.Kind.PLUG, 2, null, DAY.minusDays(1));
        GroundItem openEnded = item(GroundItem.Kind.PLUG, 3, null, null);
        GroundOnDay ground = new GroundOnDay(DAY, List.of(endsToday, over, openEnded, hole(4, null)));
        assertThat(ground.counting(GroundItem.Kind.PLUG)).containsExactly(endsToday, openEnded);
        assertThat(GroundOnDay.clear(DAY).items()).isEmpty();
        assertThat(GroundOnDay.clear(DAY).day()).isEqualTo(DAY);
    }

    @Test
    void theLastHolesComeNewestFirstAndThoseWithoutADateLast() {
        GroundOnDay ground = new GroundOnDay(
                DAY,
                List.of(
                        hole(1, DAY.minusDays(9)),
                        hole(2, null),
                        hole(3, DAY.minusDays(2)),
                        item(GroundItem.Kind.PLUG, 4, DAY, null),
                        hole(5, DAY.minusDays(10)),
                        hole(6, DAY.minusDays(11))));
        assertThat(ground.lastHoles(9, 10))
                .containsExactly(new MapPoint(3, 0), new MapPoint(1, 0), new MapPoint(5, 0), new MapPoint(2, 0));
        assertThat(ground.lastHoles(2, 10)).containsExactly(new MapPoint(3, 0), new MapPoint(1, 0));
    }

    @Test
    void holesAndPlugsArePointsAndGroundIsAnArea() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> item(GroundItem.Kind.SAVED, 1, null, null))
                .withMessage("SAVED needs an area");
        for (GroundItem.Kind kind : List.of(GroundItem.Kind.OLD_HOLE, GroundItem.Kind.PLUG)) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() ->
                            new GroundItem(kind, Shapes.area(0, 0, 1, 0, 1, 1), Optional.empty(), Optional.empty()))
                    .withMessage(kind + " needs a point");
        }
    }
}
