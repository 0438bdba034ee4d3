package org.cupwright.app.session;

import java.util.EnumSet;
import java.util.Set;

/** What somebody is on a course, and with it what that person may do. Who may do what is our choice. */
public enum Role {
    /** Answers for the greens; may do everything. */
    SUPERINTENDENT(EnumSet.allOf(Right.class)),
    /** Plans an event's rounds. */
    OFFICIAL(EnumSet.of(Right.RECORD, Right.PLAN)),
    /** Changes the holes, and reads the level on the way. */
    CHANGER(EnumSet.of(Right.RECORD, Right.SURVEY)),
    /** Reads. */
    READER(EnumSet.noneOf(Right.class));

    private final Set<Right> rights;

    Role(Set<Right> rights) {
        this.rights = Set.copyOf(rights);
    }

    public boolean may(Right right) {
        return rights.contains(right);
    }

    /**
     * What somebody is who was known again by a phone, and typed no password since: a superintendent may do there what
     * a changer may. Everybody else stays what they are.
     */
    public Role onAPhone() {
        return this == SUPERINTENDENT ? CHANGER : this;
    }
}
