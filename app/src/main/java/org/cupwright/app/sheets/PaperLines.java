package org.cupwright.app.sheets;

import org.cupwright.app.maps.OpenSans;

/**
 * How much room a paragraph takes, so that what does not fit goes elsewhere before it is laid out.
 *
 * @param points size of its letters
 * @param leading from line to line, in letters
 */
record PaperLines(double points, double leading) {
    private static final double MILLIMETRES_A_POINT = 25.4 / 72;

    /** How high a paragraph is when it may be so wide, both in mm; of the heavier letters, so never too low. */
    double height(String text, double widthMillimetres) {
        double size = points * MILLIMETRES_A_POINT;
        int lines = 1;
        double used = 0;
        for (String word : text.split(" ", -1)) {
            double width = OpenSans.BOLD.width(word + " ", size);
            if (used > 0 && used + width > widthMillimetres) {
                lines++;
                used = 0;
            }
            used += width;
            lines += (int) (used / widthMillimetres);
            used %= widthMillimetres;
        }
        return lines * size * leading;
    }
}
