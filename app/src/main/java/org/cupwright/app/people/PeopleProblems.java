package org.cupwright.app.people;

import org.cupwright.message.Message;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Problem;

/** What keeps people from signing in or from being changed. No value of a password or a code stands in any of them. */
final class PeopleProblems {
    private PeopleProblems() {}

    /** About a field, without its value. */
    static Problem of(String name, String field, Argument... about) {
        return of(name, field, "", about);
    }

    static Problem of(String name, String field, String value, Argument... about) {
        return Problem.of(
                Message.of("people.problem." + name, about), field, value, Message.of("people.try." + name, about));
    }
}
