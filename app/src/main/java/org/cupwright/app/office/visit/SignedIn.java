package org.cupwright.app.office.visit;

import java.io.Serializable;
import java.util.UUID;
import org.cupwright.app.session.Role;

/**
 * Somebody who is signed in.
 *
 * @param id the account
 * @param name as it stands beside what that person says
 * @param role what the person may do
 */
public record SignedIn(UUID id, String name, Role role) implements Serializable {
    @Override
    public String toString() {
        return id.toString(); // logs are without names
    }
}
