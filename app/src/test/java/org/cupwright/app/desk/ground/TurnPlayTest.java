package org.cupwright.app.desk.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.desk.TypedHeading;
import org.cupwright.app.office.MadeVisit;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.course.LineOfPlay;
import org.cupwright.message.Problem;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From where greens are played to, said anew. */
class TurnPlayTest {
    @TempDir
    private Path path;

    private SqliteFolder folder;
    private Session session;

    @BeforeEach
    void aCourse() throws IOException {
        folder = new SqliteFolder(MadeVisit.course(path.resolve("data")), InProcess.CLOCK);
        session = MadeVisit.to(folder, Role.SUPERINTENDENT).session();
    }

    @AfterEach
    void close() {
        folder.close();
    }

    private DrawGround.Answer green(String hole) {
        return new DrawGround(session).show(hole);
    }

    private Optional<LineOfPlay> line(String hole) {
        return green(hole).hole().lineOfPlay();
    }

    private TurnPlay.Answer turn(String hole, String typed) {
        return new TurnPlay(session)
                .keep(hole, TypedHeading.read("play", typed), green(hole).version());
    }

    private List<AuditLine> turned() {
        return folder
                .read(stores -> stores.audit().between(Instant.EPOCH, Instant.parse("2100-01-01T00:00:00Z")))
                .stream()
                .filter(line -> line.what() == AuditKind.PLAY_TURNED)
                .toList();
    }

    @Test
    void aDirectionIsKeptAndAudited_andNoOtherGreenIsTouched() {
        Optional<LineOfPlay> others = line("1");
        TurnPlay.Answer answer = turn("2", "271°");
        assertThat(answer.after()).contains(271L);
        assertThat(TypedHeading.degrees(line("2").orElseThrow().atGreen())).isEqualTo(271);
        assertThat(line("1")).isEqualTo(others);
        assertThat(turned()).hasSize(1);
    }

    /** A line from tee to green comes back whole, and so does knowing nothing. */
    @Test
    void setBackItIsAsItWas() {
        Optional<LineOfPlay> before = line("2");
        String typed = before.map(line -> Long.toString(TypedHeading.degrees(line.atGreen())))
                .orElse("");
        turn("2", "123");
        turn("2", typed);
        assertThat(line("2")).isEqualTo(before);
        turn("2", "124");
        turn("2", "");
        assertThat(line("2")).isEmpty();
    }

    @Test
    void whatIsNoDirectionOrNothingNewIsRefused() {
        turn("2", "90");
        for (String typed : List.of("90", "361", "-1", "uphill")) {
            assertThatThrownBy(() -> turn("2", typed)).as(typed).isInstanceOf(Problem.class);
        }
        assertThat(turned()).hasSize(1);
    }

    @Test
    void whoSawAnotherCourseChangesNothing() {
        long seen = green("2").version();
        turn("1", "45");
        assertThatThrownBy(() -> new TurnPlay(session).keep("2", Optional.of(Heading.ofDegrees(46)), seen))
                .isInstanceOf(Problem.class)
                .hasMessageContaining("changedMeanwhile");
        assertThat(turned()).hasSize(1);
    }
}
