package org.cupwright.app.office.course;

import java.util.Optional;
import org.cupwright.app.desk.ground.GroundWish;
import org.cupwright.course.Hazard;

/**
 * What is drawn, as it stands in addresses and forms.
 *
 * @param draw {@code edge}, {@code bunker}, {@code water}, the number of a hazard, or {@code away-} and that number;
 *     empty: nothing
 * @param corners a line each
 */
record DrawWish(String draw, String corners) {
    static final String EDGE = "edge";
    static final String BUNKER = "bunker";
    static final String WATER = "water";
    private static final String AWAY = "away-";
    private static final String NUMBER = "[1-9][0-9]{0,2}";

    /** Nothing is drawn. */
    static final DrawWish NOTHING = new DrawWish("", "");

    /** The number of the hazard whose corners are moved. */
    Optional<Integer> moved() {
        return draw.matches(NUMBER) ? Optional.of(Integer.valueOf(draw)) : Optional.empty();
    }

    /** What is meant by it; empty where it is nothing that can be drawn. */
    Optional<GroundWish> wish() {
        if (draw.matches(AWAY + NUMBER)) {
            return Optional.of(new GroundWish.Away(Integer.parseInt(draw.substring(AWAY.length()))));
        }
        return switch (draw) {
            case EDGE -> Optional.of(new GroundWish.Edge(corners));
            case BUNKER -> Optional.of(new GroundWish.Another(Hazard.Kind.BUNKER, corners));
            case WATER -> Optional.of(new GroundWish.Another(Hazard.Kind.WATER, corners));
            default -> moved().map(number -> new GroundWish.Moved(number, corners));
        };
    }
}
