package org.cupwright.formats.points;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;
import org.cupwright.message.Message;
import org.cupwright.testing.Shapes;
import org.cupwright.units.LengthUnit;
import org.junit.jupiter.api.Test;

/**
 * An invented green in the sea where EPSG:2263, which counts in US survey feet, has its own origin: 74° W, 40° 10′ N,
 * 300,000 m or 984,250 ft east (EPSG).
 */
class FileExtentTest {
    private static final CoordinateFrame SURVEY_FEET = CoordinateFrame.of(2263);
    private static final CoordinateFrame ZONE_18 = CoordinateFrame.of(32618);

    private final MapPoint middle = Projection.between(SURVEY_FEET, ZONE_18).toCourse(984_250, 0);
    private final Course course = new Course(
            "invented",
            "invented",
            new CourseFrame(32618, ZoneId.of("America/New_York")),
            List.of(Hole.of("1", Shapes.circle(middle.east(), middle.north(), 12))),
            List.of());

    private Finding why(Optional<LengthUnit> unit, double east, double north) {
        FileExtent extent = new FileExtent(course, SURVEY_FEET);
        extent.include(east, north);
        return extent.whyNotOnTheGreens(unit);
    }

    @Test
    void theUnitThatWasTakenIsTheFrames() {
        Finding finding = why(Optional.empty(), 300_000, 0);
        assertThat(finding.kind()).isEqualTo(FindingKind.UNIT_LOOKS_WRONG);
        assertThat(finding.value()).isEqualTo(new Message.Name(LengthUnit.US_SURVEY_FOOT.symbol()));
        assertThat(finding.tryThis().arguments()).containsExactly(new Message.Name(LengthUnit.METRE.symbol()));
    }

    @Test
    void theUnitThatWasTakenIsTheOneSaid() {
        Finding finding = why(Optional.of(LengthUnit.METRE), 984_250, 0);
        assertThat(finding.kind()).isEqualTo(FindingKind.UNIT_LOOKS_WRONG);
        assertThat(finding.value()).isEqualTo(new Message.Name(LengthUnit.METRE.symbol()));
    }

    @Test
    void eastAndNorthExchangedAreFoundWhereNoUnitHelps() {
        assertThat(why(Optional.empty(), 0, 984_250).kind()).isEqualTo(FindingKind.COLUMNS_EXCHANGED);
    }
}
