package org.cupwright.app.desk.entry.table;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.cupwright.app.desk.entry.FactQuestions;
import org.cupwright.app.desk.log.DayLog;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.storage.DayRange;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Fact;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.Line;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** The lines of a table beside what the logbook holds: what is new, what is there, and what is asked about. */
final class TableIntake {
    private final Stores stores;
    private final Course course;
    private final TableEntry entries;
    private final boolean sure;
    private final Map<UUID, Fact> counting = new HashMap<>();
    private final Map<UUID, Long> lines = new HashMap<>();
    private final Map<LocalDate, DayLog> days = new HashMap<>();
    private final Map<String, Fact> changes = new HashMap<>();
    private final List<Fact> added = new ArrayList<>();
    private final Set<Message> remarks = new LinkedHashSet<>();
    private int known;

    TableIntake(Stores stores, TableEntry entries, boolean sure) {
        this.stores = stores;
        this.course = entries.course();
        this.entries = entries;
        this.sure = sure;
        new FactsInEffect(stores.facts(), course.id())
                .ofKinds(Set.of(entries.columns().form().kind()), FactStore.LONG_AGO, FactStore.LONG_HENCE)
                .forEach(fact -> counting.put(fact.id(), fact));
    }

    /** Takes a line; what another said already is refused. */
    Fact take(Line line, Layout layout) {
        TableEntry.Made made = entries.of(layout.row(line));
        Fact fact = made.fact();
        Long before = lines.get(fact.id());
        if (before != null) {
            throw Problem.of(Message.of("table.not.twice", new Count(before)), Message.of("table.try.twice"));
        }
        if (isKnown(made)) {
            known++;
        } else {
            DayRange.check(fact, entries.now());
            if (!sure) {
                ask(fact);
            }
            added.add(fact);
            remarks.addAll(made.remarks());
            if (DayLog.isChange(fact.payload())) {
                changes.putIfAbsent(change(fact), fact);
            }
        }
        lines.put(fact.id(), line.number());
        return fact;
    }

    /** Whether the logbook has the entry, as it was recorded or as it counts. */
    private boolean isKnown(TableEntry.Made made) {
        Fact fact = made.fact();
        Optional<Fact> recorded = stores.facts().find(fact.id());
        if (recorded.isEmpty()) {
            return false;
        }
        Fact counts = counting.getOrDefault(fact.id(), recorded.get());
        if (made.named() && !saysTheSame(fact, recorded.get()) && !saysTheSame(fact, counts)) {
            Name id = new Name(fact.id().toString().substring(0, 8));
            throw Problem.of(Message.of("table.not.different", id), Message.of("table.try.different", id));
        }
        return true;
    }

    private static boolean saysTheSame(Fact one, Fact other) {
        return one.course().equals(other.course())
                && one.happenedAt().equals(other.happenedAt())
                && one.hole().equals(other.hole())
                && one.payload().equals(other.payload());
    }

    private void ask(Fact fact) {
        Optional<Message> question =
                FactQuestions.first(course, fact).or(() -> FactQuestions.ahead(fact, course, entries.now()));
        if (question.isEmpty() && DayLog.isChange(fact.payload())) {
            question = changedBefore(fact)
                    .map(before -> Message.of(
                            "problem.log.again", new Name(fact.hole().orElse("")), new Name(before.person())));
        }
        if (question.isPresent()) {
            throw Problem.of(question.get(), Message.of("table.try.question"));
        }
    }

    private Optional<Fact> changedBefore(Fact fact) {
        DayLog entries = days.computeIfAbsent(day(fact), day -> DayLog.of(stores.facts(), course, day));
        return Optional.ofNullable(changes.get(change(fact)))
                .or(() -> fact.hole().flatMap(entries::change));
    }

    private LocalDate day(Fact fact) {
        return LocalDate.ofInstant(fact.happenedAt(), course.frame().zone());
    }

    private String change(Fact fact) {
        return day(fact) + " " + fact.hole().orElse("");
    }

    /** Entries that the logbook does not have. */
    List<Fact> added() {
        return List.copyOf(added);
    }

    /** How many it has. */
    int known() {
        return known;
    }

    /** How lines were understood, where they could be understood otherwise. */
    List<Message> remarks() {
        return List.copyOf(remarks);
    }
}
