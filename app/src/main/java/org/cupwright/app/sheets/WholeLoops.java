package org.cupwright.app.sheets;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.Loop;

/** Nines and eighteens on sheets of paper: as many as one has room for, and none is torn apart. */
final class WholeLoops {
    private WholeLoops() {}

    /** Which parts of a course go on which sheet; practice greens, which no plan has, on none. */
    static List<List<Loop>> packed(List<Loop> blocks, int mostHoles) {
        List<List<Loop>> sheets = new ArrayList<>(List.of(new ArrayList<>()));
        int used = 0;
        for (Loop block : blocks) {
            if (block.practice()) {
                continue;
            }
            int holes = block.holes().size();
            if (used > 0 && used + holes > mostHoles) {
                sheets.add(new ArrayList<>());
                used = 0;
            }
            sheets.get(sheets.size() - 1).add(block);
            used += holes;
        }
        return sheets;
    }
}
