package org.cupwright.rotation;

/** How the holes of a day are spread over front, middle and back. */
public enum Scheme {
    /** A third of the greens each: six, six and six over eighteen. */
    SIX_SIX_SIX,
    /** However the other wishes are met best. */
    FREE
}
