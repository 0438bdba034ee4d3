package org.cupwright.app.people;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.people.Account.Roles;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;

/** Who may sign in, and who was invited. */
public record ListPeople(Session session) {
    /**
     * Everybody.
     *
     * @param people all who ever had an account, in the order in which they came
     * @param invited codes that still count
     */
    public record Everybody(List<Account> people, List<Invited> invited) {}

    /**
     * A code that still counts.
     *
     * @param name for whom; empty: the first superintendent
     */
    public record Invited(Optional<String> name, Role role, Instant until) {}

    public Everybody all() {
        return session.look(
                Right.PEOPLE,
                stores -> new Everybody(
                        stores.people().all().stream().map(Account::of).toList(),
                        stores.people().openCodes(session.now()).stream()
                                .map(code -> new Invited(code.name(), Roles.of(code.role()), code.until()))
                                .toList()));
    }
}
