package org.cupwright.formats.outlines;

import java.util.List;
import org.cupwright.course.Course;
import org.cupwright.finding.Finding;

/**
 * A course as its map file tells it.
 *
 * @param course holes in round order
 * @param findings what the person should know or mend, in the order in which it was found
 */
public record ReadCourse(Course course, List<Finding> findings) {
    public ReadCourse {
        findings = List.copyOf(findings);
    }
}
