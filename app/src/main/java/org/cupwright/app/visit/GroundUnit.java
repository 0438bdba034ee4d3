package org.cupwright.app.visit;

import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.units.LengthUnit;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;
import org.cupwright.units.WrittenNumber;

/**
 * The unit in which lengths on the ground are typed: the one in which they are shown.
 *
 * @param units those of the course
 * @param paceMetres how long a pace is, m
 */
public record GroundUnit(UnitSystem units, double paceMetres) {
    /** As far as a wish may reach about a spot, m: our choice, as the commands have it. */
    public static final double MOST_METRES = 30;

    private static final int FEET_IN_A_PACE = 3;

    static GroundUnit of(Visit visit) {
        return new GroundUnit(
                visit.session().speech().units(), visit.session().speech().paceMetres());
    }

    /** Of its word, as it stands behind a field. */
    public String key() {
        return switch (units) {
            case METRIC -> "begin.measure.metres";
            case IMPERIAL -> "begin.measure.feet";
            case PACES -> "begin.measure.paces";
        };
    }

    /** What stands in a field before anybody types: so many paces or metres, or about as many feet. */
    public String usual(int paces) {
        return Integer.toString(units == UnitSystem.IMPERIAL ? FEET_IN_A_PACE * paces : paces);
    }

    /** What was typed, m. */
    public double toMetres(double typed) {
        return switch (units) {
            case METRIC -> typed;
            case IMPERIAL -> LengthUnit.FOOT.toMetres(typed);
            case PACES -> Paces.toMetres(typed, paceMetres);
        };
    }

    /**
     * How far about a spot something is wished, m.
     *
     * @throws Problem when that is no length, or too far
     */
    public double radiusMetres(String typed) {
        return WrittenNumber.find(typed.strip())
                .map(this::toMetres)
                .filter(metres -> metres > 0 && metres <= MOST_METRES)
                .orElseThrow(() -> Problem.of("wish.within", "within", typed, new Name(typed)));
    }
}
