package org.cupwright.settingout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.green.End;
import org.cupwright.green.Lateral;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.Side;
import org.cupwright.green.Third;
import org.cupwright.policy.Policy;
import org.cupwright.testing.RandomGreens;
import org.cupwright.testing.Shapes;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.Test;

/** Directions on an invented green 20 m wide and 30 m deep, played north, paced by somebody whose pace is a metre. */
class SettingOutTest {
    private static final Heading NORTH = new Heading(0);
    private static final Policy METRE_PACES = Policy.defaults().with(PlacePolicy.PACE_METRES, 1.0);

    private static SettingOut settingOut(Policy policy, Heading play, Mark... marks) {
        return SettingOut.of(RandomGreens.holeOn(Shapes.rectangle(0, 0, 20, 30), play, List.of(marks)), policy);
    }

    private static Mark head(String name, double east, double north) {
        return new Mark(Mark.Kind.SPRINKLER_HEAD, name, new MapPoint(east, north));
    }

    @Test
    void wordsThenPacesToTheHalfPace() {
        PacedPlace place = settingOut(METRE_PACES, NORTH)
                .directions(new MapPoint(4.3, 21.8))
                .place()
                .orElseThrow();
        assertThat(place.third()).isEqualTo(Third.BACK);
        assertThat(place.lateral()).isEqualTo(Lateral.LEFT);
        assertThat(place.side()).isEqualTo(Side.LEFT);
        assertThat(place.onPaces()).isEqualTo(22.0);
        assertThat(place.sidePaces()).isEqualTo(4.5);
        assertThat(place.metres().sideMetres()).isCloseTo(4.3, within(1e-12));
        // 8.2 from the back is nearer than 21.8 on
        assertThat(place.nearerEnd()).isEqualTo(End.BACK);
        assertThat(place.nearerEndPaces()).isEqualTo(8.0);
    }

    @Test
    void pacesAreTheCoursesOwn() {
        // 12 on and 7 from the right; a pace of 0.914 m: 13.13 and 7.66
        PacedPlace place = settingOut(Policy.defaults(), NORTH)
                .directions(new MapPoint(13, 12))
                .place()
                .orElseThrow();
        assertThat(place.onPaces()).isEqualTo(13.0);
        assertThat(place.sidePaces()).isEqualTo(7.5);
        assertThat(place.side()).isEqualTo(Side.RIGHT);
        assertThat(place.nearerEnd()).isEqualTo(End.FRONT);
    }

    @Test
    void theConventionIsTheCoursesOwn() {
        Hole slantedFront = RandomGreens.holeOn(Shapes.polygon(0, 6, 20, 0, 20, 30, 0, 30), NORTH, List.of());
        MapPoint point = new MapPoint(10, 11);
        Policy squared = METRE_PACES.with(PlacePolicy.ON_CONVENTION, OnConvention.SQUARED_OFF_FRONT);
        assertThat(onPaces(SettingOut.of(slantedFront, METRE_PACES), point)).isEqualTo(8);
        assertThat(onPaces(SettingOut.of(slantedFront, squared), point)).isEqualTo(11);
    }

    private static double onPaces(SettingOut settingOut, MapPoint point) {
        return settingOut.directions(point).place().orElseThrow().onPaces();
    }

    @Test
    void goodWithinIsRoundedDownAndSaysWhereThereIsMoreRoom() {
        // played north, more room to the west: to the left
        Leeway leeway = settingOut(METRE_PACES, NORTH)
                .directions(new MapPoint(10, 10), 1.49, Optional.of(new Heading(280)))
                .leeway()
                .orElseThrow();
        assertThat(leeway.goodWithinPaces()).isEqualTo(1.0);
        assertThat(leeway.goodWithinMetres()).isEqualTo(1.49);
        assertThat(leeway.moreRoom()).contains(Way.TO_THE_LEFT);
        // exactly one and a half paces of 0.914 m stay one and a half
        assertThat(settingOut(Policy.defaults(), NORTH)
                        .directions(new MapPoint(10, 10), 1.5 * 0.914, Optional.empty())
                        .leeway()
                        .orElseThrow())
                .isEqualTo(new Leeway(1.5 * 0.914, 1.5, Optional.empty()));
    }

    @Test
    void waysAreSeenFromTheFairway() {
        Heading play = new Heading(200);
        assertThat(Way.of(new Heading(200), play)).isEqualTo(Way.TO_THE_BACK);
        assertThat(Way.of(new Heading(290), play)).isEqualTo(Way.TO_THE_RIGHT);
        assertThat(Way.of(new Heading(20), play)).isEqualTo(Way.TO_THE_FRONT);
        assertThat(Way.of(new Heading(110), play)).isEqualTo(Way.TO_THE_LEFT);
        assertThat(Way.of(new Heading(245), play)).isEqualTo(Way.TO_THE_RIGHT);
        assertThat(Way.of(new Heading(156), play)).isEqualTo(Way.TO_THE_BACK);
    }

