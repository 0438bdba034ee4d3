package org.cupwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Optional;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.items.GroundFile;
import org.cupwright.formats.items.GroundItems;
import org.cupwright.formats.items.LevelSpot;
import org.cupwright.formats.items.LevelSpots;
import org.cupwright.formats.items.LevelSpotsCsv;
import org.cupwright.formats.outlines.CourseOutlines;
import org.cupwright.formats.outlines.GeoJsonFeatures;
import org.cupwright.formats.outlines.OutlineRequest;
import org.cupwright.formats.outlines.ReadCourse;
import org.cupwright.formats.points.GreenPoints;
import org.cupwright.formats.points.PointCollector;
import org.cupwright.formats.points.PointRequest;
import org.cupwright.formats.points.PointsCsv;
import org.cupwright.green.OnConvention;
import org.cupwright.green.SurveyPoints;
import org.cupwright.units.Paces;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

class ThreeInventedHolesTest {
    private static final Path DATA = Path.of("data");

    private static InputStream open(String file) throws IOException {
        return Files.newInputStream(DATA.resolve(file));
    }

    private static ReadCourse course() throws IOException {
        OutlineRequest request = OutlineRequest.of("three", ZoneId.of("Atlantic/Azores"))
                .inFrame(CoordinateFrame.of(ThreeInventedHoles.EPSG));
        try (InputStream in = open("outlines.geojson")) {
            return CourseOutlines.read(GeoJsonFeatures.read(in, CourseOutlines::essential), request);
        }
    }

    @Test
    void theFilesAreTheOnesTheProgramMakes() throws IOException {
        assertThat(Files.readString(DATA.resolve("points.csv"))).isEqualTo(ThreeInventedHoles.points());
        assertThat(Files.readString(DATA.resolve("levels.csv"))).isEqualTo(ThreeInventedHoles.levels());
        assertThat(Files.readString(DATA.resolve("outlines.geojson"))).isEqualTo(ThreeInventedHoles.outlines());
        assertThat(Files.readString(DATA.resolve("ground.geojson"))).isEqualTo(ThreeInventedHoles.ground());
    }

    @Test
    void theOutlinesMakeACourseWithoutFindings() throws IOException {
        ReadCourse read = course();
        assertThat(read.findings()).isEmpty();
        assertThat(read.course().holes()).extracting(Hole::id).containsExactly("1", "2", "3");
        assertThat(read.course().holes()).allSatisfy(hole -> {
            assertThat(hole.lineOfPlay()).isPresent();
            assertThat(hole.hazards()).hasSize(2);
            assertThat(hole.tees()).hasSize(1);
        });
    }

    @Test
    void thePointsLieOnTheGreensAtTheirHeights() throws IOException {
        PointCollector collector = new PointCollector(course().course(), PointRequest.asTheCourse());
        try (InputStream in = open("points.csv")) {
            PointsCsv.read(in, Optional.empty(), collector);
        }
        GreenPoints points = collector.finish();
        assertThat(points.byHole()).containsOnlyKeys("1", "2", "3");
        for (InventedHole hole : ThreeInventedHoles.HOLES) {
            SurveyPoints cloud = points.find(String.valueOf(hole.ref())).orElseThrow();
            assertThat(cloud.count() / hole.green().buffer(3).getArea()).isBetween(4.0, 6.0);
            for (int i = 0; i < cloud.count(); i++) {
                double made = hole.heightMetres(new Coordinate(cloud.east(i), cloud.north(i)));
                assertThat(cloud.heightMetres(i)).isCloseTo(made, within(0.06));
            }
        }
    }

    @Test
    void theLevelReadingsAndTheGroundFileRead() throws IOException {
        Course course = course().course();
        try (InputStream levels = open("levels.csv");
                InputStream ground = open("ground.geojson")) {
            LevelSpots spots = LevelSpotsCsv.read(levels, course, OnConvention.ALONG_CHORD, Paces.STANDARD_METRES);
            assertThat(spots.findings()).isEmpty();
            assertThat(spots.spots()).extracting(LevelSpot::holeId).containsExactly("1", "1", "2", "3");
            GroundItems items = GroundFile.read(ground, course);
            assertThat(items.findings()).isEmpty();
            assertThat(items.of("1")).hasSize(2);
            assertThat(items.of("2")).hasSize(1);
        }
    }
}
