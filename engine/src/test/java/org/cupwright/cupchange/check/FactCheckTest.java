package org.cupwright.cupchange.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.cupwright.cupchange.MadeFacts.cut;
import static org.cupwright.cupchange.MadeFacts.on;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.cupchange.Area;
import org.cupwright.cupchange.CareWork;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.CrewNote;
import org.cupwright.cupchange.CupWork;
import org.cupwright.cupchange.DayReading;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.GroundNote;
import org.cupwright.cupchange.ImpossibleFact;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.cupchange.Payload;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class FactCheckTest {
    private static final Outline GREEN = new Outline((Polygon) new Area.Around(new MapPoint(10, 10), 12).toGeometry());
    private static final FactCheck CHECK = new FactCheck(
            new Course("made-up", "Invented", new CourseFrame(25832, ZoneOffset.UTC), List.of(Hole.of("7", GREEN))));

    private static List<String> asks(String hole, Payload payload) {
        return CHECK.check(on("2024-05-01T05:00:00Z", hole, payload)).stream()
                .map(finding -> finding.key())
                .toList();
    }

    private static CupWork.SpotCheck depth(double hole, double cup) {
        return new CupWork.SpotCheck(OptionalDouble.of(hole), OptionalDouble.of(cup), OptionalDouble.empty());
    }

    @Test
    void asksAboutAPlaceOffTheGreenAlsoInsideACorrection() {
        assertThat(asks("7", cut(10, 10))).isEmpty();
        assertThat(asks("7", cut(22.5, 10))).isEmpty(); // within the outline's own error
        assertThat(asks("7", cut(30, 10))).containsExactly("fact.offTheGreen");
        assertThat(asks("7", Correction.to(MadeFacts.id(new java.util.Random(1)), cut(30, 10))))
                .containsExactly("fact.offTheGreen");
    }

    @Test
    void asksWhetherInchesWereTypedForMillimetres() {
        assertThat(asks("7", depth(110, 27))).isEmpty();
        assertThat(asks("7", depth(4.25, 1))).containsExactly("fact.inchesForMillimetres", "fact.inchesForMillimetres");
        assertThat(asks("7", depth(900, 27))).containsExactly("fact.unlikelyMeasure");
        assertThat(asks("", new CrewNote.StopSet("old one", 5))).containsExactly("fact.inchesForMillimetres");
    }

    @Test
    void asksAboutAHoleThatIsNotThereAndAClockThatRunsAhead() {
        assertThat(asks("19", cut(10, 10))).containsExactly("fact.noSuchHole");
        Fact before = on("2024-05-01T05:00:00Z", "7", cut(10, 10));
        Fact ahead = new Fact(
                before.id(),
                1,
                before.happenedAt(),
                Instant.parse("2024-05-01T03:00:00Z"),
                Optional.empty(),
                "invented person",
                "made-up",
                before.hole(),
                before.payload());
        assertThat(CHECK.check(ahead)).hasSize(1);
    }

    @Test
    void recordsRefuseWhatCanNeverBe() {
        assertThatThrownBy(() -> on("2024-05-01T05:00:00Z", "", cut(1, 1))).hasMessageContaining("impossible.noHole");
        assertThatThrownBy(() -> depth(-1, 20)).hasMessageContaining("quantity.holeDepth");
        assertThatThrownBy(() -> new CareWork.Irrigated(Double.NaN)).hasMessageContaining("quantity.irrigation");
        assertThatThrownBy(() -> new DayReading.SpeedRead(40, OptionalDouble.empty()))
                .isInstanceOf(ImpossibleFact.class)
                .hasMessageContaining("quantity.greenSpeed");
        assertThatThrownBy(() -> new Area.Drawn(
                        List.of(new MapPoint(0, 0), new MapPoint(2, 2), new MapPoint(2, 0), new MapPoint(0, 2))))
                .hasMessageContaining("impossible.areaCrossesItself");
        LocalDate day = LocalDate.of(2024, 5, 1);
        assertThatThrownBy(() -> new GroundNote.GroundMarked(
                        GroundNote.GroundUse.CLOSED,
                        new Area.Around(new MapPoint(0, 0), 1),
                        GroundNote.GroundReason.WET,
                        day,
                        Optional.of(day.minusDays(1))))
                .hasMessageContaining("impossible.endsBeforeItBegins");
    }

    @Test
    void readsAGreenSpeedBothWays() {
        // Brede, USGA Green Section Record 28(6), 1990: 14 ft down and 9 ft up are 10.957 ft on the level
        assertThat(new DayReading.SpeedRead(14, OptionalDouble.of(9)).speed().feet())
                .isCloseTo(10.957, org.assertj.core.api.Assertions.within(0.0005));
        assertThat(new DayReading.SpeedRead(20, OptionalDouble.of(4)).speed().feet())
                .isCloseTo(6.667, org.assertj.core.api.Assertions.within(0.0005));
    }
}
