package org.cupwright.democourse;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.CrewNote.StopSet;
import org.cupwright.cupchange.CrewNote.ToolSharpened;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.FoundBy;
import org.cupwright.cupchange.CupWork.Soil;
import org.cupwright.green.Third;

/** The season's changes of the cup, with what becomes of the two cutters. */
final class SeasonCups {
    private static final String FIRST_CUTTER = "A";
    private static final String SECOND_CUTTER = "B";

    /** From here on soil sticks in the second cutter's shell as the morning goes on, and its plugs stand high. */
    private static final LocalDate SECOND_RUNS_HIGH_FROM = LocalDate.of(2026, 5, 4);

    /** The stop for a cup of 102 mm, an inch below the surface. */
    private static final double STOP_MILLIMETRES = 127.5;

    private static final LocalDate SLIP_ON = LocalDate.of(2026, 5, 19);
    private static final String SLIP_AT = "5";

    private final DemoCourse demo;
    private final SeasonLog log;
    private final Random random;
    private final Map<String, SeasonSpots> spots = new TreeMap<>();

    SeasonCups(DemoCourse demo, Map<String, SeasonGoodGround> good, SeasonSaved saved, SeasonLog log) {
        this.demo = demo;
        this.log = log;
        this.random = new Random(demo.seed() * 31 + 1);
        good.forEach((hole, ground) -> spots.put(hole, new SeasonSpots(ground, List.of(saved.of(hole)))));
    }

    void write() {
        stopsSet(DemoSeason.FIRST_DAY);
        int change = 0;
        for (LocalDate day : DemoSeason.days()) {
            if (DemoSeason.holesAreChangedOn(day)) {
                sharpened(day);
                round(day, change);
                change++;
            }
        }
    }

    private void stopsSet(LocalDate day) {
        for (String cutter : List.of(FIRST_CUTTER, SECOND_CUTTER)) {
            log.all(day, LocalTime.of(5, 40), SeasonLog.HEAD, new StopSet(cutter, STOP_MILLIMETRES));
        }
    }

    /** Both blades on every other Tuesday. */
    private void sharpened(LocalDate day) {
        if (day.toEpochDay() % 14 == 5) {
            log.all(day, LocalTime.of(5, 30), SeasonLog.FRONT_NINE, new ToolSharpened(FIRST_CUTTER));
            log.all(day, LocalTime.of(5, 35), SeasonLog.BACK_NINE, new ToolSharpened(SECOND_CUTTER));
        }
    }

    /** Each changer does nine greens, seven minutes apart. */
    private void round(LocalDate day, int change) {
        int highFrom = 3 + random.nextInt(3);
        List<Hole> holes = demo.course().holes();
        for (int i = 0; i < holes.size(); i++) {
            String hole = holes.get(i).id();
            boolean second = i >= 9;
            boolean high = second && !day.isBefore(SECOND_RUNS_HIGH_FROM) && i - 9 >= highFrom;
            CupChanged changed = changed(hole, day, Third.values()[(i + change) % 3])
                    .with(second ? SECOND_CUTTER : FIRST_CUTTER, soil(high), random.nextInt(60) == 0);
            spots.get(hole).cut(changed.cutAt(), day);
            LocalTime time = LocalTime.of(5, 50).plusMinutes(7L * (i % 9));
            write(hole, day, time, changed);
        }
    }

    private CupChanged changed(String hole, LocalDate day, Third wanted) {
        MapPoint planned = spots.get(hole).choose(day, wanted, random);
        CupChanged changed = CupChanged.asPlanned(planned);
        return random.nextInt(16) == 0
                ? changed.movedTo(spots.get(hole).movedFrom(planned, day, random), FoundBy.EYE)
                : changed;
    }

    private Soil soil(boolean high) {
        if (high) {
            return Soil.TOOK_OUT;
        }
        return switch (random.nextInt(12)) {
            case 0 -> Soil.PUT_IN;
            case 1 -> Soil.TOOK_OUT;
            default -> Soil.NONE;
        };
    }

    private void write(String hole, LocalDate day, LocalTime time, CupChanged changed) {
        if (!day.equals(SLIP_ON) || !hole.equals(SLIP_AT)) {
            log.at(day, time, SeasonLog.changerOf(hole), hole, changed);
            return;
        }
        UUID slip = log.at(day, time, SeasonLog.changerOf(hole), hole, onTheOtherSide(hole, changed));
        log.all(day, LocalTime.of(12, 15), SeasonLog.changerOf(hole), Correction.to(slip, changed));
    }

    /** As somebody enters it who mixes up left and right. */
    private CupChanged onTheOtherSide(String hole, CupChanged changed) {
        MapPoint middle = demo.course().find(hole).orElseThrow().green().centroid();
        MapPoint other = new MapPoint(
                2 * middle.east() - changed.cutAt().east(), changed.cutAt().north());
        return new CupChanged(
                Optional.of(changed.cutAt()),
                other,
                changed.foundBy(),
                changed.cutter(),
                changed.way(),
                changed.soil(),
                changed.rimWhited(),
                changed.edgeRagged(),
                changed.flag());
    }
}
