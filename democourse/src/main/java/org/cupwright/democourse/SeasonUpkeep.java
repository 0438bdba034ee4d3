package org.cupwright.democourse;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.OptionalDouble;
import java.util.Random;
import org.cupwright.cupchange.CareWork.Irrigated;
import org.cupwright.cupchange.CareWork.Maintained;
import org.cupwright.cupchange.CareWork.Upkeep;
import org.cupwright.cupchange.DayReading.RoundsPlayed;
import org.cupwright.cupchange.DayReading.SpeedRead;

/** What the greens had done to them all season, how fast they were, and how many played. */
final class SeasonUpkeep {
    private static final LocalDate TINED = LocalDate.of(2026, 3, 16);
    private static final double SLOWEST_FEET = 7.6;
    private static final double FASTEST_FEET = 9.5;

    private final SeasonLog log;
    private final Random random;

    private SeasonUpkeep(SeasonLog log, Random random) {
        this.log = log;
        this.random = random;
    }

    static void write(DemoCourse demo, SeasonLog log) {
        SeasonUpkeep upkeep = new SeasonUpkeep(log, new Random(demo.seed() * 31 + 3));
        int days = 0;
        for (LocalDate day : DemoSeason.days()) {
            upkeep.care(day);
            upkeep.speed(day, (double) days / DemoSeason.DAYS);
            upkeep.rounds(day);
            days++;
        }
    }

    private void care(LocalDate day) {
        boolean inSeason = !day.isBefore(DemoSeason.DAILY_FROM);
        DayOfWeek weekday = day.getDayOfWeek();
        if (inSeason || DemoSeason.holesAreChangedOn(day)) {
            boolean twice = inSeason && weekday == DayOfWeek.SATURDAY;
            done(day, LocalTime.of(5, 20), twice ? Upkeep.MOWN_DOUBLE : Upkeep.MOWN_SINGLE);
        }
        if (inSeason && (weekday == DayOfWeek.TUESDAY || weekday == DayOfWeek.SATURDAY)) {
            done(day, LocalTime.of(6, 50), Upkeep.ROLLED);
        }
        if (day.equals(TINED)) {
            done(day, LocalTime.of(8, 0), Upkeep.HOLLOW_TINED);
            done(day, LocalTime.of(14, 30), Upkeep.TOPDRESSED);
        }
        if (inSeason && day.getDayOfMonth() == 20) {
            done(day, LocalTime.of(13, 0), Upkeep.VERTICUT);
        }
        if (day.getDayOfMonth() == 5) {
            done(day, LocalTime.of(13, 30), Upkeep.FED);
        }
        if (inSeason && random.nextInt(6) == 0) {
            log.all(day, LocalTime.of(21, 0), SeasonLog.HEAD, new Irrigated(2 + random.nextInt(3)));
        }
    }

    private void done(LocalDate day, LocalTime time, Upkeep work) {
        log.all(day, time, SeasonLog.HEAD, new Maintained(work));
    }

    /**
     * Faster as the season goes on, slow for a fortnight after the tining; read on most mornings, now and then both
     * ways.
     */
    private void speed(LocalDate day, double share) {
        boolean tined = !day.isBefore(TINED) && day.isBefore(TINED.plusDays(14));
        double level = SLOWEST_FEET + (FASTEST_FEET - SLOWEST_FEET) * share - (tined ? 0.6 : 0);
        double feet = tenths(level + 0.5 * (random.nextDouble() - 0.5));
        if (random.nextInt(10) < 7) {
            boolean bothWays = random.nextInt(6) == 0;
            OptionalDouble other = bothWays ? OptionalDouble.of(tenths(feet - 0.4)) : OptionalDouble.empty();
            double first = bothWays ? tenths(feet + 0.4) : feet;
            log.all(day, LocalTime.of(7, 40), SeasonLog.HEAD, new SpeedRead(first, other));
        }
    }

    private void rounds(LocalDate day) {
        boolean weekend = day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
        int usual = day.isBefore(DemoSeason.DAILY_FROM) ? 35 : 80;
        int played = usual + random.nextInt(usual / 2) + (weekend ? usual * 3 / 4 : 0);
        if (random.nextInt(14) != 0) {
            log.all(day, LocalTime.of(20, 10), SeasonLog.HEAD, new RoundsPlayed(day, played));
        }
    }

    private static double tenths(double value) {
        return Math.rint(10 * value) / 10;
    }
}
