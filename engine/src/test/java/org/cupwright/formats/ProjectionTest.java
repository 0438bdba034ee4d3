package org.cupwright.formats;

import static org.assertj.core.api.Assertions.assertThat;

import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.junit.jupiter.api.Test;

class ProjectionTest {
    /** A frame of another datum; a slip of the pen puts the point an eighth of the way to the moon. */
    @Test
    void aPointThatIsNoneOfAnotherDatumsFrameIsTold() {
        Projection toDegrees = Projection.between(CoordinateFrame.of(2548), CoordinateFrame.of(CoordinateFrame.WGS84));
        Finding finding = InventedMap.troubleOf(() -> toDegrees.apply(50_000_606, 4_400_006));
        assertThat(finding.kind()).isEqualTo(FindingKind.OUTSIDE_FRAME);
    }
}
