package org.cupwright.app.desk;

import java.util.Optional;
import org.cupwright.message.Problem;
import org.cupwright.units.Heading;
import org.cupwright.units.WrittenNumber;

/** A direction as it is typed. */
public final class TypedHeading {
    private static final double TURN_DEGREES = 360;

    private TypedHeading() {}

    /**
     * Reads it.
     *
     * @param field where it was typed
     * @param typed degrees clockwise from the map's north, 0 to 360, with or without their sign; empty: none
     * @throws Problem when it is none
     */
    public static Optional<Heading> read(String field, String typed) {
        String text = typed.strip();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(WrittenNumber.find(text.replaceFirst("\\s*°$", ""))
                .filter(turn -> turn >= 0 && turn <= TURN_DEGREES)
                .map(Heading::ofDegrees)
                .orElseThrow(() -> Problem.of("begin.heading", field, text)));
    }

    /** As it is shown and typed again: whole degrees, 0 to 359. */
    public static long degrees(Heading heading) {
        return Math.round(heading.degrees()) % 360;
    }
}
