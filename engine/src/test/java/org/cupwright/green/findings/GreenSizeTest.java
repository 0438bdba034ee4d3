package org.cupwright.green.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Area;
import org.cupwright.message.Message.Length;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** Invented outlines just within and just beyond each limit. */
class GreenSizeTest {
    private static final Message HOLE = Where.hole("7");

    private static Optional<Finding> of(double wide, double deep) {
        return GreenSize.check(Shapes.rectangle(0, 0, wide, deep), HOLE);
    }

    @Test
    void sizesThatAreOddAreToldWithTheSize() {
        assertThat(of(8, 10)).isEmpty();
        assertThat(of(50, 50)).isEmpty();
        Finding small = of(8, 9.9).orElseThrow();
        assertThat(small.kind()).isEqualTo(FindingKind.GREEN_VERY_SMALL);
        assertThat(((Area) small.value()).squareMetres()).isEqualTo(8 * 9.9);
        Finding large = of(50, 50.1).orElseThrow();
        assertThat(large.kind()).isEqualTo(FindingKind.GREEN_VERY_LARGE);
        assertThat(large.place()).contains(new MapPoint(25, 25.05));
    }

    private static Finding refused(Polygon outline) {
        Finding[] told = new Finding[1];
        assertThatThrownBy(() -> GreenSize.refuseImpossible(outline, HOLE))
                .isInstanceOfSatisfying(UnreadableFile.class, refusal -> told[0] = refusal.finding());
        assertThat(told[0].kind()).isEqualTo(FindingKind.GREEN_IMPOSSIBLE);
        return told[0];
    }

    @Test
    void whatCanBeNoGreenIsRefusedWithWhatItIsAndTheLimit() {
        assertThatCode(() -> {
                    GreenSize.refuseImpossible(Shapes.area(0, 0, 400, 0, 400, 50, 0, 50), HOLE);
                    GreenSize.refuseImpossible(Shapes.area(0, 0, 50, 0, 50, 400, 0, 400), HOLE);
                })
                .doesNotThrowAnyException();
        Finding wide = refused(Shapes.area(0, 0, 400.5, 0, 400.5, 10, 0, 10));
        assertThat(wide.value()).isEqualTo(new Length(400.5));
        assertThat(wide.tryThis().arguments()).contains(new Length(400));
        assertThat(wide.place()).contains(new MapPoint(200.25, 5));
        assertThat(refused(Shapes.area(0, 0, 10, 0, 10, 401, 0, 401)).value()).isEqualTo(new Length(401));
        Finding vast = refused(Shapes.area(0, 0, 200, 0, 200, 101, 0, 101));
        assertThat(vast.value()).isEqualTo(new Area(20_200));
        assertThat(vast.tryThis().arguments()).contains(new Area(20_000));
    }
}
