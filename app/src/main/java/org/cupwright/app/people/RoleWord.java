package org.cupwright.app.people;

import org.cupwright.app.session.Role;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.EnumNames;

/** What a role is called. */
public final class RoleWord {
    private RoleWord() {}

    /** The key of the word. */
    public static String key(Role role) {
        return "people.role." + EnumNames.lowerCamel(role);
    }

    static Translated of(Role role) {
        return new Translated(key(role));
    }
}
