package org.cupwright.app.storage.training;

/** The steps of the hand work, grouped into what somebody is signed off for: common practice, no source. */
public enum Skill {
    /** Looking the green over, stepping the spot out, knowing by hand whether it does. */
    FINDING,
    /** The cutter straight, to full depth, drawn slowly. */
    CUTTING,
    /** The old cup out, the new one down to depth with the setter, never driven. */
    CUP,
    /** The plug level, rolled, knitted, watered. */
    PLUG,
    /** The flagstick straight, soil off, tools wiped, a last look. */
    FINISH,
    /** Saying what is odd, to whom, and what keeps people from harm. */
    REPORTING,
    /** A hole of an event: on the painted dot, or where two tapes meet. */
    EVENT_HOLES
}
