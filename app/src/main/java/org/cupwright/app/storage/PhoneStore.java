package org.cupwright.app.storage;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * Phones that the office knows again, and the digits by which people are told apart on those that several share. What
 * counts no more is taken away. Whoever is written anew among the {@link PeopleStore people} is signed in on no phone
 * any more, and who may sign in no more has no digits.
 */
public interface PhoneStore {
    /** In the order in which they were made known. */
    List<KeptPhone> all();

    Optional<KeptPhone> find(UUID id);

    void add(KeptPhone phone);

    /** Writes what is kept of a phone anew. */
    void replace(KeptPhone phone);

    /** Takes a phone away, with the wrong digits that were typed on it. */
    void end(UUID id);

    /** In the order in which they were first chosen. */
    List<KeptPin> pins();

    Optional<KeptPin> pin(UUID account);

    /** In place of those that the person had. */
    void set(KeptPin pin);

    /** Writes down that wrong digits were typed; answers how many wrong ones of all names stand on the phone now. */
    int wrong(UUID phone, UUID account, Instant now);

    /** Forgets the wrong ones of a name. */
    void right(UUID phone, UUID account);
}
