package org.cupwright.app.desk.turf;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HexFormat;
import org.cupwright.app.desk.cache.Sha256;
import org.cupwright.app.desk.log.FactStore.Arrival;
import org.cupwright.turf.state.TurfState;

/**
 * A state of the turf that was kept.
 *
 * @param courseId the course
 * @param before everything that happened before this moment is in it
 * @param arrival how far the logbook had come
 * @param state the state
 */
record KeptTurf(String courseId, Instant before, Arrival arrival, TurfState state) {
    /** Raised when what is kept, or what goes into it, changes. */
    private static final int SHAPE = 1;

    /** Under which name a course's state of a moment is kept, whatever is in it. */
    static String name(String courseId, ZoneId zone, Instant before) {
        String whole = "turf " + SHAPE + " " + courseId + " " + zone + " " + before;
        return HexFormat.of().formatHex(Sha256.digest().digest(whole.getBytes(StandardCharsets.UTF_8)));
    }

    boolean isOf(String course, ZoneId zone, Instant moment) {
        return courseId.equals(course) && state.zone().equals(zone) && before.equals(moment);
    }
}
