package org.cupwright.app.desk.begin;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.storage.SettingUp.Place;
import org.cupwright.app.storage.SettingUp.Way;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of which greens of an invented course nobody knows where in the world they lie. */
class UnknownPlacesTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T05:00:00Z"), ZoneOffset.UTC);
    private static final Hole PACED = Hole.of("1", Shapes.rectangle(0, 0, 20, 20));
    private static final Hole DRAWN = Hole.of("2", Shapes.rectangle(80, 0, 100, 20));
    private static final Hole TRACED = Hole.of("3", Shapes.rectangle(900, 900, 920, 920));

    @TempDir
    private Path folder;

    private static BegunGreen begun(int number, Way way, Hole hole, boolean placed) {
        return new BegunGreen(number, way, hole, true, false, placed, Optional.empty());
    }

    private Set<String> unknown(String of, Hole... holes) {
        Place place = new Place("made", "Made", ZoneOffset.UTC, -27, 39.7, 32_626);
        SettingUp setUp = SettingUp.at(place)
                .withGreens(List.of(
                        begun(1, Way.PACED, PACED, false),
                        begun(2, Way.DRAWN, DRAWN, false),
                        begun(3, Way.MAP, TRACED, true)))
                .asDone();
        Course course = new Course(of, "Made", new CourseFrame(32_626, ZoneOffset.UTC), List.of(holes));
        try (SqliteFolder data = new SqliteFolder(folder.resolve("data"), CLOCK)) {
            return data.write(stores -> {
                stores.setUp().add(setUp);
                return UnknownPlaces.of(stores, course);
            });
        }
    }

    @Test
    void thoseThatStandInARow() {
        assertThat(unknown("made", PACED, DRAWN, TRACED)).containsExactlyInAnyOrder("1", "2");
    }

    @Test
    void notOneThatCameByAMapSince() {
        Hole elsewhere = PACED.withGreen(Shapes.rectangle(1500, 700, 1522, 722));
        assertThat(unknown("made", elsewhere, DRAWN, TRACED)).containsExactly("2");
    }

    @Test
    void norThoseOfAnotherCourse() {
        assertThat(unknown("other", PACED, DRAWN, TRACED)).isEmpty();
    }
}
