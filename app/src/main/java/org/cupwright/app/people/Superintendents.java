package org.cupwright.app.people;

import org.cupwright.app.people.Account.Roles;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.PeopleStore;
import org.cupwright.message.Message.Name;

/** Those who may do everything; one of them has to stay. */
final class Superintendents {
    private Superintendents() {}

    static long active(PeopleStore people) {
        return people.all().stream().filter(Superintendents::isOne).count();
    }

    /** @throws org.cupwright.message.Problem if nobody would be left who may let people in */
    static void keepOne(PeopleStore people, KeptPerson without) {
        if (isOne(without) && active(people) == 1) {
            throw PeopleProblems.of("lastSuperintendent", "name", without.name(), new Name(without.name()));
        }
    }

    private static boolean isOne(KeptPerson person) {
        return person.active() && person.role().equals(Roles.name(Role.SUPERINTENDENT));
    }
}
