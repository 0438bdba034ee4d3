package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.candidate.Candidate;
import org.junit.jupiter.api.Test;

/**
 * The room about a spot on the ground of a day, worked out by hand: old holes rest within 2.74 m, the last are kept
 * 4.88 m off, plugs 0.91 m.
 */
class OnGroundTest {
    private static final Offset<Double> CLOSE = within(1e-9);

    /** With three metres of room as far as the ground's shape is concerned. */
    private static final Candidate SPOT = MadeGreens.good(15, 15, DifficultyClass.MEDIUM);

    private static GroundItem item(Kind kind, double metresOff, int lastOfDays) {
        return new GroundItem(
                kind,
                new MapPoint(15, 15 + metresOff).toPoint(),
                Optional.of(MadeWeeks.FIRST.minusDays(5)),
                Optional.of(MadeWeeks.FIRST.plusDays(lastOfDays)));
    }

    private static OnGround ground(GroundItem... items) {
        return new OnGround(new GroundOnDay(MadeWeeks.FIRST, List.of(items)), Policy.defaults());
    }

    private static Candidate on(GroundItem... items) {
        return ground(items).of(List.of(SPOT)).get(0);
    }

    @Test
    void roomEndsWhereAnOldHoleOrAPlugWouldBeTooNear() {
        assertThat(on().goodWithinMetres()).isEqualTo(3);
        assertThat(on(item(Kind.OLD_HOLE, 6, 1)).goodWithinMetres()).isCloseTo(6 - 4.88, CLOSE);
        assertThat(on(item(Kind.OLD_HOLE, 6, -1)).goodWithinMetres()).isCloseTo(6 - 4.88, CLOSE);
        assertThat(on(item(Kind.OLD_HOLE, 20, 1)).goodWithinMetres()).isEqualTo(3);
        assertThat(on(item(Kind.PLUG, 2.5, 0)).goodWithinMetres()).isCloseTo(2.5 - 0.91, CLOSE);
        assertThat(on(item(Kind.PLUG, 2.5, -1)).goodWithinMetres()).isEqualTo(3);
        assertThat(on(item(Kind.PLUG, 2, 0), item(Kind.OLD_HOLE, 5, -1)).goodWithinMetres())
                .isCloseTo(5 - 4.88, CLOSE);
        assertThat(on(item(Kind.PLUG, 1, 0), item(Kind.OLD_HOLE, 7, -1)).goodWithinMetres())
                .isCloseTo(1 - 0.91, CLOSE);
    }

    /** Among the last holes a spot asks for care; then its room is to where it would be refused. */
    @Test
    void aSpotThatAsksForCareHasRoomToWhereTheGroundRests() {
        Candidate care = on(item(Kind.OLD_HOLE, 4, 1));
        assertThat(care.verdict()).isEqualTo(Verdict.CAUTION);
        assertThat(care.goodWithinMetres()).isCloseTo(4 - 2.74, CLOSE);
        assertThat(on(item(Kind.OLD_HOLE, 4, -1)).goodWithinMetres()).isEqualTo(3);
    }

    @Test
    void onRestingGroundThereIsNoRoom_thoughTheRuleIsSetAside() {
        Candidate aside = ground(item(Kind.OLD_HOLE, 1, 1)).setAside(SPOT);
        assertThat(aside.usable()).isTrue();
        assertThat(aside.goodWithinMetres()).isZero();
    }
}
