package org.cupwright.green;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/**
 * A value that is worked out when it is first asked for, once, however many threads ask. Work that fails is done anew
 * for whoever asks next. The work must not ask for its own value.
 *
 * <p>Not a lock: work that is itself spread over the threads of a parallel stream needs them, and a thread of theirs
 * that waits at a lock for it counts as busy, so that nobody is woken to take its place. On two processors, which have
 * one such thread, all would wait for ever. A thread that waits for a {@link CompletableFuture} has another one take
 * its place.
 */
public final class Once<T> {
    private final Supplier<? extends T> work;
    private final AtomicReference<CompletableFuture<T>> begun = new AtomicReference<>();

    public Once(Supplier<? extends T> work) {
        this.work = work;
    }

    /** A value that is there already. */
    public static <T> Once<T> known(T value) {
        Once<T> once = new Once<>(() -> value);
        once.value();
        return once;
    }

    /** The value, from whoever asked first. */
    public T value() {
        CompletableFuture<T> own = new CompletableFuture<>();
        CompletableFuture<T> first = begun.compareAndExchange(null, own);
        return first == null ? workedOut(own) : awaited(first);
    }

    private T workedOut(CompletableFuture<T> own) {
        try {
            T value = work.get();
            own.complete(value);
            return value;
        } catch (RuntimeException | Error failed) {
            begun.set(null);
            own.completeExceptionally(failed);
            throw failed;
        }
    }

    private T awaited(CompletableFuture<T> first) {
        try {
            return first.join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw failed;
        }
    }
}
