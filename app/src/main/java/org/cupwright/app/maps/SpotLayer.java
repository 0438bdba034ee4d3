package org.cupwright.app.maps;

import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Mark;
import org.locationtech.jts.geom.Envelope;

/** What lies at single points: today's spot, old holes with their age, marks, slopes. */
final class SpotLayer {
    private final GreenDrawing drawing;
    private final MapFrame frame;
    private final MapStyle style;
    private final Texts texts;

    SpotLayer(GreenDrawing drawing, MapFrame frame, MapStyle style, Texts texts) {
        this.drawing = drawing;
        this.frame = frame;
        this.style = style;
        this.texts = texts;
    }

    /** Room that no label may take: that of the spots themselves. */
    void keep(LabelRoom room) {
        drawing.spots().forEach(spot -> room.keep(frame.x(spot), frame.y(spot), ring()));
        drawing.oldHoles().forEach(hole -> room.keep(frame.x(hole.at()), frame.y(hole.at()), old()));
        drawing.hole().marks().forEach(mark -> room.keep(frame.x(mark.at()), frame.y(mark.at()), style.em() / 2));
    }

    private double ring() {
        return style.em();
    }

    private double old() {
        return 0.34 * style.em();
    }

    void draw(LabelRoom room, Svg svg) {
        marks(svg);
        oldHoles(room, svg);
        if (style.full()) {
            slopes(room, svg);
        }
        spots(svg);
    }

    private void marks(Svg svg) {
        double arm = 0.4 * style.em();
        svg.group("mark", style.stroke(MapStyle.INK, 1.4));
        for (Mark mark : drawing.hole().marks()) {
            double x = frame.x(mark.at());
            double y = frame.y(mark.at());
            svg.path("M" + Svg.number(x - arm) + " " + Svg.number(y) + "h" + Svg.number(2 * arm) + "M" + Svg.number(x)
                    + " " + Svg.number(y - arm) + "v" + Svg.number(2 * arm));
        }
        svg.end();
    }

    private void oldHoles(LabelRoom room, Svg svg) {
        for (OldHoleOnMap hole : drawing.oldHoles()) {
            double x = frame.x(hole.at());
            double y = frame.y(hole.at());
            svg.group("old-hole-ground", MapStyle.fill(MapStyle.PAPER))
                    .circle(x, y, old())
                    .end();
            svg.group("old-hole", style.stroke(MapStyle.INK, 1.8))
                    .circle(x, y, old())
                    .end();
        }
        svg.group("age", MapStyle.fill(MapStyle.INK));
        drawing.oldHoles().stream().limit(style.full() ? Long.MAX_VALUE : 1).forEach(hole -> {
            Label age = new Label(Long.toString(hole.days()), style.letters());
            room.take(boxes(age, hole)).ifPresent(box -> age.draw(box, svg));
        });
        svg.end();
    }

    private List<Envelope> boxes(Label age, OldHoleOnMap hole) {
        double x = frame.x(hole.at());
        double y = frame.y(hole.at());
        double gap = 1.15 * old();
        return Stream.of(new int[] {1, 0}, new int[] {-1, 0}, new int[] {0, -1}, new int[] {0, 1})
                .map(way -> age.beside(x, y, gap, way[0], way[1]))
                .toList();
    }

    private void slopes(LabelRoom room, Svg svg) {
        svg.group("slope", MapStyle.fill(MapStyle.INK));
        for (SlopeOnMap slope : drawing.slopes()) {
            Label label = new Label(texts.number(slope.percent(), 1), style.letters());
            Envelope box = label.about(frame.x(slope.at()), frame.y(slope.at()));
            room.take(List.of(box)).ifPresent(free -> label.draw(free, svg));
        }
        svg.end();
    }

    private void spots(Svg svg) {
        drawing.spots().forEach(spot -> {
            double x = frame.x(spot);
            double y = frame.y(spot);
            svg.group("spot-ground", MapStyle.fill(MapStyle.PAPER))
                    .circle(x, y, ring())
                    .end();
            svg.group("spot-ring", style.stroke(MapStyle.ACCENT, 3))
                    .circle(x, y, ring())
                    .end();
            svg.group("spot", MapStyle.fill(MapStyle.ACCENT))
                    .circle(x, y, 0.42 * ring())
                    .end();
        });
    }
}
