package org.cupwright.green.findings;

import java.util.Optional;
import org.cupwright.finding.Finding;
import org.cupwright.green.field.GroundArea;
import org.locationtech.jts.geom.MultiPolygon;

/**
 * Something doubtful about the ground of a green.
 *
 * @param finding what, where, how much, and what to do
 * @param area the ground it is about, in the course's frame, when it is about a part of the green
 */
public record GroundFinding(Finding finding, Optional<MultiPolygon> area) {
    static GroundFinding of(Finding finding) {
        return new GroundFinding(finding, Optional.empty());
    }

    static GroundFinding over(GroundArea area, Finding finding) {
        return new GroundFinding(finding.at(area.inside()), Optional.of(area.shape()));
    }
}
