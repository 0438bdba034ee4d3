package org.cupwright.settingout;

import org.cupwright.green.End;
import org.cupwright.green.Lateral;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.Side;
import org.cupwright.green.Third;
import org.cupwright.units.Paces;

/**
 * Where a position lies, as the changer paces it: words first, then paces to the half pace.
 *
 * @param metres the same place, unrounded
 * @param onPaces paces on, to the half pace
 * @param fromBackPaces paces from the back, to the half pace; rounded by itself, so the two need not add up to the
 *     depth
 * @param sidePaces paces from the nearer side edge, to the half pace
 */
public record PacedPlace(PlaceOnGreen metres, double onPaces, double fromBackPaces, double sidePaces) {
    static PacedPlace of(PlaceOnGreen place, double paceMetres) {
        return new PacedPlace(
                place,
                Paces.roundedToHalf(place.onMetres(), paceMetres),
                Paces.roundedToHalf(place.fromBackMetres(), paceMetres),
                Paces.roundedToHalf(place.sideMetres(), paceMetres));
    }

    /** How deep the green is on the line on which both are paced: what the two come to. */
    public double depthPaces() {
        return onPaces + fromBackPaces;
    }

    public Third third() {
        return metres.third();
    }

    public Lateral lateral() {
        return metres.lateral();
    }

    public Side side() {
        return metres.side();
    }

    /** The end from which fewer steps lead there; the front when both are as near. */
    public End nearerEnd() {
        return metres.fromBackMetres() < metres.onMetres() ? End.BACK : End.FRONT;
    }

    /** Paces from the nearer end, to the half pace. */
    public double nearerEndPaces() {
        return nearerEnd() == End.BACK ? fromBackPaces : onPaces;
    }

    /** Whether the words about both are the same: third, left or right, and from which edges the paces count. */
    boolean isSaidLike(PacedPlace other) {
        return third() == other.third()
                && lateral() == other.lateral()
                && side() == other.side()
                && nearerEnd() == other.nearerEnd();
    }
}
