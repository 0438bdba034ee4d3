package org.cupwright.app.visit;

import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.texts.Door;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;

/**
 * What all pages share.
 *
 * @param folders opens the data folder for one request
 * @param clock for today and for when something was recorded
 * @param version of the program, kept with the plans it makes
 * @param demo whether it is open to whoever sits at this machine, on the invented course
 */
public record OfficeHouse(Supplier<DataFolder> folders, Clock clock, String version, boolean demo) {
    /** A session of nobody, who comes with an address alone. */
    public Session ofNobody(DataFolder folder) {
        return new Session(
                folder,
                new Person("", Role.READER),
                new CourseChoice(Optional.empty()),
                clock,
                UUID::randomUUID,
                new Speech(Door.PAGES, "en", UnitSystem.PACES, Paces.STANDARD_METRES));
    }
}
