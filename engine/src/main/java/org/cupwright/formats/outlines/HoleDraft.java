package org.cupwright.formats.outlines;

import java.util.Optional;

/**
 * A hole before it has its name.
 *
 * @param green its green
 * @param line its line of play, when the map draws one
 * @param ref the name the map gives it, as written
 */
record HoleDraft(GreenShape green, Optional<HoleLine> line, Optional<String> ref) {
    /** The part of the course that the map says it belongs to. */
    Optional<String> loop() {
        return green.practice()
                ? Optional.empty()
                : line.flatMap(HoleLine::loop).or(green::loop);
    }
}
