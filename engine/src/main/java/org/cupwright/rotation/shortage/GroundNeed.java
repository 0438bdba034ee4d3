package org.cupwright.rotation.shortage;

import java.util.BitSet;
import java.util.List;

/**
 * What the holes of one green, or of two that share one, ask of its ground over the days of a plan, in numbers.
 *
 * @param stages one for each hole and day that is to have one, in order of days
 * @param restsUntil by day of the plan, the last day of it on which ground rests about a hole that was cut that day
 */
public record GroundNeed(List<Stage> stages, int[] restsUntil) {
    /**
     * One hole on one day.
     *
     * @param hole its name
     * @param day which day of the plan
     * @param offered the spots it may have that are not on ground that rests about a hole before the plan
     */
    public record Stage(String hole, int day, BitSet offered) {}

    public GroundNeed {
        stages = List.copyOf(stages);
    }

    /**
     * Days on which more holes are wanted than fit.
     *
     * @param from the first stage
     * @param to the last stage
     * @param room so many fit at most
     * @param solved whether the solver proved it
     */
    public record Window(int from, int to, int room, boolean solved) {
        public int wanted() {
            return to - from + 1;
        }

        public int tooMany() {
            return wanted() - room;
        }
    }

    /** The last stage whose ground is asked while that of a stage still rests. */
    int lastTogether(int from) {
        int until = restsUntil[stages.get(from).day()];
        int last = from;
        while (last + 1 < stages.size() && stages.get(last + 1).day() <= until) {
            last++;
        }
        return last;
    }

    /** All the spots of some stages. */
    BitSet offered(int from, int to) {
        BitSet all = new BitSet();
        stages.subList(from, to + 1).forEach(stage -> all.or(stage.offered()));
        return all;
    }
}
