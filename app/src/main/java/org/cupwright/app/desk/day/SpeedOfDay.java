package org.cupwright.app.desk.day;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.desk.log.DayLog;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.storage.DaySpeed.Added;
import org.cupwright.app.storage.DaySpeed.From;
import org.cupwright.app.storage.DaySpeed.Reading;
import org.cupwright.cupchange.DayReading.SpeedRead;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.PayloadKinds;
import org.cupwright.holelocation.FastestSpeed;
import org.cupwright.holelocation.HoldPolicy;
import org.cupwright.holelocation.SpeedPolicy;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.WrittenNumber;

/** The day's fastest green speed: as somebody says, as it was read, as it was read some days ago, as the season's. */
record SpeedOfDay(FactsInEffect facts, DayLog log, Policy policy) {
    private static final Set<String> READINGS = PayloadKinds.names(SpeedRead.class);

    /** @throws Problem for a speed that no green has */
    DaySpeed or(Optional<DaySpeed> said) {
        said.ifPresent(speed -> check(speed.feet()));
        return said.or(this::read)
                .or(this::carried)
                .orElseGet(() -> DaySpeed.of(policy.get(HoldPolicy.SEASON_SPEED_FEET), From.SEASON));
    }

    private Optional<DaySpeed> read() {
        return log.reading().map(fact -> speed(fact, From.READ));
    }

    /** The last reading of the days before, as long as one is believed. */
    private Optional<DaySpeed> carried() {
        LocalDate from = log.day().minusDays(policy.get(SpeedPolicy.CARRIED_DAYS));
        Instant start = from.atStartOfDay(log.zone()).toInstant();
        return facts.ofKinds(READINGS, start, log.start()).stream()
                .reduce((earlier, later) -> later)
                .map(fact -> speed(fact, From.CARRIED));
    }

    /** With what was done to the greens on the day asked about: what was done before it has worn off by then. */
    private DaySpeed speed(Fact fact, From from) {
        FastestSpeed fastest = log.fastestAfter(fact);
        ZonedDateTime at = fact.happenedAt().atZone(log.zone());
        LocalDate day = at.toLocalDate();
        Optional<LocalTime> time = fact.happenedAt().equals(DayLog.morning(day, log.zone()))
                ? Optional.empty()
                : Optional.of(at.toLocalTime().truncatedTo(ChronoUnit.MINUTES));
        List<Added> added = new ArrayList<>();
        fastest.added(policy).forEach((by, feet) -> added.add(new Added(by, feet)));
        double read = fastest.reading().orElseThrow().feet();
        return new DaySpeed(fastest.by(policy).feet(), from, Optional.of(new Reading(read, day, time)), added);
    }

    private static void check(double feet) {
        if (!(feet >= GreenSpeed.SLOWEST_FEET && feet <= GreenSpeed.FASTEST_FEET)) {
            throw Problem.of(
                    Message.of("problem.speed", new Name(WrittenNumber.of(feet))),
                    "speed",
                    WrittenNumber.of(feet),
                    Message.of(
                            "try.speed",
                            new Name(WrittenNumber.of(GreenSpeed.SLOWEST_FEET)),
                            new Name(WrittenNumber.of(GreenSpeed.FASTEST_FEET))));
        }
    }
}
