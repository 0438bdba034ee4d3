package org.cupwright.app.storage;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * Those who may sign in, and the codes by which they come to. Rows are written anew where something changes: an old
 * password's hash and an erased name must not stay. What happened to whom is in the {@link AuditStore}.
 */
public interface PeopleStore {
    /** Everybody who ever had an account, in the order in which they came. */
    List<KeptPerson> all();

    Optional<KeptPerson> find(UUID id);

    /** Whoever has a name, with whatever capitals. */
    Optional<KeptPerson> named(String name);

    void add(KeptPerson person);

    /** Writes what is kept of a person anew, who is then signed in on no phone ({@link PhoneStore}). */
    void replace(KeptPerson person);

    /**
     * Replaces a person's name by a neutral one wherever it stands as a name: here, in the audit trail, in the logbook,
     * in plans, rounds, level readings, drawn ground and records of training. Codes for that name are taken away.
     * Answers in how many rows it stood.
     *
     * @throws org.cupwright.message.Problem if a row that may have the name is damaged; nothing is changed then
     */
    int erase(KeptPerson person, String neutral);

    void add(KeptCode code);

    /** The code of a hash, used or not. */
    Optional<KeptCode> code(String hash);

    /** Those that were not used and count at a moment. */
    List<KeptCode> openCodes(Instant now);

    /** Writes down that a code was used, or counts no more. */
    void replace(KeptCode code);
}
