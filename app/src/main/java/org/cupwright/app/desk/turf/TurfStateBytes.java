package org.cupwright.app.desk.turf;

import java.io.IOException;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cupwright.app.desk.history.StateIn;
import org.cupwright.app.desk.history.StateOut;
import org.cupwright.cupchange.CupWork.Soil;
import org.cupwright.turf.state.CourseState;
import org.cupwright.turf.state.CutterState;
import org.cupwright.turf.state.CutterState.StopSetting;
import org.cupwright.turf.state.FactMark;
import org.cupwright.turf.state.GreenState;
import org.cupwright.turf.state.Measured;
import org.cupwright.turf.state.TurfState;

/** A kept state of the turf as bytes. */
final class TurfStateBytes {
    private TurfStateBytes() {}

    static void write(StateOut out, TurfState state) throws IOException {
        out.text(state.zone().getId());
        out.optional(state.last(), TurfStateBytes::mark);
        out.each(state.greens().values(), GreenStateBytes::write);
        out.each(state.cutters().values(), TurfStateBytes::cutter);
        course(out, state.course());
        out.big(state.facts());
    }

    static TurfState read(StateIn in) throws IOException {
        return new TurfState(
                ZoneId.of(in.text()),
                in.optional(TurfStateBytes::mark),
                by(GreenState::hole, in.each(GreenStateBytes::read)),
                by(CutterState::cutter, in.each(TurfStateBytes::cutter)),
                course(in),
                in.big());
    }

    private static <T> Map<String, T> by(Function<T, String> name, Collection<T> values) {
        return values.stream().collect(Collectors.toMap(name, Function.identity()));
    }

    private static void mark(StateOut out, FactMark mark) throws IOException {
        out.moment(mark.happenedAt());
        out.big(mark.id().getMostSignificantBits());
        out.big(mark.id().getLeastSignificantBits());
    }

    private static FactMark mark(StateIn in) throws IOException {
        return new FactMark(in.moment(), new UUID(in.big(), in.big()));
    }

    private static void cutter(StateOut out, CutterState cutter) throws IOException {
        out.text(cutter.cutter());
        out.optional(cutter.sharpenedOn(), StateOut::day);
        out.whole(cutter.greensSince());
        out.optional(cutter.raggedOn(), StateOut::day);
        out.choice(cutter.runsWay());
        out.whole(cutter.runGreens());
        out.text(cutter.runHole());
        out.optional(cutter.runOn(), StateOut::day);
        out.optional(cutter.stop(), TurfStateBytes::stop);
        out.optional(cutter.stopBefore(), TurfStateBytes::stop);
    }

    private static CutterState cutter(StateIn in) throws IOException {
        return new CutterState(
                in.text(),
                in.optional(StateIn::day),
                in.whole(),
                in.optional(StateIn::day),
                in.choice(Soil.class),
                in.whole(),
                in.text(),
                in.optional(StateIn::day),
                in.optional(TurfStateBytes::stop),
                in.optional(TurfStateBytes::stop));
    }

    private static void stop(StateOut out, StopSetting stop) throws IOException {
        out.number(stop.depthMillimetres());
        out.day(stop.setOn());
    }

    private static StopSetting stop(StateIn in) throws IOException {
        return new StopSetting(in.number(), in.day());
    }

    private static void course(StateOut out, CourseState course) throws IOException {
        GreenStateBytes.care(out, course.care());
        out.map(course.rounds(), StateOut::day, StateOut::whole);
        out.each(course.measured(), TurfStateBytes::measured);
        out.flag(course.frost());
        out.number(course.speedFeet());
    }

    private static CourseState course(StateIn in) throws IOException {
        return new CourseState(
                GreenStateBytes.care(in),
                in.map(StateIn::day, StateIn::whole),
                in.each(TurfStateBytes::measured),
                in.flag(),
                in.optionalNumber());
    }

    private static void measured(StateOut out, Measured measured) throws IOException {
        out.choice(measured.what());
        out.text(measured.hole());
        out.day(measured.day());
        out.number(measured.millimetres());
    }

    private static Measured measured(StateIn in) throws IOException {
        return new Measured(in.choice(Measured.What.class), in.text(), in.day(), in.number());
    }
}
