package org.cupwright.app.desk.turf;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.Stores;
import org.cupwright.app.desk.cache.ResultCache;
import org.cupwright.app.desk.log.CountingFacts;
import org.cupwright.app.desk.log.FactStore;
import org.cupwright.app.desk.log.FactStore.Arrival;
import org.cupwright.course.Course;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;

/**
 * What the logbook made of the turf up to any moment, without folding all of it each time: states at some midnights are kept, and the
 * fold goes on from the newest one that still holds. One holds until a fact arrives that happened before its midnight, or corrects such
 * a fact. That the answer is that of the whole fold is the fold's own property ({@link TurfFold}).
 */
public final class TurfHistory {
    /** So many starts of months are kept, and before them starts of years: who writes things down late does so by weeks (our choice). */
    private static final int MONTHS = 14;

    private final FactStore store;
    private final ResultCache cache;
    private final String courseId;
    private final ZoneId zone;
    private final CountingFacts facts;

    public TurfHistory(Stores stores, Course course) {
        this(stores.facts(), stores.cache(), course.id(), course.frame().zone());
    }

    TurfHistory(FactStore store, ResultCache cache, String courseId, ZoneId zone) {
        this.store = store;
        this.cache = cache;
        this.courseId = courseId;
        this.zone = zone;
        this.facts = new CountingFacts(store, courseId);
    }

    /** The turf as everything that happened before a moment has left it. */
    public TurfState before(Instant moment) {
        Optional<Arrival> now = store.lastArrival();
        Optional<Instant> first = store.first(courseId).filter(earliest -> earliest.isBefore(moment));
        if (now.isEmpty() || first.isEmpty()) {
            return TurfState.empty(zone);
        }
        List<Instant> midnights = midnights(first.get(), moment);
        int last = midnights.size() - 1;
        Optional<TurfState> known = Optional.empty();
        while (known.isEmpty() && last >= 0) {
            known = find(midnights.get(last));
            last -= known.isPresent() ? 0 : 1;
        }
        TurfState state = known.orElseGet(() -> TurfState.empty(zone));
        Instant upTo = last < 0 ? first.get() : midnights.get(last);
        for (Instant midnight : midnights.subList(last + 1, midnights.size())) {
            state = TurfFold.fold(state, facts.between(upTo, midnight));
            cache.keep(name(midnight), TurfStateBytes.write(new KeptTurf(courseId, midnight, now.get(), state)));
            upTo = midnight;
        }
        return TurfFold.fold(state, facts.between(upTo, moment));
    }

    private Optional<TurfState> find(Instant midnight) {
        return cache.find(name(midnight))
                .flatMap(TurfStateBytes::read)
                .filter(kept -> kept.isOf(courseId, zone, midnight))
                .filter(kept -> store.isUnchangedBefore(courseId, midnight, kept.arrival()))
                .map(KeptTurf::state);
    }

    private String name(Instant midnight) {
        return KeptTurf.name(courseId, zone, midnight);
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
