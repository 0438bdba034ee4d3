package org.cupwright.holelocation.spot;

import java.util.List;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.Green;
import org.cupwright.policy.Policy;
import org.cupwright.units.GreenSpeed;

/**
 * A green measured for one green speed: everything about its positions that does not change from day to day.
 *
 * @param green the green
 * @param area the part of it on which a ball counts as on the green
 * @param grid its ground at every spot of its lattice
 * @param speed the speed
 */
public record GreenMeasurement(Green green, PuttingArea area, SpotGrid grid, GreenSpeed speed) {
    /** Measures the whole green: up to half a second for a large one. */
    public static GreenMeasurement measure(Green green, GreenSpeed speed, Policy policy) {
        PuttingArea area = new PuttingArea(green.hole());
        return new GreenMeasurement(green, area, SpotGrid.measure(green, area, speed, policy), speed);
    }

    /** The same measurement of a green of which people say something else: what was measured does not depend on it. */
    public GreenMeasurement withDrawn(List<DrawnItem> drawn) {
        return new GreenMeasurement(green.withDrawn(drawn), area, grid, speed);
    }

    /** The same green for another speed. */
    public GreenMeasurement at(GreenSpeed other, Policy policy) {
        return other.equals(speed)
                ? this
                : new GreenMeasurement(green, area, SpotGrid.measure(green, area, other, policy), other);
    }
}
