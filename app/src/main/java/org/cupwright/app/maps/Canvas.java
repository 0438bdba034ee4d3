package org.cupwright.app.maps;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * A drawing in the making: where the ground lies on it, how fine it is, what is drawn so far, and where there is still
 * room to write; what was written once is not written over.
 *
 * @param frame from the ground to the drawing
 * @param style how fine it is
 * @param foot where the drawing of the ground ends and the writing under it begins
 * @param svg what is drawn
 * @param taken boxes in which no label may stand
 */
record Canvas(MapFrame frame, MapStyle style, double foot, Svg svg, List<Envelope> taken) {
    /** Height of a figure as a part of the letters' size: of this font, measured. */
    private static final double FIGURE = 0.72;

    /** Clear ground about a label, as a part of the letters' size: our choice. */
    private static final double EDGE = 0.14;

    double em() {
        return style.em();
    }

    /** Keeps the ground about a point free of writing. */
    void keep(double x, double y, double radius) {
        taken.add(new Envelope(x - radius, x + radius, y - radius, y + radius));
    }

    void keep(MapPoint at, double radius) {
        keep(frame.x(at), frame.y(at), radius);
    }

    /** The first of some boxes that is free; it is then taken. */
    Optional<Envelope> take(List<Envelope> boxes) {
        Optional<Envelope> free = boxes.stream().filter(this::isFree).findFirst();
        free.ifPresent(taken::add);
        return free;
    }

    private boolean isFree(Envelope box) {
        return new Envelope(0, frame.width(), 0, foot).contains(box)
                && taken.stream().noneMatch(box::intersects);
    }

    /**
     * The box of a label beside a point, so far from it, so many ways right and down; none of either: about the point.
     */
    Envelope box(OpenSans letters, String label, MapPoint at, double gap, int... way) {
        double width = letters.width(label, em()) + 2 * EDGE * em();
        double height = (FIGURE + 2 * EDGE) * em();
        double x = frame.x(at) + way[0] * (gap + width / 2);
        double y = frame.y(at) + way[1] * (gap + height / 2);
        return new Envelope(x - width / 2, x + width / 2, y - height / 2, y + height / 2);
    }

    /** Writes a label into the first of some boxes that is free, if one is. */
    void labelWhereFree(OpenSans letters, String label, List<Envelope> boxes) {
        take(boxes).ifPresent(box -> label(letters, label, box));
    }

    /** Writes a label into its box, with clear ground under it so that lines do not run through it. */
    void label(OpenSans letters, String label, Envelope box) {
        svg.group("clear", MapStyle.fill(MapStyle.PAPER)).box(box).end();
        svg.text(letters, em(), false, box.getMinX() + EDGE * em(), box.getMaxY() - EDGE * em(), label);
    }

    /** A disc in a group of its own. */
    void disc(String name, String paint, MapPoint at, double radius) {
        svg.group(name, paint).circle(frame.x(at), frame.y(at), radius).end();
    }

    /** The lines of a shape in a group of their own. */
    void outline(String name, String paint, Geometry shape) {
        svg.group(name, paint).path(strokes().of(shape)).end();
    }

    Strokes strokes() {
        return new Strokes(frame);
    }
}
