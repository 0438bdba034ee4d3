package org.cupwright.app.storage;

/** What the audit trail keeps: who changed what others rely on. */
public enum AuditKind {
    /** A code was made for the first superintendent. */
    FIRST_CODE_MADE,
    /** Somebody got a code, for an account or for another password. */
    PERSON_INVITED,
    /** Somebody came with a code and has an account. */
    PERSON_JOINED,
    /** Somebody may sign in otherwise than before, by a code or by the old password. */
    PASSWORD_CHANGED,
    ROLE_CHANGED,
    /** Somebody may sign in no more. */
    PERSON_REMOVED,
    /** Somebody's name was replaced wherever it stood. */
    PERSON_ERASED,
    SIGNED_IN,
    /** Somebody's password was tried wrongly so often that further tries have to wait. */
    SIGN_IN_SLOWED,
    POLICY_CHANGED,
    PLAN_PUBLISHED,
    PLAN_WITHDRAWN,
    /** The edge of a green was drawn otherwise, on the map of its page. */
    EDGE_DRAWN,
    /** A bunker was drawn, drawn otherwise, or taken away; so of the others. */
    BUNKER_DRAWN,
    WATER_DRAWN,
    FALL_OFF_DRAWN,
    /** What was drawn last about a green is again as it was before. */
    DRAWING_TAKEN_BACK,
    /** It was said anew from where a green is played to. */
    PLAY_TURNED
}
