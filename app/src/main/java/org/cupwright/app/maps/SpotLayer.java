package org.cupwright.app.maps;

import java.util.List;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Mark;
import org.locationtech.jts.geom.Envelope;

/** What lies at single points: today's spot, old holes with their age, marks, slopes. */
final class SpotLayer {
    /** Where a label may stand beside its place: ways right and down. */
    static final List<int[]> WAYS = List.of(new int[] {1, 0}, new int[] {-1, 0}, new int[] {0, -1}, new int[] {0, 1});

    private static final double OLD_HOLE_EM = 0.34;

    private final GreenDrawing drawing;
    private final Canvas canvas;
    private final Texts texts;

    /** Takes the room of the spots themselves before any label does. */
    SpotLayer(GreenDrawing drawing, Canvas canvas, Texts texts) {
        this.drawing = drawing;
        this.canvas = canvas;
        this.texts = texts;
        drawing.spots().forEach(spot -> canvas.keep(spot, canvas.em()));
        drawing.oldHoles().forEach(hole -> canvas.keep(hole.at(), OLD_HOLE_EM * canvas.em()));
        drawing.hole().marks().forEach(mark -> canvas.keep(mark.at(), canvas.em() / 2));
    }

    void draw() {
        marks();
        oldHoles();
        if (canvas.style().full()) {
            slopes();
        }
        double ring = canvas.em();
        drawing.spots().forEach(spot -> {
            canvas.disc("spot-ground", MapStyle.fill(MapStyle.PAPER), spot, ring);
            canvas.disc("spot-ring", MapStyle.stroke(MapStyle.ACCENT, 3), spot, ring);
            canvas.disc("spot", MapStyle.fill(MapStyle.ACCENT), spot, 0.42 * ring);
        });
    }

    private void marks() {
        double arm = 0.4 * canvas.em();
        canvas.svg().group("mark", MapStyle.stroke(MapStyle.INK, 1.4));
        for (Mark mark : drawing.hole().marks()) {
            double x = canvas.frame().x(mark.at());
            double y = canvas.frame().y(mark.at());
            canvas.svg().path("M", x - arm, y, "h", 2 * arm, "M", x, y - arm, "v", 2 * arm);
        }
        canvas.svg().end();
    }

    private void oldHoles() {
        double radius = OLD_HOLE_EM * canvas.em();
        for (OldHoleOnMap hole : drawing.oldHoles()) {
            canvas.disc("old-hole-ground", MapStyle.fill(MapStyle.PAPER), hole.at(), radius);
            canvas.disc("old-hole", MapStyle.stroke(MapStyle.INK, 1.8), hole.at(), radius);
        }
        canvas.svg().group("age", MapStyle.fill(MapStyle.INK));
        drawing.oldHoles().stream()
                .limit(canvas.style().full() ? Long.MAX_VALUE : 1)
                .forEach(hole -> age(hole, 1.15 * radius));
        canvas.svg().end();
    }

    private void age(OldHoleOnMap hole, double gap) {
        String days = Long.toString(hole.days());
        List<Envelope> boxes = WAYS.stream()
                .map(way -> canvas.box(OpenSans.REGULAR, days, hole.at(), gap, way))
                .toList();
        canvas.labelWhereFree(OpenSans.REGULAR, days, boxes);
    }

    private void slopes() {
        canvas.svg().group("slope", MapStyle.fill(MapStyle.INK));
        for (SlopeOnMap slope : drawing.slopes()) {
            String percent = texts.number(slope.percent(), 1);
            Envelope about = canvas.box(OpenSans.REGULAR, percent, slope.at(), 0, 0, 0);
            canvas.labelWhereFree(OpenSans.REGULAR, percent, List.of(about));
        }
        canvas.svg().end();
    }
}
