package org.cupwright.democourse;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.cupchange.Fact;

/**
 * The invented logbook of {@link DemoCourse}: 120 days, the last of them the day before {@link DemoCourse#TODAY}.
 *
 * <p>Holes are changed on three days a week in late winter and every day from April on, by two people with a cutter
 * each; some are moved, some plugs want care, and the second cutter's plugs begin to stand high in May. Ground is
 * closed and opened again, the greens are tined and topdressed in March, weather, rounds and green speeds are written
 * down on most days, one slip is corrected, and ground is saved for a club event three weeks ahead. Nobody of these
 * names exists. The same course gives the same facts on every machine.
 */
public final class DemoSeason {
    static final int DAYS = 120;
    static final LocalDate FIRST_DAY = DemoCourse.TODAY.minusDays(DAYS);

    /** From here on holes are changed every day. */
    static final LocalDate DAILY_FROM = LocalDate.of(2026, 4, 1);

    private final List<Fact> facts;

    public DemoSeason(DemoCourse demo) {
        SeasonLog log = new SeasonLog(demo);
        Map<String, SeasonGoodGround> good = new LinkedHashMap<>();
        demo.course().holes().forEach(hole -> good.put(hole.id(), SeasonGoodGround.of(demo, hole)));
        SeasonSaved saved = SeasonSaved.of(good, demo.seed());
        new SeasonCups(demo, good, saved, log).write();
        saved.write(log);
        SeasonGround.write(demo, log);
        SeasonPlugs.write(demo, log);
        SeasonUpkeep.write(demo, log);
        SeasonWeather.write(demo, log);
        this.facts = log.facts();
    }

    /** The day of the club event for which ground is saved. */
    public static LocalDate event() {
        return SeasonSaved.EVENT;
    }

    /**
     * All entries, in the order in which they happened, as they were recorded: the correction beside what it corrects.
     */
    public List<Fact> facts() {
        return facts;
    }

    static List<LocalDate> days() {
        return FIRST_DAY.datesUntil(DemoCourse.TODAY).toList();
    }

    /** Tuesday, Thursday and Saturday in late winter, every day in season. */
    static boolean holesAreChangedOn(LocalDate day) {
        return !day.isBefore(DAILY_FROM)
                || switch (day.getDayOfWeek()) {
                    case TUESDAY, THURSDAY, SATURDAY -> true;
                    case MONDAY, WEDNESDAY, FRIDAY, SUNDAY -> false;
                };
    }
}
