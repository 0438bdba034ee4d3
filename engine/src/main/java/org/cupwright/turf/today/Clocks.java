package org.cupwright.turf.today;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.cupchange.PlugWork.PlugLook;
import org.cupwright.policy.Policy;
import org.cupwright.turf.TurfPolicy;
import org.cupwright.turf.growth.ClockEnd;
import org.cupwright.turf.growth.GrowthClock;
import org.cupwright.turf.state.GreenState;
import org.cupwright.turf.state.OldHole;
import org.cupwright.turf.state.Plug;

/** The two clocks of every old hole and plug. */
public final class Clocks {
    private final TurfDay turf;
    private final GrowthClock wearRest;
    private final GrowthClock plugClock;

    public Clocks(TurfDay turf) {
        this.turf = turf;
        this.wearRest = GrowthClock.wearRest(turf.policy());
        this.plugClock = GrowthClock.plug(turf.policy());
    }

    /** Old holes of a green that still rest on a day, the one that rests longest last. */
    public List<RestingHole> restingOn(String hole, LocalDate day) {
        return turf.state().green(hole).holes().old().stream()
                .filter(old -> !old.leftOn().isBefore(day.minusDays(wearRest.capDays())))
                .map(old -> new RestingHole(hole, old, rest(old)))
                .filter(resting -> !resting.rests().lastDay().isBefore(day))
                .toList();
    }

    /** When an old hole's surroundings have rested. */
    public ClockEnd rest(OldHole old) {
        return end(wearRest, old.leftOn());
    }

    /** The last day on which the ground about a hole rests that is left on a day. */
    public LocalDate restsUntil(LocalDate leftOn) {
        return end(wearRest, leftOn).lastDay();
    }

    /** The last day on which a plug is taken to show that is set on a day. */
    public LocalDate plugShowsUntil(LocalDate setOn) {
        return end(plugClock, setOn).lastDay();
    }

    /** Plugs of a green that count or are asked about on a day. */
    public List<VisiblePlug> plugsOn(String hole, LocalDate day) {
        GreenState green = turf.state().green(hole);
        return green.plugs().plugs().stream()
                .map(plug -> visible(hole, plug))
                .filter(plug -> !plug.askUntil().isBefore(day))
                .toList();
    }

    /** What began before the growth series is long over: its latest end will do. */
    private ClockEnd end(GrowthClock clock, LocalDate start) {
        return turf.growth().reachesBackTo(start) ? clock.endFrom(start, turf.growth()) : clock.latestFrom(start);
    }

    private VisiblePlug visible(String hole, Plug plug) {
        Policy policy = turf.policy();
        ClockEnd guess = end(plugClock, plug.knitsSince());
        boolean faulty = plug.look().filter(look -> look != PlugLook.LEVEL).isPresent();
        Optional<LocalDate> seenUntil =
                plug.seenOn().map(seen -> seen.plusDays(policy.get(TurfPolicy.PLUG_LOOK_AGAIN_DAYS)));
        LocalDate counts =
                seenUntil.filter(until -> until.isAfter(guess.lastDay())).orElse(guess.lastDay());
        LocalDate last = faulty && counts.isBefore(turf.day()) ? turf.day() : counts;
        return new VisiblePlug(hole, plug, guess, last, last.plusDays(policy.get(TurfPolicy.PLUG_ASK_DAYS)));
    }
}
