package org.cupwright.finding;

import static org.assertj.core.api.Assertions.assertThat;

import org.cupwright.course.MapPoint;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.junit.jupiter.api.Test;

class FindingTest {
    private final Finding three = Finding.of(FindingKind.POINTS_TWICE, Where.file(), 3);

    @Test
    void placesInASourceAreNamed() {
        assertThat(Where.file()).isEqualTo(Message.of("survey.where.file"));
        assertThat(Where.line(4)).isEqualTo(Message.of("survey.where.line", new Count(4)));
        assertThat(Where.lineAndColumn(4, 2))
                .isEqualTo(Message.of("survey.where.lineAndColumn", new Count(4), new Count(2)));
        assertThat(Where.feature(5, "green 7"))
                .isEqualTo(Message.of("survey.where.feature", new Count(5), new Name("green 7")));
        assertThat(Where.hole("7")).isEqualTo(Message.of("survey.where.hole", new Name("7")));
    }

    @Test
    void whatAFindingAddsLeavesTheRestAsItWas() {
        Finding more = three.at(new MapPoint(1, 2)).saying(new Name("here")).trying("less");
        assertThat(more.kind()).isEqualTo(FindingKind.POINTS_TWICE);
        assertThat(more.place()).contains(new MapPoint(1, 2));
        assertThat(more.says()).isEqualTo(Message.of("survey.pointsTwice", new Count(3), new Name("here")));
        assertThat(more.tryThis()).isEqualTo(Message.of("survey.pointsTwice.try", new Name("less")));
        assertThat(three.value()).isEqualTo(new Count(3));
        assertThat(three.trying(8).tryThis()).isEqualTo(Message.of("survey.pointsTwice.try", new Count(8)));
        assertThat(Finding.of(FindingKind.POINTS_TWICE, Where.hole("7"), "x").value())
                .isEqualTo(new Name("x"));
    }

    @Test
    void asAFailureItKeepsWhatWasFoundAndItsCauseWithoutAStackTrace() {
        IllegalStateException cause = new IllegalStateException("invented");
        assertThat(three.failure().finding()).isEqualTo(three);
        assertThat(three.failure().getCause()).isNull();
        assertThat(three.failure(cause).finding()).isEqualTo(three);
        assertThat(three.failure(cause)).hasCause(cause).hasMessageContaining("POINTS_TWICE");
        assertThat(three.failure().getStackTrace()).isEmpty();
    }
}
