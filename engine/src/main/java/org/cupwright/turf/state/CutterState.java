package org.cupwright.turf.state;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.Soil;

/**
 * One cutter as the facts have left it.
 *
 * @param sharpenedOn the last day its blade was sharpened
 * @param greensSince greens cut since then
 * @param raggedOn the last day since then on which it left a ragged edge
 * @param runsWay which way its last plugs ran: soil put in (low), taken out (high), or none
 * @param runGreens how many different greens in a row ran that way
 * @param runHole the last of them
 * @param runOn the day of the last of them
 * @param stop how its stop was set last
 * @param stopBefore how it was set last on an earlier day than that
 */
public record CutterState(
        String cutter,
        Optional<LocalDate> sharpenedOn,
        int greensSince,
        Optional<LocalDate> raggedOn,
        Soil runsWay,
        int runGreens,
        String runHole,
        Optional<LocalDate> runOn,
        Optional<StopSetting> stop,
        Optional<StopSetting> stopBefore) {
    /** How deep a stop was set, on which day. */
    public record StopSetting(double depthMillimetres, LocalDate setOn) {}

    static CutterState of(String cutter) {
        return new CutterState(
                cutter,
                Optional.empty(),
                0,
                Optional.empty(),
                Soil.NONE,
                0,
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    CutterState cut(String hole, CupChanged change, LocalDate day) {
        boolean goesOn = change.soil() == runsWay && change.soil() != Soil.NONE;
        int length = change.soil() == Soil.NONE ? 0 : goesOn ? runGreens + (hole.equals(runHole) ? 0 : 1) : 1;
        return new CutterState(
                cutter,
                sharpenedOn,
                greensSince + 1,
                change.edgeRagged() ? Optional.of(day) : raggedOn,
                change.soil(),
                length,
                hole,
                Optional.of(day),
                stop,
                stopBefore);
    }

    CutterState sharpened(LocalDate day) {
        return new CutterState(
                cutter, Optional.of(day), 0, Optional.empty(), runsWay, runGreens, runHole, runOn, stop, stopBefore);
    }

    /** The stop was looked at and set: what ran one way before says nothing any more. */
    CutterState stopSet(double depthMillimetres, LocalDate day) {
        boolean again = stop.filter(known -> known.setOn().equals(day)).isPresent();
        return new CutterState(
                cutter,
                sharpenedOn,
                greensSince,
                raggedOn,
                Soil.NONE,
                0,
                "",
                Optional.empty(),
                Optional.of(new StopSetting(depthMillimetres, day)),
                again ? stopBefore : stop);
    }
}
