package org.cupwright.app.desk.first;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.desk.log.OddThings;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Hole;
import org.cupwright.cupchange.CrewNote.NoteToNext;
import org.cupwright.cupchange.CrewNote.Severity;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.GroundNote.Frost;
import org.cupwright.cupchange.PayloadKinds;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Moment;
import org.cupwright.message.Message.Name;
import org.cupwright.turf.state.GreenState;
import org.cupwright.turf.today.RecheckList;
import org.cupwright.turf.today.TurfDay;

/**
 * What whoever goes out has to know first: what keeps people off the greens, what cannot wait, what the one before left
 * word of. The gravest stands first. What concerns one green is for {@link GreenNotices}.
 */
public final class KnowFirst {
    /** A note counts on the day it was written and the day after (our choice): then its reader has been there. */
    private static final int NOTES_DAYS = 1;

    private static final Set<String> FROST = PayloadKinds.names(Frost.class);
    private static final Set<String> NOTES = PayloadKinds.names(NoteToNext.class);

    private final CourseDay day;
    private final ZoneId zone;
    private final List<Notice> notices = new ArrayList<>();

    private KnowFirst(CourseDay day) {
        this.day = day;
        this.zone = day.log().zone();
    }

    /** The notices of a day, the gravest first; never none, as the rule about thunder always holds. */
    public static List<Notice> of(Stores stores, CourseDay day, TurfDay turf, LocalDate today) {
        KnowFirst first = new KnowFirst(day);
        FactsInEffect facts = new FactsInEffect(stores.facts(), day.course().id());
        first.reentry(turf);
        first.frost(facts);
        first.odd(stores, today);
        first.disease(turf);
        first.notes(facts);
        first.add(Notice.Kind.LIGHTNING, Message.of("first.lightning"));
        return List.copyOf(first.notices);
    }

    /** Greens of one label's time together, the latest time first. */
    private void reentry(TurfDay turf) {
        Map<Instant, List<String>> byTime = new TreeMap<>();
        for (Hole hole : day.course().holes()) {
            Optional<Instant> from = turf.state().reentryFrom(hole.id());
            from.filter(time -> time.isAfter(day.log().start()))
                    .ifPresent(time -> byTime.computeIfAbsent(time, at -> new ArrayList<>())
                            .add(hole.id()));
        }
        byTime.forEach((time, holes) -> add(
                Notice.Kind.REENTRY,
                holes.size() == day.course().holes().size()
                        ? Message.of("first.reentry.all", new Moment(time, zone))
                        : Message.of("first.reentry", greens(holes), new Moment(time, zone))));
    }

    /** Of the day alone: what was seen yesterday says nothing of this morning. */
    private void frost(FactsInEffect facts) {
        List<Fact> today = facts.ofKinds(FROST, day.log().start(), day.log().end());
        boolean onGreens =
                !today.isEmpty() && ((Frost) today.get(today.size() - 1).payload()).onGreens();
        if (onGreens) {
            add(Notice.Kind.FROST, Message.of("first.frost"));
        }
    }

    private void odd(Stores stores, LocalDate today) {
        OddThings.standing(stores.facts(), day.course(), day.date(), today).stream()
                .filter(thing -> thing.odd().severity() == Severity.NOW)
                .forEach(thing -> add(
                        Notice.Kind.ODD_NOW,
                        said(
                                thing.fact(),
                                "first.odd",
                                "first.odd.green",
                                thing.odd().text())));
    }

    private void disease(TurfDay turf) {
        List<String> diseased = new RecheckList(turf)
                .hygieneOrder(day.course().holes().stream().map(Hole::id).toList()).stream()
                        .map(turf.state()::green)
                        .filter(green -> green.diseasedOn(turf.day()))
                        .map(GreenState::hole)
                        .toList();
        if (!diseased.isEmpty()) {
            add(Notice.Kind.DISEASE, Message.of("first.disease", greens(diseased)));
        }
    }

    private void notes(FactsInEffect facts) {
        LocalDate since = day.date().minusDays(NOTES_DAYS);
        facts.ofKinds(NOTES, since.atStartOfDay(zone).toInstant(), day.log().end()).stream()
                .map(fact -> said(fact, "first.note", "first.note.green", ((NoteToNext) fact.payload()).text()))
                .forEach(says -> add(Notice.Kind.NOTE, says));
    }

    /** What a person wrote, with who it was and when, and at which green if it is about one. */
    private Message said(Fact fact, String key, String keyAtAGreen, String text) {
        Name by = new Name(fact.person());
        Moment when = new Moment(fact.happenedAt(), zone);
        return fact.hole()
                .map(hole -> Message.of(keyAtAGreen, new Name(text), by, when, new Name(hole)))
                .orElseGet(() -> Message.of(key, new Name(text), by, when));
    }

    private static Name greens(List<String> holes) {
        return new Name(String.join(", ", holes));
    }

    private void add(Notice.Kind kind, Message says) {
        notices.add(Notice.before(kind, says));
    }
}
