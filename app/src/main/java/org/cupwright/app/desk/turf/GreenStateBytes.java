package org.cupwright.app.desk.turf;

import java.io.IOException;
import org.cupwright.app.desk.history.StateIn;
import org.cupwright.app.desk.history.StateOut;
import org.cupwright.cupchange.CareWork.Upkeep;
import org.cupwright.cupchange.GroundNote.GroundReason;
import org.cupwright.cupchange.GroundNote.GroundUse;
import org.cupwright.cupchange.PlugWork.PlugLook;
import org.cupwright.turf.state.CareGiven;
import org.cupwright.turf.state.CareGiven.Watered;
import org.cupwright.turf.state.CupInGround;
import org.cupwright.turf.state.GreenState;
import org.cupwright.turf.state.HolesOnGreen;
import org.cupwright.turf.state.MarkedGround;
import org.cupwright.turf.state.OldHole;
import org.cupwright.turf.state.Plug;
import org.cupwright.turf.state.PlugsOnGreen;

/** The kept state of one green as bytes. */
final class GreenStateBytes {
    private GreenStateBytes() {}

    static void write(StateOut out, GreenState green) throws IOException {
        out.text(green.hole());
        out.optional(green.holes().now(), GreenStateBytes::cup);
        out.each(green.holes().old(), GreenStateBytes::old);
        out.each(green.plugs().plugs(), GreenStateBytes::plug);
        out.each(green.marked(), GreenStateBytes::marked);
        care(out, green.care());
        out.flag(green.temporaryGreen());
        out.number(green.speedFeet());
    }

    static GreenState read(StateIn in) throws IOException {
        return new GreenState(
                in.text(),
                new HolesOnGreen(in.optional(GreenStateBytes::cup), in.each(GreenStateBytes::old)),
                new PlugsOnGreen(in.each(GreenStateBytes::plug)),
                in.each(GreenStateBytes::marked),
                care(in),
                in.flag(),
                in.optionalNumber());
    }

    private static void cup(StateOut out, CupInGround cup) throws IOException {
        out.place(cup.at());
        out.day(cup.cutOn());
    }

    private static CupInGround cup(StateIn in) throws IOException {
        return new CupInGround(in.place(), in.day());
    }

    private static void old(StateOut out, OldHole hole) throws IOException {
        out.place(hole.at());
        out.day(hole.cutOn());
        out.day(hole.leftOn());
    }

    private static OldHole old(StateIn in) throws IOException {
        return new OldHole(in.place(), in.day(), in.day());
    }

    private static void plug(StateOut out, Plug plug) throws IOException {
        out.place(plug.at());
        out.day(plug.setOn());
        out.day(plug.knitsSince());
        out.optional(plug.wateredOn(), StateOut::day);
        out.optional(plug.look(), StateOut::choice);
        out.optional(plug.seenOn(), StateOut::day);
    }

    private static Plug plug(StateIn in) throws IOException {
        return new Plug(
                in.place(),
                in.day(),
                in.day(),
                in.optional(StateIn::day),
                in.optional(from -> from.choice(PlugLook.class)),
                in.optional(StateIn::day));
    }

    private static void marked(StateOut out, MarkedGround ground) throws IOException {
        out.choice(ground.use());
        out.geometry(ground.place());
        out.choice(ground.reason());
        out.day(ground.from());
        out.optional(ground.until(), StateOut::day);
    }

    private static MarkedGround marked(StateIn in) throws IOException {
        return new MarkedGround(
                in.choice(GroundUse.class),
                in.geometry(),
                in.choice(GroundReason.class),
                in.day(),
                in.optional(StateIn::day));
    }

    static void care(StateOut out, CareGiven care) throws IOException {
        out.map(care.lastDone(), StateOut::choice, StateOut::day);
        out.each(care.irrigation(), (to, watered) -> {
            to.day(watered.day());
            to.number(watered.millimetres());
        });
        out.optional(care.reentryFrom(), StateOut::moment);
    }

    static CareGiven care(StateIn in) throws IOException {
        return new CareGiven(
                in.map(from -> from.choice(Upkeep.class), StateIn::day),
                in.each(from -> new Watered(from.day(), from.number())),
                in.optional(StateIn::moment));
    }
}
