package org.cupwright.app.desk;

import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.texts.Door;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;

/** Sessions of an invented person. */
public final class MadeSession {
    private MadeSession() {}

    /** Somebody who may do everything. */
    public static Session in(DataFolder folder, Clock clock) {
        return in(folder, clock, Role.SUPERINTENDENT);
    }

    public static Session in(DataFolder folder, Clock clock, Role role) {
        return new Session(
                folder,
                new Person("Ida", role),
                new CourseChoice(Optional.empty()),
                clock,
                UUID::randomUUID,
                new Speech(Door.COMMANDS, "en", UnitSystem.METRIC, Paces.STANDARD_METRES));
    }
}
