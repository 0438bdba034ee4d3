package org.cupwright.course;

import java.util.ArrayList;
import java.util.List;

/** Nines and eighteens together, on a sheet of paper or in a round: as many as have room, and none is torn apart. */
public final class WholeLoops {
    private WholeLoops() {}

    /** Which parts of a course go together; practice greens, which no plan has, with none. */
    public static List<List<Loop>> packed(List<Loop> blocks, int mostHoles) {
        List<List<Loop>> together = new ArrayList<>(List.of(new ArrayList<>()));
        int used = 0;
        for (Loop block : blocks) {
            if (block.practice()) {
                continue;
            }
            int holes = block.holes().size();
            if (used > 0 && used + holes > mostHoles) {
                together.add(new ArrayList<>());
                used = 0;
            }
            together.get(together.size() - 1).add(block);
            used += holes;
        }
        return together;
    }
}
