package org.cupwright.green;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a person says of a piece of ground: an opinion from experience, which nobody measured and which is never counted
 * as if somebody had.
 *
 * @param kind what is said
 * @param reason why, when the person gave a reason
 * @param person who says so, when known
 * @param date when it was said, when known
 * @param area the number or letter by which the course calls an area; empty for all other kinds
 */
public record PersonsOpinion(
        Kind kind, Optional<String> reason, Optional<String> person, Optional<LocalDate> date, Optional<String> area) {
    /** What can be said of ground. */
    public enum Kind {
        /** Good ground for a hole. */
        GOOD,
        /** Ground on which no hole should be. */
        BAD,
        /** "Holes go here": a spot that is used and known to be good. */
        USUAL,
        /** Ground that the course has a number or a letter for, whether it is good or bad. */
        AREA;

        /** Whether it speaks for a hole. */
        public boolean speaksForAHole() {
            return this == GOOD || this == USUAL;
        }
    }

    /** What the number or letter of an area looks like: short, so that a table of weeks has room for it. */
    public static final String AREA_PATTERN = "[A-Za-z0-9]{1,2}";

    /** What is said of ground that is no area of the course's own. */
    public PersonsOpinion(Kind kind, Optional<String> reason, Optional<String> person, Optional<LocalDate> date) {
        this(kind, reason, person, date, Optional.empty());
    }

    public PersonsOpinion {
        reason = reason.map(String::strip).filter(text -> !text.isEmpty());
        person = person.map(String::strip).filter(text -> !text.isEmpty());
        if ((kind == Kind.AREA)
                != area.filter(text -> text.matches(AREA_PATTERN)).isPresent()) {
            throw new IllegalArgumentException(
                    kind + " with the number " + area + "; areas have one, nothing else has");
        }
    }
}
