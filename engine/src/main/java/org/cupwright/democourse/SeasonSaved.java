package org.cupwright.democourse;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.cupwright.course.Hole;
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

    private static final LocalDate MARKED_ON = DemoCourse.TODAY.minusDays(2);

    static SeasonSaved of(DemoCourse demo) {
        Random random = new Random(demo.seed() * 31 + 7);
        Map<String, MapPoint> middles = new TreeMap<>();
        List<Hole> holes = demo.course().holes();
        for (int i = 0; i < holes.size(); i++) {
            Hole hole = holes.get(i);
            SeasonSpots spots = new SeasonSpots(hole, demo.trueSurface(hole.id()), List.of());
            middles.put(hole.id(), spots.choose(EVENT, Third.values()[(i + 1) % 3], random));
        }
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
