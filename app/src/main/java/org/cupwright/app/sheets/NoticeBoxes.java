package org.cupwright.app.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.paper.PaperSize;

/**
 * What has to be known first, shared out over quarters of the card, so that nothing is pushed off.
 *
 * @param first what stands at the top of the first quarter
 * @param further what goes on over quarters of its own
 */
record NoticeBoxes(List<String> first, List<List<String>> further) {
    private static final PaperLines LETTERS = new PaperLines(8.5, 1.4);
    private static final double GAP_MILLIMETRES = 0.6;
    private static final double HEAD_MILLIMETRES = 9;
    private static final double BESIDE_MILLIMETRES = 19;

    /** Of a quarter's height, what everything else on the first one takes, and the margins of the others. */
    private static final double ELSE_ON_FIRST_MILLIMETRES = 116;

    private static final double MARGINS_MILLIMETRES = 26;

    /** @param also a paragraph that stands on the first quarter besides; empty where none does */
    static NoticeBoxes of(List<String> notices, Optional<String> also, PaperSize paper) {
        double width = paper.widthMillimetres() / 2 - BESIDE_MILLIMETRES;
        double quarter = paper.heightMillimetres() / 2;
        List<List<String>> boxes = new ArrayList<>(List.of(new ArrayList<>()));
        double left = quarter
                - ELSE_ON_FIRST_MILLIMETRES
                - HEAD_MILLIMETRES
                - also.map(text -> LETTERS.height(text, width)).orElse(0.0);
        for (String notice : notices) {
            double height = LETTERS.height(notice, width) + GAP_MILLIMETRES;
            if (height > left) {
                boxes.add(new ArrayList<>());
                left = quarter - MARGINS_MILLIMETRES - HEAD_MILLIMETRES;
            }
            left -= height;
            boxes.get(boxes.size() - 1).add(notice);
        }
        return new NoticeBoxes(boxes.get(0), boxes.subList(1, boxes.size()));
    }
}
