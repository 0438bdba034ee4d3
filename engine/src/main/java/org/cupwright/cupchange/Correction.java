package org.cupwright.cupchange;

import java.util.Optional;
import java.util.UUID;
import org.cupwright.message.Message.Name;

/**
 * What an earlier fact should have said, or that it should not have been there. It counts from when that fact happened.
 *
 * <p>A correction whose envelope names a hole moves the fact to that hole; one that names none leaves the hole as it
 * was. A wrong time is put right by withdrawing the fact and recording it anew. How corrections of corrections, and
 * several of one fact, are resolved is said at {@link Corrections}.
 *
 * @param of the fact it corrects
 * @param replacement what the fact should have said; empty withdraws it
 */
public record Correction(UUID of, Optional<Payload> replacement) implements Payload {
    public Correction {
        if (replacement.isPresent() && replacement.get() instanceof Correction) {
            throw new ImpossibleFact("correctionOfCorrection", new Name(of.toString()));
        }
    }

    public static Correction to(UUID fact, Payload replacement) {
        return new Correction(fact, Optional.of(replacement));
    }

    public static Correction withdrawing(UUID fact) {
        return new Correction(fact, Optional.empty());
    }

    @Override
    public boolean needsHole() {
        return false;
    }
}
