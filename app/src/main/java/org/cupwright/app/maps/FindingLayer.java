package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.findings.GroundFinding;
import org.locationtech.jts.geom.Envelope;

/** Findings: the parts of the green they are about set off by a broken line, and a framed number at each place. */
final class FindingLayer {
    /** Where a number may stand beside its place: ways right and down. */
    private static final List<int[]> WAYS = Stream.concat(
                    SpotLayer.WAYS.stream(),
                    Stream.of(new int[] {1, -1}, new int[] {-1, -1}, new int[] {1, 1}, new int[] {-1, 1}))
            .toList();

    private static final double DOT_EM = 0.2;

    private final List<GroundFinding> findings;
    private final Canvas canvas;
    private final List<Numbered> numbers = new ArrayList<>();

    /** The number of a finding, its place, and the box the number is written in. */
    private record Numbered(String number, MapPoint at, Envelope box) {}

    /** Takes room before other labels do: a number that is missing would hide a finding. */
    FindingLayer(List<GroundFinding> findings, Canvas canvas) {
        this.findings = findings;
        this.canvas = canvas;
        for (int i = 0; i < findings.size(); i++) {
            String number = Integer.toString(i + 1);
            findings.get(i).finding().place().ifPresent(at -> numbers.add(numbered(number, at)));
        }
    }

    private Numbered numbered(String number, MapPoint at) {
        double near = 1.5 * DOT_EM * canvas.em();
        List<Envelope> boxes = WAYS.stream()
                .map(way -> canvas.box(OpenSans.SEMIBOLD, number, at, near, way))
                .toList();
        return new Numbered(number, at, canvas.take(boxes).orElse(boxes.get(0)));
    }

    void draw() {
        if (!findings.isEmpty()) {
            double em = canvas.em();
            Strokes strokes = canvas.strokes();
            canvas.svg().group("finding-area", MapStyle.broken(MapStyle.INK, 1.4, 0.45 * em, 0.35 * em));
            findings.stream()
                    .flatMap(finding -> finding.area().stream())
                    .forEach(area -> canvas.svg().path(strokes.of(area)));
            canvas.svg().end();
            numbers.forEach(this::number);
        }
    }

    private void number(Numbered mark) {
        canvas.disc("finding-place", MapStyle.fill(MapStyle.INK), mark.at(), DOT_EM * canvas.em());
        canvas.svg().group("finding", MapStyle.fill(MapStyle.INK));
        canvas.label(OpenSans.SEMIBOLD, mark.number(), mark.box());
        canvas.svg().end();
        canvas.svg()
                .group("finding-frame", MapStyle.stroke(MapStyle.INK, 1.6))
                .box(mark.box())
                .end();
    }
}
