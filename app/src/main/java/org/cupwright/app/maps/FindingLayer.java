package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Envelope;

/** Findings: the parts of the green they are about set off by a broken line, and a framed number at each place. */
final class FindingLayer {
    private final List<FindingOnMap> findings;
    private final MapFrame frame;
    private final MapStyle style;

    FindingLayer(GreenDrawing drawing, MapFrame frame, MapStyle style) {
        this.findings = drawing.findings();
        this.frame = frame;
        this.style = style;
    }

    /** Room that no label may take: that of the places themselves. */
    void keep(LabelRoom room) {
        findings.stream()
                .flatMap(finding -> finding.at().stream())
                .forEach(at -> room.keep(frame.x(at), frame.y(at), dot()));
    }

    private double dot() {
        return 0.2 * style.em();
    }

    /** A finding and the box its number is written in. */
    record Marked(FindingOnMap finding, MapPoint at, Envelope box) {}

    /** Takes room before other labels do: a number that is missing would hide a finding. */
    List<Marked> take(LabelRoom room) {
        List<Marked> marked = new ArrayList<>();
        for (FindingOnMap finding : findings) {
            finding.at().ifPresent(at -> {
                List<Envelope> boxes = beside(label(finding), frame.x(at), frame.y(at));
                marked.add(new Marked(finding, at, room.take(boxes).orElse(boxes.get(0))));
            });
        }
        return marked;
    }

    private Label label(FindingOnMap finding) {
        return new Label(Integer.toString(finding.number()), style.letters().semibold());
    }

    void draw(List<Marked> marked, Svg svg) {
        if (!findings.isEmpty()) {
            areas(svg);
            marked.forEach(mark -> number(mark, svg));
        }
    }

    private void areas(Svg svg) {
        String dashes =
                " stroke-dasharray=\"" + Svg.number(0.45 * style.em()) + " " + Svg.number(0.35 * style.em()) + "\"";
        svg.group("finding-area", style.stroke(MapStyle.INK, 1.4) + dashes);
        Strokes strokes = new Strokes(frame);
        findings.stream().flatMap(finding -> finding.area().stream()).forEach(area -> svg.path(strokes.of(area)));
        svg.end();
    }

    private void number(Marked mark, Svg svg) {
        Envelope box = mark.box();
        svg.group("finding-place", MapStyle.fill(MapStyle.INK))
                .circle(frame.x(mark.at()), frame.y(mark.at()), dot())
                .end();
        svg.group("finding", MapStyle.fill(MapStyle.INK));
        label(mark.finding()).draw(box, svg);
        svg.end();
        svg.group("finding-frame", style.stroke(MapStyle.INK, 1.6))
                .box(box.getMinX(), box.getMinY(), box.getWidth(), box.getHeight())
                .end();
    }

    private List<Envelope> beside(Label label, double x, double y) {
        double near = 1.5 * dot();
        Stream<int[]> ways = Stream.of(
                new int[] {1, 0},
                new int[] {-1, 0},
                new int[] {0, -1},
                new int[] {0, 1},
                new int[] {1, -1},
                new int[] {-1, -1},
                new int[] {1, 1},
                new int[] {-1, 1});
        return ways.map(way -> label.beside(x, y, near, way[0], way[1])).toList();
    }
}
