package org.cupwright.app.desk.plan;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;

/**
 * How far a day's plan has been carried out.
 *
 * @param holes the planned holes of which the logbook says that they were cut, or left, in round order
 * @param last when the last of them was done, by the course's clock
 * @param all whether that is every hole of the plan that is to be cut
 * @param movedInPlay when holes were moved while they were played to
 */
public record CutSoFar(List<String> holes, Optional<LocalTime> last, boolean all, Map<String, LocalTime> movedInPlay) {
    public static final CutSoFar NOTHING = new CutSoFar(List.of(), Optional.empty(), false, Map.of());

    public CutSoFar {
        holes = List.copyOf(holes);
        movedInPlay = Map.copyOf(movedInPlay);
    }

    /** When the hole was moved in play, if it was. */
    public Optional<LocalTime> findMovedInPlay(String hole) {
        return Optional.ofNullable(movedInPlay.get(hole));
    }

    public static CutSoFar of(StoredPlan plan, HolesCut cut) {
        List<String> done = plan.holes().stream()
                .map(StoredHole::hole)
                .filter(hole -> cut.find(hole).isPresent())
                .toList();
        List<String> due = plan.holes().stream()
                .filter(hole -> !hole.stays())
                .map(StoredHole::hole)
                .toList();
        boolean all = !due.isEmpty() && done.containsAll(due);
        Optional<LocalTime> last =
                done.stream().map(hole -> cut.holes().get(hole).time()).max(LocalTime::compareTo);
        Map<String, LocalTime> moved = done.stream()
                .filter(hole -> cut.holes().get(hole).inPlay())
                .collect(Collectors.toMap(
                        hole -> hole, hole -> cut.holes().get(hole).time()));
        return new CutSoFar(done, last, all, moved);
    }
}
