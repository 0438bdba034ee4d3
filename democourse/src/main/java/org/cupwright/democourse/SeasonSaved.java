package org.cupwright.democourse;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Area;
import org.cupwright.cupchange.CrewNote.NoteToNext;
import org.cupwright.cupchange.GroundNote.GroundMarked;
import org.cupwright.cupchange.GroundNote.GroundReason;
import org.cupwright.cupchange.GroundNote.GroundUse;
import org.cupwright.green.Third;

/**
 * Ground kept on each green for the invented club event: its hole is to be cut there.
 *
 * @param middles by hole
 */
record SeasonSaved(Map<String, MapPoint> middles) {
    static final LocalDate EVENT = DemoCourse.TODAY.plusDays(21);

    /** Saved about the event's hole (our choice). */
    static final double RADIUS_METRES = 2.5;

    /** 21 days beforehand (common practice: 14 to 21). */
    private static final LocalDate FROM = EVENT.minusDays(21);

    /** No hole is cut there from now on, so that the ground has rested when it is marked. */
    static final LocalDate SPARED_FROM = FROM.minusDays(21);

    private static final LocalDate MARKED_ON = DemoCourse.TODAY.minusDays(2);

    /** @param good where holes are cut, by hole in round order */
    static SeasonSaved of(Map<String, SeasonGoodGround> good, long seed) {
        Random random = new Random(seed * 31 + 7);
        Map<String, MapPoint> middles = new LinkedHashMap<>();
        good.forEach((hole, ground) -> {
            List<MapPoint> spots = ground.outer(Third.values()[(middles.size() + 1) % 3]);
            middles.put(hole, spots.get(random.nextInt(spots.size())));
        });
        return new SeasonSaved(middles);
    }

    MapPoint of(String hole) {
        return middles.get(hole);
    }

    void write(SeasonLog log) {
        middles.forEach((hole, middle) -> log.at(
                MARKED_ON,
                LocalTime.of(14, 0).plusMinutes(2L * Integer.parseInt(hole)),
                SeasonLog.HEAD,
                hole,
                new GroundMarked(
                        GroundUse.SAVED,
                        new Area.Around(middle, RADIUS_METRES),
                        GroundReason.EVENT,
                        FROM,
                        Optional.of(EVENT.minusDays(1)))));
        log.all(
                MARKED_ON,
                LocalTime.of(15, 0),
                SeasonLog.HEAD,
                new NoteToNext("Midsummer Salver on 11 July: ground is saved on all eighteen greens until the 10th."));
    }
}
