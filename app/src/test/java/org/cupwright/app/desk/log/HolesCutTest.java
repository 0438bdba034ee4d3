package org.cupwright.app.desk.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.cupwright.app.desk.log.HolesCut.HoleCut;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.cupchange.Area;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.cupchange.CupWork.Depth;
import org.cupwright.cupchange.CupWork.HoleMovedInPlay;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.cupchange.Payload;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Polygon;

/** Where the holes of a day are by the last word on each. */
class HolesCutTest {
    /** The clocks of this zone are put back in the night before it. */
    private static final LocalDate DAY = LocalDate.of(2026, 10, 25);

    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    private static final MapPoint HERE = new MapPoint(5, 6);
    private static final MapPoint THERE = new MapPoint(9, 8);
    private static final CutSomewhere SOMEWHERE = new CutSomewhere(Depth.BACK, Optional.empty());
    private static final Outline GREEN = new Outline((Polygon) new Area.Around(new MapPoint(10, 12), 12).toGeometry());
    private static final Course COURSE = new Course(
            MadeFacts.COURSE,
            "Invented",
            new CourseFrame(25832, ZONE),
            Stream.of("1", "2").map(hole -> Hole.of(hole, GREEN)).toList());

    @TempDir
    private Path folder;

    private static Fact said(int id, LocalTime time, String hole, Payload payload) {
        Instant when = DAY.atTime(time).atZone(ZONE).toInstant();
        return MadeFacts.fact(new UUID(1, id), when, Optional.of(hole), payload);
    }

    private HolesCut of(Fact... facts) {
        SqliteFolder data = new SqliteFolder(folder, Clock.systemUTC());
        Writes.to(data, stores -> List.of(facts).forEach(stores.facts()::add));
        return data.read(stores -> HolesCut.of(stores.facts(), COURSE, DAY));
    }

    private static LocalTime at(int hour, int minute) {
        return LocalTime.of(hour, minute);
    }

    @Test
    void theLastWordCounts() {
        HolesCut cut = of(
                said(1, at(5, 0), "1", CupChanged.asPlanned(HERE)),
                said(2, at(11, 30), "1", new HoleMovedInPlay(THERE, "invented official", 2, "water")),
                said(3, at(5, 20), "2", new LeftInOldHole(Optional.of("frost"))));
        assertThat(cut.find("1")).map(HoleCut::at).contains(Optional.of(THERE));
        assertThat(cut.find("1")).map(HoleCut::time).contains(at(11, 30));
        assertThat(cut.find("2")).map(HoleCut::at).contains(Optional.empty());
        assertThat(cut.holes().keySet()).as("in the order of the last words").containsExactly("2", "1");
    }

    @Test
    void aHoleCutWhereNobodyKnowsIsMissing() {
        assertThat(of(said(1, at(5, 0), "1", CupChanged.asPlanned(HERE)), said(2, at(6, 0), "1", SOMEWHERE))
                        .find("1"))
                .isEmpty();
    }

    @Test
    void aHoleCutAgainAfterThatIsThere() {
        assertThat(of(said(1, at(5, 0), "1", SOMEWHERE), said(2, at(6, 0), "1", CupChanged.asPlanned(THERE)))
                        .find("1"))
                .map(HoleCut::at)
                .contains(Optional.of(THERE));
    }

    @Test
    void correctionsAndWithdrawalsAreTakenIn() {
        HolesCut cut = of(
                said(1, at(5, 0), "1", CupChanged.asPlanned(HERE)),
                said(2, at(7, 0), "1", new Correction(new UUID(1, 1), Optional.of(CupChanged.asPlanned(THERE)))),
                said(3, at(5, 0), "2", CupChanged.asPlanned(HERE)),
                said(4, at(7, 0), "2", new Correction(new UUID(1, 3), Optional.empty())));
        assertThat(cut.find("1")).map(HoleCut::at).contains(Optional.of(THERE));
        assertThat(cut.find("2")).isEmpty();
    }

    @Test
    void aDayOfTwentyFiveHoursIsOneDay() {
        Instant first = DAY.atStartOfDay(ZONE).toInstant();
        Instant last = DAY.plusDays(1).atStartOfDay(ZONE).toInstant().minusMillis(1);
        Fact justBefore =
                MadeFacts.fact(new UUID(2, 1), first.minusMillis(1), Optional.of("1"), CupChanged.asPlanned(THERE));
        Fact atFirst = MadeFacts.fact(new UUID(2, 2), first, Optional.of("1"), CupChanged.asPlanned(HERE));
        Fact atLast = MadeFacts.fact(new UUID(2, 3), last, Optional.of("2"), CupChanged.asPlanned(HERE));
        Fact justAfter =
                MadeFacts.fact(new UUID(2, 4), last.plusMillis(1), Optional.of("2"), CupChanged.asPlanned(THERE));
        HolesCut cut = of(justBefore, atFirst, atLast, justAfter);
        assertThat(cut.find("1")).map(HoleCut::at).contains(Optional.of(HERE));
        assertThat(cut.find("2")).map(HoleCut::at).contains(Optional.of(HERE));
    }
}
