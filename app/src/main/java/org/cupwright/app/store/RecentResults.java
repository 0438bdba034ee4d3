package org.cupwright.app.store;

import java.lang.ref.SoftReference;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import org.cupwright.app.storage.Memory;

/**
 * Remembers so many results, those asked for last, as long as the memory is not needed for something else. Work that
 * fails is not remembered.
 */
public final class RecentResults implements Memory {
    private final Map<Object, Result> results;

    public RecentResults(int atMost) {
        this.results = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Object, Result> eldest) {
                return size() > atMost;
            }
        };
    }

    /** Work under way, which is held by whoever waits for it; then what it came to, which may be given up. */
    private static final class Result {
        private CompletableFuture<Object> work = new CompletableFuture<>();
        private SoftReference<Object> kept;

        synchronized CompletableFuture<Object> begun() {
            return work;
        }

        synchronized void complete(Object result) {
            kept = new SoftReference<>(result);
            work.complete(result);
            work = null;
        }

        /** What it comes to; empty where that was given up. */
        synchronized Optional<CompletableFuture<Object>> answer() {
            return work == null
                    ? Optional.ofNullable(kept.get()).map(CompletableFuture::completedFuture)
                    : Optional.of(work);
        }
    }

    @Override
    @SuppressWarnings("unchecked") // a key names results of one type
    public <T> T of(Object key, Supplier<T> work) {
        Result own = new Result();
        Optional<CompletableFuture<Object>> known = known(key, own);
        if (known.isPresent()) {
            return (T) answer(known.get());
        }
        CompletableFuture<Object> begun = own.begun();
        try {
            T result = work.get();
            own.complete(result);
            return result;
        } catch (RuntimeException | Error failed) {
            forget(key, own);
            begun.completeExceptionally(failed);
            throw failed;
        }
    }

    /** Who asks for what is not known does the work: others wait for it. */
    private synchronized Optional<CompletableFuture<Object>> known(Object key, Result own) {
        Optional<CompletableFuture<Object>> known =
                Optional.ofNullable(results.get(key)).flatMap(Result::answer);
        if (known.isEmpty()) {
            results.put(key, own);
        }
        return known;
    }

    private synchronized void forget(Object key, Result own) {
        results.remove(key, own);
    }

    private static Object answer(CompletableFuture<Object> known) {
        try {
            return known.join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw failed;
        }
    }
}
