package org.cupwright.formats.points;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.units.LengthUnit;
import org.junit.jupiter.api.Test;

/** Feet here are the international ones of 0.3048 m; the frame EPSG:2263 counts in US survey feet of 1200/3937 m. */
class FileUnitsTest {
    private static final CoordinateFrame DEGREES = CoordinateFrame.of(CoordinateFrame.WGS84);
    private static final CoordinateFrame ZONE_18 = CoordinateFrame.of(32618);
    private static final CoordinateFrame SURVEY_FEET = CoordinateFrame.of(2263);

    @Test
    void degreesStayDegreesAndHeightsAreTakenFromFeet() {
        FileUnits units = new FileUnits(DEGREES, Optional.of(LengthUnit.FOOT), ZONE_18);
        MapPoint onTheZonesMiddle = units.toCourse(-75, 0);
        assertThat(onTheZonesMiddle.east()).isCloseTo(500_000, within(1e-6));
        assertThat(onTheZonesMiddle.north()).isCloseTo(0, within(1e-6));
        assertThat(units.heightMetres(100)).isCloseTo(30.48, within(1e-9));
    }

    @Test
    void withoutAUnitEverythingIsInTheFramesOwn() {
        FileUnits units = new FileUnits(SURVEY_FEET, Optional.empty(), SURVEY_FEET);
        assertThat(units.toCourse(1000, 2000)).isEqualTo(new MapPoint(1000, 2000));
        assertThat(units.heightMetres(3937)).isCloseTo(1200, within(1e-9));
    }

    @Test
    void metresInAFrameOfFeetBecomeFeet() {
        FileUnits units = new FileUnits(SURVEY_FEET, Optional.of(LengthUnit.METRE), SURVEY_FEET);
        MapPoint placed = units.toCourse(1200, 2400);
        assertThat(placed.east()).isCloseTo(3937, within(1e-6));
        assertThat(placed.north()).isCloseTo(7874, within(1e-6));
        assertThat(units.heightMetres(5)).isEqualTo(5);
    }

    @Test
    void feetInAFrameOfMetresBecomeMetres() {
        FileUnits units = new FileUnits(ZONE_18, Optional.of(LengthUnit.FOOT), ZONE_18);
        MapPoint placed = units.toCourse(1_640_000, 100);
        assertThat(placed.east()).isCloseTo(499_872, within(1e-6));
        assertThat(placed.north()).isCloseTo(30.48, within(1e-9));
    }
}
