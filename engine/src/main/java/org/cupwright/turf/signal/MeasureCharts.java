package org.cupwright.turf.signal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.cupwright.message.Message;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.state.Measured;
import org.cupwright.turf.state.TurfState;

/** Charts of the spot checks. */
public final class MeasureCharts {
    /** With fewer measures the limits say little, and the chart does not speak up (our choice). */
    public static final int FEWEST_VALUES = 10;

    private MeasureCharts() {}

    /** One chart for each thing that was measured twice or more. */
    public static Map<Measured.What, IndividualsChart> of(TurfState state) {
        Map<Measured.What, IndividualsChart> charts = new EnumMap<>(Measured.What.class);
        for (Measured.What what : Measured.What.values()) {
            List<Double> values =
                    measures(state, what).stream().map(Measured::millimetres).toList();
            if (values.size() >= 2) {
                charts.put(what, IndividualsChart.of(values));
            }
        }
        return charts;
    }

    /** Signals where the last measure is out of the usual. */
    public static List<TurfSignal> signals(TurfState state) {
        List<TurfSignal> signals = new ArrayList<>();
        of(state).forEach((what, chart) -> {
            int last = chart.values().size() - 1;
            boolean out = chart.outside().contains(last) || chart.outsideMoves().contains(last);
            if (out && chart.values().size() >= FEWEST_VALUES) {
                List<Measured> measures = measures(state, what);
                Measured newest = measures.get(measures.size() - 1);
                String name = EnumNames.lowerCamel(what);
                signals.add(new TurfSignal(
                        TurfSignal.Kind.CHART,
                        name,
                        Message.of(
                                "signal.measureOutOfUsual",
                                new Message.Translated("measure." + name),
                                new Message.Name(newest.hole()),
                                new Message.Length(newest.millimetres() / 1000),
                                new Message.Length(chart.lowerLimit() / 1000),
                                new Message.Length(chart.upperLimit() / 1000))));
            }
        });
        return signals;
    }

    private static List<Measured> measures(TurfState state, Measured.What what) {
        return state.course().measured().stream()
                .filter(measured -> measured.what() == what)
                .toList();
    }
}
