package org.cupwright.rotation;

/** How the holes of a day are spread over the greens. */
public enum Scheme {
    /** A third of the greens each: six, six and six over eighteen. */
    SIX_SIX_SIX,
    /** However the other wishes are met best. */
    FREE,
    /** Each green's hole in the area that the course's own order has for the day. */
    SET_CYCLE,
    /** The same, and whoever changes the hole picks the spot in it: the plan's is a suggestion. */
    AREA_ONLY;

    /** Whether the course's own order of areas says where holes go. */
    public boolean goesByAreas() {
        return this == SET_CYCLE || this == AREA_ONLY;
    }
}
