package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;

import org.cupwright.course.MapPoint;
import org.cupwright.testing.ModelGround;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

class RememberedGroundTest {
    private static final MapPoint KNOWN = new MapPoint(1, 2);
    private static final MapPoint GAP = new MapPoint(50, 50);

    private final Surface surface = MadeSurface.plane(0.03, 0.04);
    private final ModelGround anew = ModelGround.exact(surface).withGap(Shapes.circle(50, 50, 5));
    private int fits;

    private final Ground ground = new RememberedGround(new RememberedGround.Fitted(surface, 0.004, 0.02), () -> {
        fits++;
        return anew;
    });

    @Test
    void whatIsRememberedAsksForNoFit() {
        assertThat(ground.restsOn()).isEqualTo(RestsOn.SURVEY);
        assertThat(ground.surface()).containsSame(surface);
        assertThat(ground.heightStandardErrorMetres()).isEqualTo(0.004);
        assertThat(ground.surveySigmaMetres()).isEqualTo(0.02);
        assertThat(fits).isZero();
    }

    @Test
    void everythingElseIsThatOfOneFit() {
        assertThat(ground.coverageAt(KNOWN)).isEqualTo(Coverage.KNOWN);
        assertThat(ground.coverageAt(GAP)).isEqualTo(Coverage.NOT_SURVEYED);
        assertThat(ground.planeAt(KNOWN)).isEqualTo(anew.planeAt(KNOWN)).isPresent();
        assertThat(ground.planeAt(GAP)).isEmpty();
        assertThat(ground.bendAt(KNOWN, 0.91))
                .isEqualTo(anew.bendAt(KNOWN, 0.91))
                .isPresent();
        assertThat(fits).isEqualTo(1);
    }
}
