package org.cupwright.turf.signal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.cupchange.CupWork.Soil;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Measure;
import org.cupwright.message.Message.Name;
import org.cupwright.policy.Policy;
import org.cupwright.turf.TurfPolicy;
import org.cupwright.turf.signal.TurfSignal.Kind;
import org.cupwright.turf.state.CutterState;
import org.cupwright.turf.state.TurfState;

/** What the cutters ask for. */
public final class CutterSignals {
    private CutterSignals() {}

    /** Of all cutters, by name. */
    public static List<TurfSignal> of(TurfState state, LocalDate day, Policy policy) {
        List<TurfSignal> signals = new ArrayList<>();
        state.cutters().keySet().stream().sorted().forEach(name -> {
            CutterState cutter = state.cutters().get(name);
            stop(cutter, policy, signals);
            blade(cutter, policy, signals);
            stopDiffers(cutter, day, policy).ifPresent(signals::add);
        });
        return signals;
    }

    private static void stop(CutterState cutter, Policy policy, List<TurfSignal> signals) {
        if (cutter.runsWay() != Soil.NONE && cutter.runGreens() >= policy.get(TurfPolicy.SAME_WAY_GREENS)) {
            String key = cutter.runsWay() == Soil.TOOK_OUT ? "signal.plugsRunHigh" : "signal.plugsRunLow";
            signals.add(say(Kind.CHECK_STOP, cutter, key, new Count(cutter.runGreens())));
        }
    }

    private static void blade(CutterState cutter, Policy policy, List<TurfSignal> signals) {
        cutter.raggedOn()
                .ifPresent(ragged -> signals.add(say(Kind.BLADE, cutter, "signal.raggedEdge", new Day(ragged))));
        if (cutter.greensSince() >= policy.get(TurfPolicy.GREENS_PER_SHARPENING)) {
            signals.add(say(Kind.SHARPEN, cutter, "signal.greensSinceSharpening", new Count(cutter.greensSince())));
        }
    }

    /** A stop that was set on this day otherwise than on the earlier day on which it was set last. */
    public static Optional<TurfSignal> stopDiffers(CutterState cutter, LocalDate day, Policy policy) {
        if (cutter.stop().isEmpty() || cutter.stopBefore().isEmpty()) {
            return Optional.empty();
        }
        double now = cutter.stop().get().depthMillimetres();
        double before = cutter.stopBefore().get().depthMillimetres();
        boolean today = cutter.stop().get().setOn().equals(day);
        if (!today || Math.abs(now - before) < policy.get(TurfPolicy.STOP_DIFFERS_MILLIMETRES)) {
            return Optional.empty();
        }
        Day earlier = new Day(cutter.stopBefore().get().setOn());
        return Optional.of(say(
                Kind.STOP_DIFFERS,
                cutter,
                "signal.stopDiffers",
                Measure.of(now, "mm"),
                Measure.of(before, "mm"),
                earlier));
    }

    private static TurfSignal say(Kind kind, CutterState cutter, String key, Message.Argument... arguments) {
        List<Message.Argument> all = new ArrayList<>();
        all.add(new Name(cutter.cutter()));
        all.addAll(List.of(arguments));
        return new TurfSignal(kind, cutter.cutter(), new Message(key, all));
    }
}
