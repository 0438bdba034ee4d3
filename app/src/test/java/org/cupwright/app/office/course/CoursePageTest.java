package org.cupwright.app.office.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.office.MadeOffice;
import org.cupwright.app.office.MadeVisit;
import org.cupwright.app.office.work.Searches;
import org.cupwright.app.office.work.Works;
import org.cupwright.app.session.Role;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.visit.Visit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.ui.ExtendedModelMap;

/** The page of the course. */
class CoursePageTest {
    @TempDir
    private Path path;

    private Works works;

    @AfterEach
    void close() {
        if (works != null) {
            works.close();
        }
    }

    private CourseController controller(Path data) {
        if (works == null) {
            works = new Works(MadeOffice.house(data, InProcess.CLOCK), Duration.ofMinutes(5));
        }
        return new CourseController(new Searches(works));
    }

    @Test
    void greensAreToldWithWhatTheirGroundRestsOn() throws IOException {
        Path data = MadeVisit.course(path.resolve("data"));
        InProcess.Result read = new InProcess(data)
                .run(
                        "level",
                        "add",
                        "--hole",
                        "2",
                        "--on",
                        "12",
                        "--side",
                        "L8",
                        "--falls",
                        "back=2.5",
                        "--course",
                        MadeVisit.COURSE);
        assertThat(read.err()).isEmpty();
        Visit visit = MadeVisit.to(new SqliteFolder(data, InProcess.CLOCK), Role.READER);
        ExtendedModelMap model = new ExtendedModelMap();
        assertThat(controller(data).course(visit, "", model)).isEqualTo("course");
        CourseView.Page page = (CourseView.Page) model.get("page");
        assertThat(page.says()).isEqualTo("3 greens, 1,452 m² in all.");
        assertThat(page.frame()).startsWith("Coordinates are in EPSG:32626, ");
        assertThat(page.rests())
                .containsExactly(
                        "One is known by readings of the level.",
                        "Of 2 the outline alone is known: slope is not checked there.");
        assertThat(page.greens())
                .extracting(CourseView.Row::restsOn)
                .containsExactly("outline alone", "level", "outline alone");
        assertThat(page.greens()).extracting(CourseView.Row::readings).containsExactly(0, 1, 0);
        assertThat(page.greens()).extracting(CourseView.Row::points).containsOnly("");
    }

    @Test
    void whatIsDoubtfulIsToldGreenByGreenOrOfOne() throws IOException {
        Path data = MadeVisit.course(path.resolve("data"));
        Visit visit = MadeVisit.to(new SqliteFolder(data, InProcess.CLOCK), Role.READER);
        assertThat(doubts(data, visit, "")).extracting(CourseView.Doubts::hole).containsExactly("1", "2", "3");
        assertThat(new CourseView(visit.texts()).counted(doubts(data, visit, "")))
                .containsExactly(new CourseView.Counted("One thing on each of holes", List.of("1", "2", "3")));
        List<CourseView.Doubts> one = doubts(data, visit, "2");
        assertThat(one).hasSize(1);
        assertThat(one.get(0).count()).isEqualTo(1);
        assertThat(one.get(0).alike().get(0).says().get(0)).startsWith("Nobody has measured this green");
        assertThat(one.get(0).alike().get(0).tryThis()).isNotEmpty();
    }

    /** Each place under its number; of a green nobody measured there is none, and of all greens no picture. */
    @Test
    void whatIsDoubtfulIsDrawnWhereItIs() throws IOException {
        Path data = MadeVisit.course(path.resolve("data"));
        StringBuilder points = new StringBuilder("x,y,z\n");
        for (double east = 0.25; east < MadeCourse.SIDE; east += 0.5) {
            for (double north = 0.25; north < MadeCourse.SIDE / 2; north += 0.5) { // the back was left out
                points.append(String.format(
                        Locale.ROOT, "%.2f,%.2f,%.3f%n", MadeCourse.WEST + east, MadeCourse.SOUTH + north, 20.0));
            }
        }
        Path file = Files.writeString(path.resolve("points.csv"), points);
        InProcess.Result read = new InProcess(data)
                .run("import", "--course", MadeVisit.COURSE, "--elevation", file, "--crs", "EPSG:32626");
        assertThat(read.status()).as(read.err()).isZero();
        Visit visit = MadeVisit.to(new SqliteFolder(data, InProcess.CLOCK), Role.READER);
        ExtendedModelMap model = new ExtendedModelMap();
        controller(data).findings(visit, model, "1", false, null, null);
        assertThat((String) model.get("map")).contains("class=\"finding\"", "class=\"finding-place\"");
        controller(data).findings(visit, model, "", false, null, null);
        assertThat(model.get("map")).isNull();
    }

    @SuppressWarnings("unchecked") // the page's own
    private List<CourseView.Doubts> doubts(Path data, Visit visit, String hole) {
        ExtendedModelMap model = new ExtendedModelMap();
        assertThat(controller(data).findings(visit, model, hole, false, null, null))
                .isEqualTo("course-findings");
        return (List<CourseView.Doubts>) model.get("greens");
    }
}
