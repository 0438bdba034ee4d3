package org.cupwright.app.desk.history;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.FactStore.Arrival;
import org.cupwright.app.storage.ResultCache;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Fact;

/**
 * What the logbook came to up to any moment, without folding all of it each time: states at some midnights are kept,
 * and the fold goes on from the newest one that still holds. One holds until a fact arrives that happened before its
 * midnight, or corrects such a fact.
 */
public final class Checkpoints<S> {
    /**
     * So many starts of months are kept, and before them starts of years: who writes things down late does so by weeks
     * (our choice).
     */
    private static final int MONTHS = 14;

    private final FoldedFacts<S> folded;
    private final FactStore store;
    private final ResultCache cache;
    private final String courseId;
    private final ZoneId zone;
    private final FactsInEffect facts;

    public Checkpoints(FoldedFacts<S> folded, Stores stores, Course course) {
        this(folded, stores.facts(), stores.cache(), course.id(), course.frame().zone());
    }

    public Checkpoints(FoldedFacts<S> folded, FactStore store, ResultCache cache, String courseId, ZoneId zone) {
        this.folded = folded;
        this.store = store;
        this.cache = cache;
        this.courseId = courseId;
        this.zone = zone;
        this.facts = new FactsInEffect(store, courseId);
    }

    /** What everything that happened before a moment comes to. */
    public S before(Instant moment) {
        Optional<Arrival> now = store.lastArrival();
        Optional<Instant> first = store.first(courseId).filter(earliest -> earliest.isBefore(moment));
        if (now.isEmpty() || first.isEmpty()) {
            return folded.nothing();
        }
        List<Instant> midnights = midnights(first.get(), moment);
        int last = midnights.size() - 1;
        Optional<S> known = Optional.empty();
        while (known.isEmpty() && last >= 0) {
            known = find(midnights.get(last));
            last -= known.isPresent() ? 0 : 1;
        }
        S state = known.orElseGet(folded::nothing);
        Instant upTo = last < 0 ? first.get() : midnights.get(last);
        for (Instant midnight : midnights.subList(last + 1, midnights.size())) {
            state = folded(state, upTo, midnight);
            keep(midnight, now.get(), state);
            upTo = midnight;
        }
        return folded(state, upTo, moment);
    }

    /** A month at a time, as the facts of years would fill the memory; one month is taken in while the next is read. */
    private S folded(S before, Instant from, Instant upTo) {
        S state = before;
        List<Fact> read = List.of();
        Instant at = from;
        while (at.isBefore(upTo)) {
            Instant next = earlier(nextMonth(at), upTo);
            S known = state;
            List<Fact> last = read;
            ForkJoinTask<S> taken = ForkJoinPool.commonPool().submit(() -> folded.with(known, last));
            read = folded.between(facts, at, next);
            state = taken.join();
            at = next;
        }
        return folded.with(state, read);
    }

    private Instant nextMonth(Instant moment) {
        return LocalDate.ofInstant(moment, zone)
                .withDayOfMonth(1)
                .plusMonths(1)
                .atStartOfDay(zone)
                .toInstant();
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }

    private Optional<S> find(Instant midnight) {
        String what = Checkpoint.what(folded, courseId, zone, midnight);
        return cache.find(Checkpoint.name(what))
                .flatMap(bytes -> Checkpoint.read(folded, bytes))
                .filter(kept -> kept.what().equals(what))
                .filter(kept -> store.isUnchangedBefore(courseId, midnight, kept.arrival()))
                .map(Checkpoint::state);
    }

    /** What lacks an entry that is damaged is not kept: the entry counts again when it is mended. */
    private void keep(Instant midnight, Arrival now, S state) {
        if (!store.leftOut().isEmpty()) {
            return;
        }
        String what = Checkpoint.what(folded, courseId, zone, midnight);
        cache.keep(Checkpoint.name(what), new Checkpoint<>(what, now, state).write(folded));
    }

    /** The midnights worth keeping between two moments: starts of years, of the last months, and of the day before. */
    private List<Instant> midnights(Instant after, Instant upTo) {
        LocalDate last = LocalDate.ofInstant(upTo, zone);
        LocalDate monthly = last.withDayOfMonth(1).minusMonths(MONTHS - 1L);
        List<LocalDate> days = new ArrayList<>();
        LocalDate day = LocalDate.ofInstant(after, zone).withDayOfYear(1).plusYears(1);
        for (; day.isBefore(monthly); day = day.plusYears(1)) {
            days.add(day);
        }
        for (day = monthly; !day.isAfter(last); day = day.plusMonths(1)) {
            days.add(day);
        }
        days.add(last.minusDays(1));
        return days.stream()
                .map(date -> date.atStartOfDay(zone).toInstant())
                .filter(midnight -> midnight.isAfter(after) && !midnight.isAfter(upTo))
                .sorted()
                .distinct()
                .toList();
    }
}
