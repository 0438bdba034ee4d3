package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

class DrawnItemTest {
    private static final Polygon SQUARE = Shapes.area(0, 0, 4, 0, 4, 4, 0, 4);
    private static final Geometry SPOT = DrawnItem.spot(new MapPoint(3, 4));

    private static PersonsOpinion word(Kind kind) {
        return new PersonsOpinion(kind, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static DrawnItem item(Kind kind, Geometry place) {
        return new DrawnItem("d1", word(kind), place);
    }

    @Test
    void usualSpotsArePointsAndGoodAndBadGroundIsAnArea() {
        assertThat(item(Kind.USUAL, SPOT).areaSquareMetres()).isEmpty();
        assertThat(item(Kind.GOOD, SQUARE).areaSquareMetres()).contains(16.0);
        for (Runnable wrong : new Runnable[] {
            () -> item(Kind.USUAL, SQUARE),
            () -> item(Kind.GOOD, SPOT),
            () -> item(Kind.BAD, SPOT),
            () -> item(Kind.BAD, Shapes.area(0, 0, 4, 4, 4, 0, 0, 4)), // crosses itself
            () -> item(Kind.BAD, SQUARE.getFactory().createPolygon()),
            () -> new DrawnItem("d 1", word(Kind.USUAL), SPOT)
        }) {
            assertThatIllegalArgumentException().isThrownBy(wrong::run).withMessageContaining("no drawn ground");
        }
    }

    @Test
    void aDiscHasSixtyFourCornersOnItsCircle() {
        Geometry disc = DrawnItem.disc(new MapPoint(10, 20), 2);
        assertThat(disc.getNumPoints()).isEqualTo(65);
        assertThat(disc.getEnvelopeInternal().getMaxX()).isCloseTo(12, within(1e-9));
        // 64 triangles of ½·2²·sin(360°/64)
        assertThat(disc.getArea()).isCloseTo(12.546_194, within(1e-5));
    }

    @Test
    void itsMiddleIsInIt() {
        assertThat(item(Kind.GOOD, SQUARE).middle()).isEqualTo(new MapPoint(2, 2));
        assertThat(item(Kind.USUAL, SPOT).middle()).isEqualTo(new MapPoint(3, 4));
        Polygon bent = Shapes.area(0, 0, 10, 0, 10, 1, 1, 1, 1, 10, 0, 10); // its centroid lies in the inner corner
        MapPoint middle = item(Kind.BAD, bent).middle();
        assertThat(bent.intersects(middle.toPoint())).isTrue();
    }

    @Test
    void theDistanceIsToItsEdgeAndNoneWithin() {
        assertThat(item(Kind.GOOD, SQUARE).distanceMetres(new MapPoint(7, 8))).isEqualTo(5);
        assertThat(item(Kind.GOOD, SQUARE).distanceMetres(new MapPoint(1, 1))).isZero();
        assertThat(item(Kind.USUAL, SPOT).distanceMetres(new MapPoint(0, 0))).isEqualTo(5);
    }

    @Test
    void itIsAboutTheSameGroundWithinTenCentimetresACorner() {
        DrawnItem drawn = item(Kind.GOOD, SQUARE);
        assertThat(drawn.isAbout(word(Kind.GOOD), Shapes.area(4, 4, 0, 4.09, 0, 0, 4, 0)))
                .isTrue();
        assertThat(drawn.isAbout(word(Kind.GOOD), Shapes.area(4, 4, 0, 4.11, 0, 0, 4, 0)))
                .isFalse();
        assertThat(drawn.isAbout(word(Kind.BAD), SQUARE)).isFalse();
        assertThat(drawn.saying(word(Kind.BAD)).isAbout(word(Kind.BAD), SQUARE)).isTrue();
    }

    @Test
    void onlyBadGroundDoesNotSpeakForAHole() {
        assertThat(Kind.GOOD.speaksForAHole()).isTrue();
        assertThat(Kind.USUAL.speaksForAHole()).isTrue();
        assertThat(Kind.BAD.speaksForAHole()).isFalse();
    }

    @Test
    void blankReasonsAndNamesAreNone() {
        LocalDate day = LocalDate.of(2026, 5, 31);
        PersonsOpinion blank = new PersonsOpinion(Kind.BAD, Optional.of("  "), Optional.of(""), Optional.of(day));
        assertThat(blank.reason()).isEmpty();
        assertThat(blank.person()).isEmpty();
        PersonsOpinion told = new PersonsOpinion(Kind.BAD, Optional.of(" wet "), Optional.of(" P "), Optional.of(day));
        assertThat(told.reason()).contains("wet");
        assertThat(told.person()).contains("P");
    }
}
