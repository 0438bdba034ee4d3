package org.cupwright.app.office.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.office.MadeVisit;
import org.cupwright.app.office.visit.Visit;
import org.cupwright.app.session.Role;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.ui.ExtendedModelMap;

/** The page of the course. */
class CoursePageTest {
    @TempDir
    private Path path;

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
        assertThat(new CourseController().course(visit, model)).isEqualTo("course");
        CourseView.Page page = (CourseView.Page) model.get("page");
        assertThat(page.says()).startsWith("3 greens, 1,452 m² in all; frame EPSG:32626");
        assertThat(page.rests()).containsExactly("2 on: outline only, slope not checked.", "1 on: level spots.");
        assertThat(page.greens()).extracting(CourseView.Row::readings).containsExactly(0, 1, 0);
        assertThat(page.greens()).extracting(CourseView.Row::survey).containsOnly("");
    }

    @Test
    void whatIsDoubtfulIsToldGreenByGreenOrOfOne() throws IOException {
        Path data = MadeVisit.course(path.resolve("data"));
        Visit visit = MadeVisit.to(new SqliteFolder(data, InProcess.CLOCK), Role.READER);
        assertThat(doubts(visit, "")).extracting(CourseView.Doubts::hole).containsExactly("1", "2", "3");
        List<CourseView.Doubts> one = doubts(visit, "2");
        assertThat(one).hasSize(1);
        assertThat(one.get(0).count()).isEqualTo(1);
        assertThat(one.get(0).alike().get(0).says().get(0)).startsWith("Nobody has measured this green");
        assertThat(one.get(0).alike().get(0).tryThis()).isNotEmpty();
    }

    @SuppressWarnings("unchecked") // the page's own
    private static List<CourseView.Doubts> doubts(Visit visit, String hole) {
        ExtendedModelMap model = new ExtendedModelMap();
        assertThat(new CourseController().findings(visit, model, hole, null)).isEqualTo("course-findings");
        return (List<CourseView.Doubts>) model.get("greens");
    }
}
