package org.cupwright.formats.items;

import java.util.List;
import java.util.Optional;
import org.cupwright.finding.Finding;
import org.cupwright.green.PersonsOpinion;
import org.locationtech.jts.geom.Geometry;

/**
 * Ground that people drew or listed, as a file has it.
 *
 * @param items in the order of the file
 * @param findings what does not read, and why
 */
public record ReadDrawn(List<Item> items, List<Finding> findings) {
    public ReadDrawn {
        items = List.copyOf(items);
        findings = List.copyOf(findings);
    }

    /**
     * One piece of ground, or one spot.
     *
     * @param id what the file calls it; empty when it has no name there
     * @param holes those on whose greens it lies, at least one; the holes of a double green share it
     * @param word what is said of it
     * @param place a polygon, or a point for a usual spot, in the course's frame
     */
    public record Item(Optional<String> id, List<String> holes, PersonsOpinion word, Geometry place) {
        public Item {
            holes = List.copyOf(holes);
        }
    }
}
