package org.cupwright.app.storage;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.round.StartType;

/** What was said of the rounds of days, each with every version that there ever was. */
public interface RoundStore {
    /** The newest of a day. */
    Optional<DayRound> find(String courseId, LocalDate day);

    /** The newest of the last day before another that began so, of those on which it was said who has which holes. */
    Optional<DayRound> lastGiven(String courseId, LocalDate before, StartType type);

    void add(String courseId, LocalDate day, DayRound round);
}
