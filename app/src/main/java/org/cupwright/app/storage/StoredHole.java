package org.cupwright.app.storage;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.message.Message;

/**
 * Where one hole goes on a day, and why.
 *
 * @param hole the hole
 * @param position the position with every rule
 * @param locked whether somebody fixed it beforehand
 * @param askedBy who that was; empty where nobody did, or a plan of an earlier version does not say
 * @param reasons why there, most telling first
 * @param alternative the next best position of another kind, and what would have become worse
 * @param concessions what was set aside on the green because nothing passed, and what each step bought
 * @param since the day on which the hole was cut, where it stays; empty where it is changed on the day
 * @param area the number or letter of the course's own area it lies in, where the day's scheme names one
 */
public record StoredHole(
        String hole,
        JudgedPosition position,
        boolean locked,
        Optional<String> askedBy,
        List<Message> reasons,
        Optional<Other> alternative,
        List<ConcessionStep> concessions,
        Optional<LocalDate> since,
        Optional<String> area) {
    /** A position that was not taken, and why not. */
    public record Other(JudgedPosition position, List<Message> whyNot) {}

    public StoredHole {
        reasons = List.copyOf(reasons);
        concessions = List.copyOf(concessions);
    }

    /** Whether it is where it was the day before, so that nobody cuts there. */
    public boolean stays() {
        return since.isPresent();
    }
}
