package org.cupwright.turf.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.cupwright.cupchange.MadeFacts.cut;
import static org.cupwright.cupchange.MadeFacts.on;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.cupwright.cupchange.CrewNote;
import org.cupwright.cupchange.CupWork;
import org.cupwright.cupchange.CupWork.Soil;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.policy.Policy;
import org.cupwright.turf.TurfPolicy;
import org.cupwright.turf.signal.TurfSignal.Kind;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;
import org.junit.jupiter.api.Test;

class CutterSignalsTest {
    private static final LocalDate DAY = LocalDate.of(2024, 5, 1);
    private final List<Fact> facts = new ArrayList<>();

    private void cutWith(String hole, Soil soil, boolean ragged) {
        String when = String.format(Locale.ROOT, "2024-05-01T05:%02d:00Z", facts.size());
        facts.add(on(when, hole, cut(facts.size(), 3).with("old one", soil, ragged)));
    }

    private void note(String when, CrewNote note) {
        facts.add(on(when, "", note));
    }

    private TurfState state() {
        return TurfFold.fold(TurfState.empty(ZoneOffset.UTC), Logbook.of(facts).facts());
    }

    private List<Kind> kinds() {
        return CutterSignals.of(state(), DAY, Policy.defaults()).stream()
                .map(TurfSignal::kind)
                .toList();
    }

    @Test
    void threeGreensRunningTheSameWayAskForALookAtTheStop() {
        cutWith("1", Soil.TOOK_OUT, false);
        cutWith("2", Soil.TOOK_OUT, false);
        assertThat(kinds()).isEmpty();
        cutWith("2", Soil.TOOK_OUT, false); // the same green again is no third
        assertThat(kinds()).isEmpty();
        cutWith("3", Soil.TOOK_OUT, false);
        assertThat(CutterSignals.of(state(), DAY, Policy.defaults()))
                .singleElement()
                .satisfies(signal -> assertThat(signal.says().key()).isEqualTo("signal.plugsRunHigh"));
    }

    @Test
    void aPlugThatRanLevelOrTheOtherWayBeginsAnew() {
        cutWith("1", Soil.PUT_IN, false);
        cutWith("2", Soil.PUT_IN, false);
        cutWith("3", Soil.NONE, false);
        cutWith("4", Soil.PUT_IN, false);
        cutWith("5", Soil.TOOK_OUT, false);
        cutWith("6", Soil.TOOK_OUT, false);
        assertThat(kinds()).isEmpty();
    }

    @Test
    void aRaggedEdgeAsksForTheBladeUntilItIsSharpened() {
        cutWith("1", Soil.NONE, true);
        cutWith("2", Soil.NONE, false);
        assertThat(kinds()).containsExactly(Kind.BLADE);
        note("2024-05-01T09:00:00Z", new CrewNote.ToolSharpened("old one"));
        assertThat(kinds()).isEmpty();
        assertThat(state().cutters().get("old one").greensSince()).isZero();
    }

    @Test
    void countsGreensSinceSharpening() {
        for (int i = 0; i < 18; i++) {
            cutWith("" + (i + 1), Soil.NONE, false);
        }
        Policy often = Policy.defaults().with(TurfPolicy.GREENS_PER_SHARPENING, 18);
        assertThat(CutterSignals.of(state(), DAY, often))
                .extracting(TurfSignal::kind)
                .containsExactly(Kind.SHARPEN);
    }

    @Test
    void warnsWhenTodaysStopIsNotYesterdays() {
        note("2024-04-30T04:00:00Z", new CrewNote.StopSet("old one", 127));
        note("2024-05-01T04:00:00Z", new CrewNote.StopSet("old one", 127.5));
        assertThat(kinds()).isEmpty();
        note("2024-05-01T04:30:00Z", new CrewNote.StopSet("old one", 133));
        assertThat(kinds()).containsExactly(Kind.STOP_DIFFERS);
        note("2024-05-01T04:40:00Z", new CrewNote.StopSet("old one", 127));
        assertThat(kinds()).as("set back the same morning").isEmpty();
    }

    @Test
    void howMuchAStopMayDifferIsASetting() {
        note("2024-04-29T04:00:00Z", new CrewNote.StopSet("old one", 127));
        note("2024-05-01T04:30:00Z", new CrewNote.StopSet("old one", 133));
        note("2024-05-01T04:31:00Z", new CrewNote.StopSet("new one", 120));
        Policy wide = Policy.defaults().with(TurfPolicy.STOP_DIFFERS_MILLIMETRES, 7.0);
        assertThat(CutterSignals.of(state(), DAY, wide)).isEmpty();
        Policy exact = Policy.defaults().with(TurfPolicy.STOP_DIFFERS_MILLIMETRES, 6.0);
        assertThat(CutterSignals.of(state(), DAY, exact))
                .singleElement()
                .satisfies(signal -> assertThat(signal.about()).isEqualTo("old one"));
        assertThat(CutterSignals.of(state(), DAY.plusDays(1), exact)).isEmpty();
    }

    @Test
    void stopDepthIsTheCupAndAnInch() {
        assertThat(CutterStop.depthMillimetres(101.6)).isCloseTo(127.0, within(1e-9));
        assertThatThrownBy(() -> CutterStop.depthMillimetres(0)).hasMessageContaining("millimetres");
    }

    @Test
    void aMeasureOutOfTheUsualSpeaksUpOnceThereAreEnough() {
        double[] depths = {110, 111, 110, 109, 110, 111, 110, 109, 110, 111, 110};
        for (int i = 0; i < depths.length; i++) {
            facts.add(on(String.format(Locale.ROOT, "2024-04-%02dT05:00:00Z", i + 1), "3", depth(depths[i])));
        }
        assertThat(MeasureCharts.signals(state())).isEmpty();
        facts.add(on("2024-05-01T05:00:00Z", "4", depth(125)));
        assertThat(MeasureCharts.signals(state()))
                .singleElement()
                .satisfies(signal -> assertThat(signal.about()).isEqualTo("holeDepth"));
        assertThatThrownBy(() -> IndividualsChart.of(List.of(1.0))).hasMessageContaining("two values");
    }

    private static CupWork.SpotCheck depth(double millimetres) {
        return new CupWork.SpotCheck(OptionalDouble.of(millimetres), OptionalDouble.empty(), OptionalDouble.empty());
    }
}
