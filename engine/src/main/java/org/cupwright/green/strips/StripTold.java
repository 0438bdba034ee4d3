package org.cupwright.green.strips;

import java.util.Optional;
import org.cupwright.green.SharedAmplitude;

/**
 * What the strips of a survey, or it and an earlier one, tell of the errors that its points share.
 *
 * @param why what came of it
 * @param measured how much is shared, where they tell it
 */
public record StripTold(Why why, Optional<SharedAmplitude> measured) {
    /** What came of it. */
    public enum Why {
        MEASURED,
        /** All points are of one strip, or their strips are not known. */
        ONE_STRIP,
        /** Strips overlap on too little of the green, or too thinly. */
        LITTLE_OVERLAP,
        /** Points of such a survey are set to share nothing, so that there is nothing to measure by. */
        NOTHING_SET,
        /** The earlier survey is of another kind: what one of the two shares is not known. */
        OTHER_KIND,
        /** The earlier survey has mostly the very same points. */
        SAME_POINTS,
        /** There is no earlier survey. */
        NONE_EARLIER
    }

    public static StripTold nothing(Why why) {
        return new StripTold(why, Optional.empty());
    }

    static StripTold measured(SharedAmplitude amplitude) {
        return new StripTold(Why.MEASURED, Optional.of(amplitude));
    }
}
