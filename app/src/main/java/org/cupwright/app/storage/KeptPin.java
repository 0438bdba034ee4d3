package org.cupwright.app.storage;

import java.time.Instant;
import java.util.UUID;

/**
 * The digits by which somebody is told from the others on a shared phone.
 *
 * @param account whose they are
 * @param hash what they are checked against; never shown
 * @param setAt when they were chosen
 */
public record KeptPin(UUID account, String hash, Instant setAt) {
    /** Without the hash. */
    @Override
    public String toString() {
        return "KeptPin[" + account + ", " + setAt + "]";
    }
}
