package org.cupwright.formats.items;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import org.cupwright.course.Course;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.InventedMap;
import org.cupwright.green.OnConvention;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LevelSpotsCsvTest {
    private static final double PACE_METRES = 0.914;
    private static final Course COURSE = new InventedMap()
            .green(0, 0, 12, "")
            .line(0, -300, 0, 0, ",\"ref\":\"1\"")
            .green(400, 0, 12, ",\"ref\":\"2\"")
            .read()
            .course();
    private static final MapPoint MIDDLE =
            COURSE.find("1").orElseThrow().green().centroid();

    private static LevelSpots read(String text) {
        try {
            return LevelSpotsCsv.read(InventedMap.bytes(text), COURSE, OnConvention.ALONG_CHORD, PACE_METRES);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String measured(String rest) {
        return String.format(Locale.ROOT, "1,%.3f,%.3f,%s%n", MIDDLE.east(), MIDDLE.north(), rest);
    }

    @Test
    void readsTwoReadingsAtRightAngles() {
        LevelSpots read = read("hole,east,north,heading,fall,fallRight\n" + measured("0,2,-1"));
        LevelSpot spot = read.spots().get(0);
        assertThat(spot.gradientNorth()).isCloseTo(-0.02, within(1e-12)); // falls 2 % towards north
        assertThat(spot.gradientEast()).isCloseTo(0.01, within(1e-12)); // rises 1 % towards east
        assertThat(spot.place().distanceMetres(MIDDLE)).isLessThan(0.001);
        assertThat(read.findings()).isEmpty();
    }

    @Test
    void readsTheSteepestWayDown() {
        LevelSpot spot = read("hole;EAST;North;heading;fall\n"
                        + measured("270,2.5").replace(',', ';'))
                .spots()
                .get(0);
        assertThat(spot.gradientEast()).isCloseTo(0.025, within(1e-12));
        assertThat(spot.gradientNorth()).isCloseTo(0, within(1e-12));
    }

    @Test
    void findsAPacedPlaceAndReadsAlongTheLineOfPlay() {
        LevelSpot spot = read("hole,on,side,heading,fall\n1,13.13,L13.13,play,-2\n")
                .spots()
                .get(0);
        assertThat(spot.place().distanceMetres(MIDDLE)).isLessThan(0.1); // 12 m on and 12 m from the left of a circle
        assertThat(spot.gradientNorth()).isCloseTo(0.02, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "9,5,L5,0,1 | HOLE_UNKNOWN",
                "2,5,L5,0,1 | NEEDS_LINE_OF_PLAY",
                "1,5,5,0,1 | READING_NOT_READABLE",
                "1,5,L5,0,NaN | READING_NOT_READABLE",
                "1,5,L5,0,80 | READING_NOT_READABLE",
                "1,5,L5,north,1 | READING_NOT_READABLE",
                "1,80,L5,0,1 | NO_SUCH_PLACE",
                "1,5 | READING_NOT_READABLE"
            })
    void tellsALineThatDoesNotReadAndGoesOn(String line, FindingKind kind) {
        LevelSpots read = read("hole,on,side,heading,fall\n" + line + "\n1,10,R10,0,1\n");
        assertThat(read.spots()).hasSize(1);
        assertThat(read.findings()).extracting(Finding::kind).containsExactly(kind);
        assertThat(read.findings()).extracting(Finding::where).containsExactly(Where.line(2));
    }

    @Test
    void tellsASpotOffTheGreen() {
        String text = "hole,east,north,heading,fall\n2" + measured("0,1").substring(1);
        assertThat(read(text).findings()).extracting(Finding::kind).containsExactly(FindingKind.SPOT_OFF_GREEN);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"'' | EMPTY_FILE", "hole,on,heading,fall | COLUMN_MISSING", "1,2,3,4 | COLUMN_MISSING"})
    void saysWhatIsWrongWithAFile(String text, FindingKind kind) {
        assertThat(InventedMap.troubleOf(() -> read(text)).kind()).isEqualTo(kind);
    }
}
