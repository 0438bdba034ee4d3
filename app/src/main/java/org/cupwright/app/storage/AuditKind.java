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
    /** Somebody stays signed in on a phone for a season. */
    PHONE_KEPT,
    /** That is over: somebody ended it. */
    PHONE_ENDED,
    /** It is over because the phone showed what it had shown before: two have what one should. */
    PHONE_COPIED,
    /** A phone is nobody's from now on: several write on it, each by a PIN. */
    PHONE_SHARED,
    /** It is so no more: it was ended, or too many wrong PINs were typed. */
    SHARED_PHONE_ENDED,
    SHARED_PHONE_CLOSED,
    /** Somebody has a PIN, or another one. */
    PIN_SET,
    SIGNED_IN_BY_PIN,
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
    PLAY_TURNED,
    /** Somebody can do a step of the hand work alone. */
    SIGNED_OFF,
    /** A sign-off counts no more. */
    SIGN_OFF_WITHDRAWN,
    /** A sign-off, or its end, was of another day, or should not have been written. */
    TRAINING_CORRECTED,
    /** Somebody may sign others off. */
    TRAINER_NAMED,
    /** Somebody may sign nobody off any more. */
    TRAINER_ENDED;

    /** Whether what a line of it is about is a person's name, also where that person has no account. */
    public boolean isAboutAPerson() {
        return switch (this) {
            case PERSON_INVITED, SIGNED_OFF, SIGN_OFF_WITHDRAWN, TRAINING_CORRECTED -> true;
            default -> false; // of others the account stands in the line, where it is about one
        };
    }
}
