package org.cupwright.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.turf.state.Plug;
import org.cupwright.turf.today.RecheckItem;
import org.cupwright.turf.today.RecheckItem.Reason;
import org.cupwright.turf.today.WateringItem;
import org.junit.jupiter.api.Test;

/** Which plugs of a green are carried round, and in which order. */
class PlugsInPassingTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 20);

    /** A plug that was set so many days ago, at a place of its own. */
    private static Plug plug(int daysAgo) {
        LocalDate set = TODAY.minusDays(daysAgo);
        return new Plug(new MapPoint(daysAgo, 0), set, set, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static RecheckItem look(String hole, int daysAgo, Reason reason) {
        return new RecheckItem(hole, plug(daysAgo), reason, false);
    }

    private static WateringItem water(String hole, int daysAgo, WateringItem.Reason reason, boolean done) {
        return new WateringItem(hole, plug(daysAgo), reason, done);
    }

    private static List<Plug> plugs(List<WateringItem> watering, List<RecheckItem> recheck) {
        return new PlugsInPassing(watering, recheck)
                .on("7").stream().map(PlugsInPassing.Wanted::plug).toList();
    }

    @Test
    void faultsComeFirstThenTheNewestUnseenAndTheTwoOldestThatShouldHaveKnit() {
        List<RecheckItem> recheck = List.of(
                look("7", 12, Reason.LOOK_FIRST),
                look("7", 3, Reason.NEVER_SEEN),
                look("7", 20, Reason.LOOK_FIRST),
                look("7", 1, Reason.NEVER_SEEN),
                look("7", 5, Reason.HIGH),
                look("7", 16, Reason.LOOK_FIRST),
                look("8", 2, Reason.LOW));
        assertThat(plugs(List.of(), recheck)).containsExactly(plug(5), plug(1), plug(20), plug(16));
        assertThat(plugs(List.of(), List.of())).isEmpty();
    }

    /** A plug that wants water and a look stands there once, with every reason; what is watered wants no more. */
    @Test
    void waterAndALookAreAskedOfOnePlugAtOnce() {
        List<WateringItem> watering = List.of(
                water("7", 1, WateringItem.Reason.NO_WATER_CAME, false),
                water("7", 2, WateringItem.Reason.NO_WATER_CAME, true),
                water("8", 1, WateringItem.Reason.NO_WATER_CAME, false),
                water("7", 1, WateringItem.Reason.HOT, false));
        List<PlugsInPassing.Wanted> wanted =
                new PlugsInPassing(watering, List.of(look("7", 1, Reason.NEVER_SEEN))).on("7");
        assertThat(wanted).hasSize(1);
        assertThat(wanted.get(0).water()).containsExactly(WateringItem.Reason.NO_WATER_CAME, WateringItem.Reason.HOT);
        assertThat(wanted.get(0).look()).map(RecheckItem::reason).contains(Reason.NEVER_SEEN);
    }
}
