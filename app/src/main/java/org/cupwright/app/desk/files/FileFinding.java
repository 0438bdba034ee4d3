package org.cupwright.app.desk.files;

import java.util.Optional;
import org.cupwright.finding.Finding;
import org.locationtech.jts.geom.MultiPolygon;

/**
 * A finding and the file it was found in.
 *
 * @param area the part of a green it is about, where it is about one
 */
public record FileFinding(String file, Finding finding, Optional<MultiPolygon> area) {
    public FileFinding(String file, Finding finding) {
        this(file, finding, Optional.empty());
    }
}
