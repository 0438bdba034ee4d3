package org.cupwright.holelocation.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Green;
import org.cupwright.green.MadeSurface;
import org.cupwright.holelocation.Judgement;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.cupwright.testing.ModelGround;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** On a square green of 24 m that passes up to 4.113 m from its edge, so between −7.887 and 7.887 m. */
class GoodWithinTest {
    private final GreenJudge judge = new GreenJudge(
            new Green(Hole.of("1", Shapes.rectangle(-12, -12, 12, 12)), ModelGround.exact(MadeSurface.plane(0.01, 0))),
            Days.dry(10),
            Policy.defaults());

    private GoodWithin at(double east, double north) {
        return GoodWithin.of(judge.judge(new MapPoint(east, north)), judge.judgeGreen());
    }

    @Test
    void inTheMiddleItIsGoodAllRoundAndNobodyIsSentFurther() {
        GoodWithin middle = at(0, 0);
        assertThat(middle.metres()).isEqualTo(GoodWithin.FARTHEST_METRES);
        assertThat(middle.moreRoom()).isEmpty();
    }

    @Test
    void nearTheEdgeItIsGoodAsFarAsThePassingGroundAndThereIsMoreRoomInwards() {
        // the next worse spot is at 8 m
        GoodWithin east = at(7, 0);
        assertThat(east.metres()).isCloseTo(0.75, offset(1e-9));
        assertThat(east.moreRoom().orElseThrow().degrees()).isBetween(200.0, 340.0);
        assertThat(at(7.75, 0).metres()).isZero();
    }

    @Test
    void everySpotWithinItIsNotWorse() {
        Judgement position = judge.judge(new MapPoint(6.25, 5.5));
        double metres = GoodWithin.of(position, judge.judgeGreen()).metres();
        for (double east = -2; east <= 2; east += 0.25) {
            for (double north = -2; north <= 2; north += 0.25) {
                MapPoint spot = new MapPoint(6.25 + east, 5.5 + north);
                if (spot.distanceMetres(position.position()) <= metres) {
                    assertThat(judge.judge(spot).verdict()).isLessThanOrEqualTo(position.verdict());
                }
            }
        }
        assertThat(metres).isCloseTo(1.5, offset(1e-9));
    }

    @Test
    void aPositionThatFailsIsAsGoodAsNothing() {
        Judgement failing = judge.judge(new MapPoint(11, 0));
        assertThatThrownBy(() -> GoodWithin.of(failing, judge.judgeGreen()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("does not fail");
    }
}
