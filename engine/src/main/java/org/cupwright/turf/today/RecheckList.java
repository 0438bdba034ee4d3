package org.cupwright.turf.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.turf.state.Plug;
import org.cupwright.turf.today.RecheckItem.Reason;

/** Which plugs want a look, in the order in which the greens are best visited. */
public final class RecheckList {
    private final TurfDay turf;
    private final Clocks clocks;

    public RecheckList(TurfDay turf) {
        this.turf = turf;
        this.clocks = new Clocks(turf);
    }

    /**
     * The greens in their order, those with diseased ground last, so that nothing is carried from them to clean
     * ground.
     */
    public List<String> hygieneOrder(List<String> holes) {
        List<String> order = new ArrayList<>(holes);
        order.removeIf(this::diseased);
        holes.stream().filter(this::diseased).forEach(order::add);
        return order;
    }

    /**
     * The day's list in {@link #hygieneOrder}.
     *
     * @param holes in round order
     */
    public List<RecheckItem> list(List<String> holes) {
        List<RecheckItem> items = new ArrayList<>();
        for (String hole : hygieneOrder(holes)) {
            for (VisiblePlug plug : clocks.plugsOn(hole, turf.day())) {
                reason(plug)
                        .map(why -> new RecheckItem(hole, plug.plug(), why, diseased(hole)))
                        .ifPresent(items::add);
            }
        }
        return items;
    }

    private boolean diseased(String hole) {
        return turf.state().green(hole).diseasedOn(turf.day());
    }

    private Optional<Reason> reason(VisiblePlug visible) {
        Plug plug = visible.plug();
        LocalDate day = turf.day();
        if (plug.look().isPresent()) {
            Optional<Reason> fault = switch (plug.look().get()) {
                case DAMAGED -> Optional.of(Reason.DAMAGED);
                case HIGH -> Optional.of(Reason.HIGH);
                case LOW -> Optional.of(Reason.LOW);
                case LEVEL, KNIT -> Optional.empty();
            };
            return fault.isPresent() ? fault : lookFirst(visible);
        }
        return visible.lookFirstOn(day)
                ? Optional.of(Reason.LOOK_FIRST)
                : plug.setOn().isBefore(day) ? Optional.of(Reason.NEVER_SEEN) : Optional.empty();
    }

    private Optional<Reason> lookFirst(VisiblePlug visible) {
        return visible.lookFirstOn(turf.day()) ? Optional.of(Reason.LOOK_FIRST) : Optional.empty();
    }
}
