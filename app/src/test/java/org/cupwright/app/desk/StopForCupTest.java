package org.cupwright.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The heights are invented. */
class StopForCupTest {
    private static Message asked(String typed) {
        return catchThrowableOfType(Problem.class, () -> StopForCup.of(typed, false))
                .what();
    }

    @ParameterizedTest
    @CsvSource({"101.6,127", "102mm,127.4", "4in,127", "4 IN,127", "'4,25 in',133.35", "'4\"',127"})
    void readsEitherUnit(String typed, double depth) {
        assertThat(StopForCup.of(typed, false).depthMillimetres()).isCloseTo(depth, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "4,inches",
        "4mm,inches",
        "102in,inches",
        "20,unlikely",
        "250,unlikely",
        "11in,unlikely",
        "9000,unlikely"
    })
    void asksWhenTheNumberLooksLikeTheOtherUnit(String typed, String question) {
        assertThat(asked(typed).key()).isEqualTo("problem.cutterStop." + question);
    }

    @ParameterizedTest
    @CsvSource({"deep", "-4in", "''", "1e9", "4ft", "4.mm"})
    void whatIsNoHeightIsRefused(String typed) {
        assertThat(asked(typed).key()).isEqualTo("problem.cutterStop.height");
    }

    @Test
    void whoIsSureIsTakenAtHisWordUpToWhatCannotBe() {
        assertThat(StopForCup.of("50", true).depthMillimetres()).isCloseTo(75.4, within(1e-9));
        assertThat(catchThrowableOfType(Problem.class, () -> StopForCup.of("102in", true))
                        .what()
                        .key())
                .isEqualTo("problem.cutterStop.height");
        assertThat(catchThrowableOfType(Problem.class, () -> StopForCup.of("0", true))
                        .what()
                        .key())
                .isEqualTo("problem.cutterStop.height");
    }
}
