package org.cupwright.turf.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cupwright.cupchange.MadeFacts.on;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.cupwright.cupchange.CupWork.SpotCheck;
import org.cupwright.cupchange.Fact;
import org.cupwright.message.Message;
import org.cupwright.turf.state.Measured;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;
import org.junit.jupiter.api.Test;

/** On invented measures, one a day from 1 May on, on the greens 1, 2 and so on. */
class MeasureChartsTest {
    private static TurfState holeDepths(double... millimetres) {
        List<Fact> facts = new ArrayList<>();
        for (int i = 0; i < millimetres.length; i++) {
            facts.add(on(
                    String.format(Locale.ROOT, "2024-05-%02dT05:00:00Z", i + 1),
                    "" + (i + 1),
                    new SpotCheck(OptionalDouble.of(millimetres[i]), OptionalDouble.empty(), OptionalDouble.empty())));
        }
        return TurfFold.fold(TurfState.empty(ZoneOffset.UTC), facts);
    }

    @Test
    void aChartTakesTwoMeasuresOfOneThing() {
        assertThat(MeasureCharts.of(holeDepths(110))).isEmpty();
        assertThat(MeasureCharts.of(holeDepths(110, 112))).containsOnlyKeys(Measured.What.HOLE_DEPTH);
    }

    /** Mean 112.8 mm, moves (8·2 + 20)/9 = 4 mm, reach 3·4/1.128 = 10.638 mm. */
    @Test
    void theTenthMeasureOutsideIsSaidInMetres() {
        List<TurfSignal> signals = MeasureCharts.signals(holeDepths(110, 112, 110, 112, 110, 112, 110, 112, 110, 130));
        assertThat(signals).singleElement().satisfies(signal -> {
            assertThat(signal.kind()).isEqualTo(TurfSignal.Kind.CHART);
            assertThat(signal.about()).isEqualTo("holeDepth");
            List<Message.Argument> says = signal.says().arguments();
            assertThat(says.get(1)).isEqualTo(new Message.Name("10"));
            assertThat(metres(says.get(2))).isCloseTo(0.130, within(1e-9));
            assertThat(metres(says.get(3))).isCloseTo(0.102162, within(5e-7));
            assertThat(metres(says.get(4))).isCloseTo(0.123438, within(5e-7));
        });
    }

    @Test
    void nineMeasuresAreTooFewToSpeakUp() {
        assertThat(MeasureCharts.signals(holeDepths(112, 110, 112, 110, 112, 110, 112, 110, 130)))
                .isEmpty();
    }

    @Test
    void onlyTheLastMeasureIsSpokenOf() {
        assertThat(MeasureCharts.signals(holeDepths(110, 112, 110, 112, 130, 112, 110, 112, 110, 112, 110, 112)))
                .isEmpty();
    }

    /** Ten steps, nine of 2 and one of 9 mm: at most 3.267·2.7 = 8.82 mm; the last value is the mean itself. */
    @Test
    void aMeasureWithinTheLimitsMayHaveComeByTooLongAMove() {
        assertThat(MeasureCharts.signals(holeDepths(100, 102, 104, 106, 108, 110, 112, 114, 116, 118, 109)))
                .hasSize(1);
    }

    private static double metres(Message.Argument argument) {
        return ((Message.Length) argument).metres();
    }
}
