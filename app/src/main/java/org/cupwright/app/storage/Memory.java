package org.cupwright.app.storage;

import java.util.function.Supplier;

/** Remembers what was worked out in this process, for those that stay: a command is over before it asks again. */
public interface Memory {
    /** Remembers nothing. */
    Memory NONE = new Memory() {
        @Override
        public <T> T of(Object key, Supplier<T> work) {
            return work.get();
        }
    };

    /**
     * What the key's work answered the last time, if it is remembered; else it is done now, once, however many ask.
     *
     * @param key holds all that the work rests on, and is compared by value; what it names is always of one type
     */
    <T> T of(Object key, Supplier<T> work);
}
