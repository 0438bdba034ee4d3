package org.cupwright.green;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a person says of a piece of ground: an opinion from experience, which nobody measured and which is never counted as if
 * somebody had.
 *
 * @param kind what is said
 * @param reason why, when the person gave a reason
 * @param person who says so, when known
 * @param date when it was said, when known
 */
public record PersonsOpinion(Kind kind, Optional<String> reason, Optional<String> person, Optional<LocalDate> date) {
    /** What can be said of ground. */
    public enum Kind {
        /** Good ground for a hole. */
        GOOD,
        /** Ground on which no hole should be. */
        BAD,
        /** "Holes go here": a spot that is used and known to be good. */
        USUAL;

        /** Whether it speaks for a hole. */
        public boolean speaksForAHole() {
            return this != BAD;
        }
    }

    public PersonsOpinion {
        reason = reason.map(String::strip).filter(text -> !text.isEmpty());
        person = person.map(String::strip).filter(text -> !text.isEmpty());
    }
}
