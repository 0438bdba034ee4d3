package org.cupwright.turf.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Area;
import org.cupwright.cupchange.GroundNote.GroundMarked;
import org.cupwright.cupchange.GroundNote.GroundReason;
import org.cupwright.cupchange.GroundNote.GroundUse;
import org.junit.jupiter.api.Test;

/** A rectangle of 4 by 2 m, closed from 3 to 6 May. */
class MarkedGroundTest {
    private static final GroundMarked CLOSED = mark(GroundUse.CLOSED, 0, 4, may(3), Optional.of(may(6)));
    private static final List<MarkedGround> GROUND = MarkedGround.after(List.of(), CLOSED, may(3));

    private static LocalDate may(int day) {
        return LocalDate.of(2024, 5, day);
    }

    private static GroundMarked mark(
            GroundUse use, double west, double east, LocalDate from, Optional<LocalDate> until) {
        Area area = new Area.Drawn(
                List.of(new MapPoint(west, 0), new MapPoint(east, 0), new MapPoint(east, 2), new MapPoint(west, 2)));
        return new GroundMarked(use, area, GroundReason.REPAIR, from, until);
    }

    private static GroundMarked freed(double west, double east, LocalDate from) {
        return mark(GroundUse.FREE, west, east, from, Optional.empty());
    }

    private static String calendar(MarkedGround ground) {
        StringBuilder signs = new StringBuilder();
        for (int day = 1; day <= 10; day++) {
            signs.append(ground.countsOn(may(day)) ? '#' : '.');
        }
        return signs.toString();
    }

    @Test
    void countsFromItsFirstDayToItsLast() {
        assertThat(GROUND).singleElement().satisfies(ground -> {
            assertThat(calendar(ground)).isEqualTo("..####....");
            assertThat(ground.place().getArea()).isCloseTo(8, within(1e-9));
        });
        GroundMarked open = mark(GroundUse.SAVED, 0, 4, may(3), Optional.empty());
        assertThat(MarkedGround.after(List.of(), open, may(3)))
                .singleElement()
                .satisfies(ground -> assertThat(calendar(ground)).isEqualTo("..########"));
    }

    @Test
    void whatEndedBeforeTheDayOfTheNextMarkIsDropped() {
        GroundMarked next = mark(GroundUse.LIGHT_USE, 8, 9, may(9), Optional.empty());
        assertThat(MarkedGround.after(GROUND, next, may(6))).hasSize(2);
        assertThat(MarkedGround.after(GROUND, next, may(7)))
                .singleElement()
                .satisfies(ground -> assertThat(ground.use()).isEqualTo(GroundUse.LIGHT_USE));
        assertThat(MarkedGround.after(GROUND, freed(8, 9, may(7)), may(7))).isEmpty();
    }

    @Test
    void groundThatIsFreedCountsUntilTheDayBeforeAndItsRestAfterwards() {
        List<MarkedGround> after = MarkedGround.after(GROUND, freed(0, 1, may(5)), may(4));
        assertThat(after).extracting(MarkedGroundTest::calendar).containsExactly("..##......", "....##....");
        assertThat(after.get(0).place().getArea()).isCloseTo(8, within(1e-9));
        assertThat(after.get(1).place().getArea()).isCloseTo(6, within(1e-9));
    }

    @Test
    void groundFreedFromItsFirstDayOnOnlyKeepsItsRest() {
        List<MarkedGround> after = MarkedGround.after(GROUND, freed(0, 1, may(3)), may(3));
        assertThat(after).extracting(MarkedGroundTest::calendar).containsExactly("..####....");
        assertThat(after.get(0).place().getArea()).isCloseTo(6, within(1e-9));
        assertThat(MarkedGround.after(GROUND, freed(0, 4, may(1)), may(3))).isEmpty();
    }

    /** Of the rectangle's 2 m, a strip of 4 mm is 0.008 m², one of 6 mm 0.012 m². */
    @Test
    void aSliverThatDrawingLeftIsNoGround() {
        assertThat(MarkedGround.after(GROUND, freed(0.004, 4, may(3)), may(3))).isEmpty();
        assertThat(MarkedGround.after(GROUND, freed(0.006, 4, may(3)), may(3))).hasSize(1);
    }

    @Test
    void groundElsewhereOrEndedByThenIsLeftAsItIs() {
        assertThat(MarkedGround.after(GROUND, freed(5, 6, may(4)), may(4))).isEqualTo(GROUND);
        assertThat(MarkedGround.after(GROUND, freed(0, 4, may(7)), may(4))).isEqualTo(GROUND);
        assertThat(MarkedGround.after(GROUND, freed(0, 4, may(6)), may(4)))
                .singleElement()
                .satisfies(ground -> assertThat(calendar(ground)).isEqualTo("..###....."));
    }
}
