package org.cupwright.app.desk.log;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.cupwright.app.storage.FactStore;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;

/**
 * The facts of a course as they count, corrections taken in, in the order in which they happened: a stretch of time, or
 * some kinds of them. The same as if the whole logbook were read and the rest left out, in a time that does not grow
 * with it.
 */
public record FactsInEffect(FactStore store, String courseId) {
    /** What happened from one moment on and before another. */
    public List<Fact> between(Instant from, Instant before) {
        return of(store.between(courseId, from, before), from, before);
    }

    /**
     * What happened from one moment on and before another, of some kinds.
     *
     * @param kinds names of payloads ({@link org.cupwright.cupchange.PayloadKinds})
     */
    public List<Fact> ofKinds(Set<String> kinds, Instant from, Instant before) {
        return of(store.ofKinds(courseId, kinds, from, before), from, before).stream()
                .filter(fact -> kinds.contains(fact.payload().kind()))
                .toList();
    }

    /** Of facts as the store gives them, what counts from one moment on and before another. */
    public static List<Fact> of(List<Fact> recorded, Instant from, Instant before) {
        return Logbook.of(recorded).facts().stream()
                .filter(fact ->
                        !fact.happenedAt().isBefore(from) && fact.happenedAt().isBefore(before))
                .toList();
    }
}