    @Test
    void fromTheNearestMarkTowardsOneInLine() {
        // from (−3, 6) to (5, 12): 10 m, heading atan(8/6) = 53.13°; the head at (17, 21) is in line, (17, 30) is not
        FromMark from = settingOut(
                        METRE_PACES, NORTH, head("far", 17, 30), head("near", -3, 6), head("in line", 17, 21))
                .directions(new MapPoint(5, 12))
                .fromMark()
                .orElseThrow();
        assertThat(from.mark().name()).isEqualTo("near");
        assertThat(from.metres()).isCloseTo(10, within(1e-12));
        assertThat(from.paces()).isEqualTo(10);
        assertThat(from.heading().orElseThrow().degrees()).isCloseTo(53.1301, within(1e-4));
        assertThat(from.towards().orElseThrow().name()).isEqualTo("in line");
    }

    @Test
    void aMarkThatIsNotInLineIsNothingToWalkTowards() {
        Directions directions = settingOut(METRE_PACES, NORTH, head("near", -3, 6), head("far", 17, 30))
                .directions(new MapPoint(5, 12));
        assertThat(directions.fromMark().orElseThrow().towards()).isEmpty();
        assertThat(settingOut(METRE_PACES, NORTH)
                        .directions(new MapPoint(5, 12))
                        .fromMark())
                .isEmpty();
        assertThat(settingOut(METRE_PACES, NORTH, head("here", 5, 12))
                        .directions(new MapPoint(5, 12))
                        .fromMark()
                        .orElseThrow()
                        .heading())
                .isEmpty();
    }

    @Test
    void pacesLeadBack() {
        SettingOut settingOut = settingOut(METRE_PACES, NORTH);
        Hole hole = RandomGreens.holeOn(Shapes.rectangle(0, 0, 20, 30), NORTH, List.of());
        // 21.8 on is 8.2 from the back, said as 8: 0.2 off; 4.3 said as 4.5: 0.2 off; together 0.2·√2
        assertThat(PacedBack.nearestMetres(hole, METRE_PACES, settingOut.directions(new MapPoint(4.3, 21.8))))
                .isCloseTo(0.2 * Math.sqrt(2), within(1e-9));
    }

    @Test
    void saysWhenPacesFitTwoPlaces() {
        // a bay from 10 to 20 in the left side: 5 on and 4 from the left is (4, 5) in front of it and (4, 25) beyond,
        // both the
        // middle of a chord of 10 and the left third of 20
        Hole kidney = RandomGreens.holeOn(
                Shapes.polygon(0, 0, 20, 0, 20, 30, 0, 30, 0, 20, 8, 20, 8, 10, 0, 10), NORTH, List.of());
        SettingOut settingOut = SettingOut.of(kidney, METRE_PACES);
        assertThat(settingOut.leadToOnePlace(settingOut.directions(new MapPoint(4, 25))))
                .isFalse();
        assertThat(PacedBack.nearestMetres(kidney, METRE_PACES, settingOut.directions(new MapPoint(4, 25))))
                .isLessThan(1e-9);
        // beside the bay the chord is 30 long
        assertThat(settingOut.leadToOnePlace(settingOut.directions(new MapPoint(15, 25))))
                .isTrue();
        // squared off the front 25 on is nowhere else
        SettingOut squared =
                SettingOut.of(kidney, METRE_PACES.with(PlacePolicy.ON_CONVENTION, OnConvention.SQUARED_OFF_FRONT));
        assertThat(squared.leadToOnePlace(squared.directions(new MapPoint(4, 25))))
                .isTrue();
    }

    @Test
    void withoutALineOfPlayThereAreNoWordsButTheRest() {
        SettingOut settingOut = SettingOut.of(Hole.of("B4", Shapes.rectangle(0, 0, 20, 30)), METRE_PACES);
        Directions directions = settingOut.directions(new MapPoint(5, 12), 2, Optional.of(NORTH));
        assertThat(directions.place()).isEmpty();
        assertThat(directions.leeway().orElseThrow().goodWithinPaces()).isEqualTo(2);
        assertThat(directions.leeway().orElseThrow().moreRoom()).isEmpty();
        assertThat(settingOut.leadToOnePlace(directions)).isFalse();
    }

    @Test
    void aPositionOffTheGreenIsRefused() {
        assertThatThrownBy(() -> settingOut(METRE_PACES, NORTH).directions(new MapPoint(-1, 12)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-1.0, 12.0")
                .hasMessageContaining("hole 7");
        assertThatThrownBy(() ->
                        settingOut(METRE_PACES, NORTH).directions(new MapPoint(5, 12), Double.NaN, Optional.empty()))
                .hasMessageContaining("NaN");
    }
}
