package org.cupwright.rotation.weeks;

import org.cupwright.course.MapPoint;
import org.cupwright.rotation.weeks.Repair.Cell;

/** Which holes of a plan keep each other from ground: the later lies where the ground about the earlier rests. */
record Nearness(WeeksModel model, Choices choices) {
    boolean tooNear(Cell one, Cell other) {
        int spot = choices.chosen(other.green(), other.day());
        return spot != GreenTable.NONE
                && choices.chosen(one.green(), one.day()) != GreenTable.NONE
                && tooNear(one, at(one), other);
    }

    /** Whether a hole would be, were it at a place. */
    boolean tooNear(Cell one, MapPoint place, Cell other) {
        Cell earlier = one.day() <= other.day() ? one : other;
        Cell later = earlier == one ? other : one;
        return model.table(earlier.green()).stays().end(earlier.day()) <= later.day()
                && choices.chosen(other.green(), other.day()) != GreenTable.NONE
                && model.green(earlier.green()).restsUntil(earlier.day()) >= later.day()
                && place.distanceMetres(at(other)) < model.restMetres();
    }

    private MapPoint at(Cell cell) {
        return model.table(cell.green()).at(choices.chosen(cell.green(), cell.day()));
    }
}
