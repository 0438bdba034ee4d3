package org.cupwright.app.desk.entry.typed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.Test;

/**
 * Clocks go forward on 29 March 2026 and back on 25 October 2026 in Berlin; a month of other days beside them in Lord
 * Howe.
 */
class MomentTextTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final LocalDate FORWARD = LocalDate.of(2026, 3, 29);
    private static final LocalDate BACK = LocalDate.of(2026, 10, 25);

    private static Problem refused(LocalDate day, ZoneId zone, String text) {
        return catchThrowableOfType(Problem.class, () -> new MomentText(day, zone).read(text));
    }

    @Test
    void ordinaryTimesAreTakenWithoutARemark() {
        MomentText moments = new MomentText(FORWARD, BERLIN);
        assertThat(moments.read("5:40")).isEqualTo(Instant.parse("2026-03-29T03:40:00Z"));
        assertThat(moments.read("01:59")).isEqualTo(Instant.parse("2026-03-29T00:59:00Z"));
        assertThat(moments.read("2026-10-25 03:00")).isEqualTo(Instant.parse("2026-10-25T02:00:00Z"));
        assertThat(moments.read("2026-10-25T00:30:00Z")).isEqualTo(Instant.parse("2026-10-25T00:30:00Z"));
        assertThat(moments.remarks()).isEmpty();
    }

    @Test
    void aTimeThatTheClocksLeftOutIsRefusedWithTheTimeItWas() {
        Problem leftOut = refused(FORWARD, BERLIN, "02:30");
        assertThat(leftOut.what().key()).isEqualTo("problem.log.leftOut");
        assertThat(leftOut.tryThis().arguments()).containsExactly(new Name("2026-03-29T03:30"));
        Problem halfAnHour = refused(LocalDate.of(2026, 10, 4), ZoneId.of("Australia/Lord_Howe"), "02:10");
        assertThat(halfAnHour.tryThis().arguments()).containsExactly(new Name("2026-10-04T02:40"));
    }

    @Test
    void ofATimeThatCameTwiceTheFirstIsTakenAndThatIsSaidOnce() {
        MomentText moments = new MomentText(BACK, BERLIN);
        assertThat(moments.read("02:30")).isEqualTo(Instant.parse("2026-10-25T00:30:00Z"));
        assertThat(moments.read("02:30")).isEqualTo(Instant.parse("2026-10-25T00:30:00Z"));
        assertThat(moments.remarks()).hasSize(1);
        assertThat(moments.remarks().get(0).key()).isEqualTo("log.twice");
        assertThat(moments.remarks().get(0).arguments()).endsWith(new Name("2026-10-25T01:30:00Z"));
    }

    @Test
    void whatIsNoTimeIsRefused() {
        for (String text : new String[] {"", "25:00", "5.40", "2026-02-29T05:00", "2026-06-31 05:00", "noon", "Z"}) {
            assertThat(refused(BACK, BERLIN, text).what().key()).as(text).isEqualTo("problem.log.moment");
        }
    }
}
