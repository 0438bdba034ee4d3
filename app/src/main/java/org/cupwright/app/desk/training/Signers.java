package org.cupwright.app.desk.training;

import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.NameKey;
import org.cupwright.message.Message.Name;

/** Who may say what others can do: a superintendent, or a changer who was named a trainer. */
record Signers(Competences competences) {
    boolean may(Person person) {
        return person.role() == Role.SUPERINTENDENT
                || person.role() == Role.CHANGER
                        && person.id().filter(competences::isTrainer).isPresent();
    }

    /**
     * Nobody but a superintendent speaks of himself: in a small club there is nobody else.
     *
     * @throws org.cupwright.message.Problem if the person may not, or not of that one
     */
    void check(Person person, String about) {
        if (!may(person)) {
            throw TrainingProblems.of("notTrainer", "person", person.name(), new Name(person.name()));
        }
        if (person.role() != Role.SUPERINTENDENT && NameKey.of(person.name()).equals(NameKey.of(about))) {
            throw TrainingProblems.of("ownself", "name", about, new Name(about));
        }
    }
}
