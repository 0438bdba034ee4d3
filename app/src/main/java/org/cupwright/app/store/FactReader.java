package org.cupwright.app.store;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.cupchange.Fact;

/** Reads facts from their documents on other threads while the next documents come from the database. */
final class FactReader {
    /** So many documents are some milliseconds of work (our choice). */
    private static final int CHUNK = 500;

    private final List<ForkJoinTask<List<Fact>>> begun = new ArrayList<>();
    private List<byte[]> next = new ArrayList<>(CHUNK);

    void take(byte[] document) {
        next.add(document);
        if (next.size() == CHUNK) {
            begin();
        }
    }

    private void begin() {
        List<byte[]> documents = next;
        next = new ArrayList<>(CHUNK);
        begun.add(ForkJoinPool.commonPool()
                .submit(() -> documents.stream().map(FactJson::read).toList()));
    }

    /** All that were taken, in the order in which they happened. */
    List<Fact> facts() {
        begin();
        List<Fact> facts = new ArrayList<>(CHUNK * begun.size());
        begun.forEach(chunk -> facts.addAll(chunk.join()));
        facts.sort(Fact.ORDER);
        return facts;
    }
}
