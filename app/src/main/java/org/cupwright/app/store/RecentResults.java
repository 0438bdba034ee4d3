package org.cupwright.app.store;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import org.cupwright.app.storage.Memory;

/** Remembers so many results, those asked for last. Work that fails is not remembered. */
public final class RecentResults implements Memory {
    private final Map<Object, CompletableFuture<Object>> results;

    public RecentResults(int atMost) {
        this.results = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Object, CompletableFuture<Object>> eldest) {
                return size() > atMost;
            }
        };
    }

    @Override
    @SuppressWarnings("unchecked") // a key names results of one type
    public <T> T of(Object key, Supplier<T> work) {
        CompletableFuture<Object> own = new CompletableFuture<>();
        CompletableFuture<Object> known = known(key, own);
        if (known != own) {
            return (T) answer(known);
        }
        try {
            T result = work.get();
            own.complete(result);
            return result;
        } catch (RuntimeException | Error failed) {
            forget(key, own);
            own.completeExceptionally(failed);
            throw failed;
        }
    }

    private synchronized CompletableFuture<Object> known(Object key, CompletableFuture<Object> own) {
        CompletableFuture<Object> before = results.get(key);
        if (before == null) {
            results.put(key, own);
            return own;
        }
        return before;
    }

    private synchronized void forget(Object key, CompletableFuture<Object> own) {
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
