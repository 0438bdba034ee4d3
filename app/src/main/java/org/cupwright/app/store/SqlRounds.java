package org.cupwright.app.store;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.DayRound;
import org.cupwright.app.storage.RoundStore;
import org.cupwright.policy.EnumNames;
import org.cupwright.round.StartType;

record SqlRounds(Sql sql, Clock clock) implements RoundStore {
    /** How many days are looked at for what was said last: our choice, more than a season has with one start. */
    private static final int DAYS_BACK = 60;

    @Override
    public Optional<DayRound> find(String courseId, LocalDate day) {
        return rounds("WHERE course = ? AND day = ? ORDER BY id DESC LIMIT 1", courseId, day.toString()).stream()
                .findFirst();
    }

    @Override
    public Optional<DayRound> lastGiven(String courseId, LocalDate before, StartType type) {
        return rounds(
                        "WHERE id IN (SELECT max(id) FROM round_version WHERE course = ? AND day < ? GROUP BY day)"
                                + " AND start_type = ? ORDER BY day DESC LIMIT " + DAYS_BACK,
                        courseId,
                        before.toString(),
                        EnumNames.lowerCamel(type))
                .stream()
                .filter(round -> round.given().isPresent())
                .findFirst();
    }

    private List<DayRound> rounds(String which, Object... arguments) {
        return sql.checked(
                row -> Documents.read(row.getString("document"), DayRound.class), "round_version", which, arguments);
    }

    @Override
    public void add(String courseId, LocalDate day, DayRound round) {
        sql.add(
                "round_version",
                new CheckedRow()
                        .with("course", courseId)
                        .with("day", day.toString())
                        .with("start_type", EnumNames.lowerCamel(round.type()))
                        .with("recorded_at", clock.instant().toString())
                        .with("document", Documents.write(round)));
    }
}
