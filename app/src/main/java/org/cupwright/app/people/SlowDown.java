package org.cupwright.app.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.storage.NameKey;

/**
 * Lets those wait who try passwords: after some wrong tries for a name or from an address each further one is answered
 * only after a while, twice as long as the one before. Kept in memory: a new start forgets it. All figures are our
 * choice.
 */
public final class SlowDown {
    static final int TRIES_OF_NAME = 5;
    static final int TRIES_OF_ADDRESS = 20;
    static final Duration LONGEST = Duration.ofMinutes(15);
    static final Duration FORGOTTEN = Duration.ofHours(24);
    /** So many names and addresses are remembered; of more, those that were tried last. */
    static final int MOST = 10_000;

    private static final int LONGEST_NAME = 200;

    private final Clock clock;
    private final Map<String, Tries> names = new LinkedHashMap<>();
    private final Map<String, Tries> addresses = new LinkedHashMap<>();

    public SlowDown(Clock clock) {
        this.clock = clock;
    }

    /**
     * Wrong tries, and when the last of them was. A try counts as wrong from when it begins, so that many at once do
     * not slip through.
     */
    private record Tries(int wrong, Instant last) {
        Duration wait(int free, Instant now) {
            if (wrong < free) {
                return Duration.ZERO;
            }
            long seconds = 1L << Math.min(wrong - free, 10);
            Duration pause = Duration.ofSeconds(Math.min(seconds, LONGEST.toSeconds()));
            Duration left = Duration.between(now, last.plus(pause));
            return left.isNegative() ? Duration.ZERO : left;
        }
    }

    /**
     * Begins a try, which counts as wrong until it succeeded; or answers how long it has to wait, and then counts
     * nothing.
     */
    synchronized Optional<Duration> begin(String name, String address) {
        Instant now = clock.instant();
        forget(names, now);
        forget(addresses, now);
        String key = key(name);
        Duration ofName = wait(names, key, TRIES_OF_NAME, now);
        Duration ofAddress = wait(addresses, AddressPart.of(address), TRIES_OF_ADDRESS, now);
        Duration longer = ofName.compareTo(ofAddress) > 0 ? ofName : ofAddress;
        if (!longer.isZero()) {
            return Optional.of(longer);
        }
        count(names, key, now);
        count(addresses, AddressPart.of(address), now);
        return Optional.empty();
    }

    /** The try was right: the name's wrong ones are forgotten, the address has one fewer. */
    synchronized void succeeded(String name, String address) {
        names.remove(key(name));
        addresses.computeIfPresent(AddressPart.of(address), (key, tries) -> new Tries(tries.wrong() - 1, tries.last()));
    }

    /** Whether the name has just used up what it may try without waiting. */
    synchronized boolean hasJustBegunToWait(String name) {
        Tries tries = names.get(key(name));
        return tries != null && tries.wrong() == TRIES_OF_NAME;
    }

    /** What is no name any more is cut off: what is remembered has bounds. */
    private static String key(String name) {
        return NameKey.of(name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME) : name);
    }

    private static Duration wait(Map<String, Tries> all, String key, int free, Instant now) {
        Tries tries = all.get(key);
        return tries == null ? Duration.ZERO : tries.wait(free, now);
    }

    /** Whatever was tried last stands last. */
    private static void count(Map<String, Tries> all, String key, Instant now) {
        Tries before = all.remove(key);
        all.put(key, new Tries(before == null ? 1 : before.wrong() + 1, now));
    }

    private static void forget(Map<String, Tries> all, Instant now) {
        Iterator<Tries> oldest = all.values().iterator();
        while (oldest.hasNext()) {
            Tries tries = oldest.next();
            if (all.size() < MOST && tries.last().plus(FORGOTTEN).isAfter(now)) {
                return;
            }
            oldest.remove();
        }
    }
}
