package org.cupwright.app.session;

/** What somebody may do to what is kept. Reading needs no right of its own. */
public enum Right {
    /** Write into the logbook. */
    RECORD,
    /** Make plans, publish and withdraw them. */
    PLAN,
    /** Say what is known of the ground: surveys, level readings, drawn ground, courses. */
    SURVEY,
    /** Change settings. */
    SET,
    /** Copy the data folder out, and put a copy in its place. */
    KEEP,
    /** Say who may sign in and as what, and see the audit trail. */
    PEOPLE
}
