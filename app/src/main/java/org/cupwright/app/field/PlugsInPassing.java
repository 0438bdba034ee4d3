package org.cupwright.app.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.turf.state.Plug;
import org.cupwright.turf.today.RecheckItem;
import org.cupwright.turf.today.RecheckItem.Reason;
import org.cupwright.turf.today.WateringItem;

/**
 * Which plugs of a green whoever passes by is asked about: few, as more are not looked at in a round.
 *
 * @param watering plugs that want water
 * @param recheck plugs that want a look
 */
record PlugsInPassing(List<WateringItem> watering, List<RecheckItem> recheck) {
    /** Of those that should have knit, the oldest of a green (our choice). */
    private static final int OLDEST = 2;

    /**
     * A plug, and what it asks for.
     *
     * @param water why it wants water; empty where it wants none
     * @param look why it wants a look
     */
    record Wanted(Plug plug, List<WateringItem.Reason> water, Optional<RecheckItem> look) {}

    /** Plugs that want water first, then the others. */
    List<Wanted> on(String hole) {
        Map<MapPoint, Wanted> wanted = new LinkedHashMap<>();
        watering.stream()
                .filter(item -> item.hole().equals(hole) && !item.done())
                .forEach(item -> {
                    Wanted before = before(wanted, item.plug());
                    List<WateringItem.Reason> water = new ArrayList<>(before.water());
                    water.add(item.reason());
                    wanted.put(item.plug().at(), new Wanted(item.plug(), List.copyOf(water), before.look()));
                });
        looks(hole).forEach(item -> {
            Wanted before = before(wanted, item.plug());
            wanted.put(item.plug().at(), new Wanted(item.plug(), before.water(), Optional.of(item)));
        });
        return List.copyOf(wanted.values());
    }

    private static Wanted before(Map<MapPoint, Wanted> wanted, Plug plug) {
        return wanted.getOrDefault(plug.at(), new Wanted(plug, List.of(), Optional.empty()));
    }

    /** Those with a fault, the newest that nobody has seen, and the oldest of those that should have knit. */
    private List<RecheckItem> looks(String hole) {
        List<RecheckItem> all = recheck.stream()
                .filter(item -> item.hole().equals(hole))
                .sorted((one, other) ->
                        one.plug().setOn().compareTo(other.plug().setOn()))
                .toList();
        List<RecheckItem> looks = new ArrayList<>();
        all.stream().filter(item -> item.reason().isFault()).forEach(looks::add);
        all.stream()
                .filter(item -> item.reason() == Reason.NEVER_SEEN)
                .reduce((older, newer) -> newer)
                .ifPresent(looks::add);
        all.stream()
                .filter(item -> item.reason() == Reason.LOOK_FIRST)
                .limit(OLDEST)
                .forEach(looks::add);
        return looks;
    }
}
