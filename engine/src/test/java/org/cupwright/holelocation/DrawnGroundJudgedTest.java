package org.cupwright.holelocation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.Green;
import org.cupwright.green.Ground;
import org.cupwright.green.LevelSpotsGround;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.green.RestsOn;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.cupwright.testing.DrawnShapes;
import org.cupwright.testing.ModelGround;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** What people say of the ground of a green of 24 by 24 m, with and without a survey. */
class DrawnGroundJudgedTest {
    private static final Ground STEEP = ModelGround.exact(MadeSurface.plane(0.05, 0));
    private static final Ground GENTLE = ModelGround.exact(MadeSurface.plane(0.01, 0));

    private static GreenJudge judge(Ground ground, DrawnItem... drawn) {
        Hole hole = Hole.of("1", Shapes.rectangle(-12, -12, 12, 12));
        return new GreenJudge(new Green(hole, ground, List.of(drawn)), Days.dry(10), Policy.defaults());
    }

    private static Judgement at(GreenJudge judge, double east, double north) {
        return judge.judge(new MapPoint(east, north));
    }

    @Test
    void aPersonsWordIsNoMeasurement() {
        Judgement spot = at(judge(new LevelSpotsGround(List.of(), Policy.defaults()), DrawnShapes.usual(3, 3)), 3, 3);
        assertThat(spot.verdict()).isEqualTo(Verdict.PASS);
        assertThat(spot.word()).map(PersonsOpinion::kind).contains(Kind.USUAL);
        assertThat(spot.restsOn()).isEqualTo(RestsOn.OUTLINE);
        assertThat(spot.rule(RuleId.LEVEL).outcome()).isEqualTo(Outcome.NOT_CHECKED);
        assertThat(spot.vouchedFor()).isTrue();
    }

    @Test
    void aGoodWordOverrulesNoMeasuredSlope() {
        Judgement spot = at(judge(STEEP, DrawnShapes.area(Kind.GOOD, -12, -12, 12, 12)), 3, 3);
        assertThat(spot.rule(RuleId.LEVEL).outcome()).isEqualTo(Outcome.FAIL);
        assertThat(spot.rule(RuleId.DRAWN_GROUND).outcome()).isEqualTo(Outcome.PASS);
        assertThat(spot.word()).map(PersonsOpinion::kind).contains(Kind.GOOD);
        Judgement unsaid = at(judge(STEEP), 3, 3);
        assertThat(spot.verdict()).isEqualTo(unsaid.verdict());
        assertThat(spot.setAside()).isEqualTo(unsaid.setAside());
    }

    @Test
    void badGroundCountsOnASurveyedGreenToo() {
        GreenJudge judge = judge(GENTLE, DrawnShapes.area(Kind.BAD, 0, -12, 12, 12));
        assertThat(at(judge, 3, 3).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(at(judge, 3, 3).deciding()).contains(RuleId.DRAWN_GROUND);
        assertThat(at(judge, -3, 3).verdict()).isEqualTo(Verdict.PASS);
        assertThat(at(judge, -3, 3).word()).isEmpty();
    }

    /** Whoever marks all of a green as bad gets no hole there: people's word is never set aside. */
    @Test
    void badGroundIsNeverSetAside() {
        GreenJudge judge = judge(GENTLE, DrawnShapes.area(Kind.BAD, -12, -12, 12, 12));
        assertThat(judge.judgeGreen().shares().fail()).isEqualTo(1);
        assertThat(judge.judgeGreen().concessions()).isEmpty();
    }

    @Test
    void whereNobodyMeasuredSpotsSaidToBeGoodComeFirst() {
        List<Judgement> best = judge(new LevelSpotsGround(List.of(), Policy.defaults()), DrawnShapes.usual(-7, 6))
                .judgeGreen()
                .best();
        assertThat(best.get(0).position().distanceMetres(new MapPoint(-7, 6))).isLessThanOrEqualTo(0.91);
        assertThat(best.get(1).word()).isEmpty();
    }

    @Test
    void offGoodGroundCareIsAskedFor() {
        GreenJudge judge =
                judge(new LevelSpotsGround(List.of(), Policy.defaults()), DrawnShapes.area(Kind.GOOD, -7, -7, 0, 7));
        assertThat(at(judge, -3, 0).verdict()).isEqualTo(Verdict.PASS);
        assertThat(at(judge, 3, 0).verdict()).isEqualTo(Verdict.CAUTION);
        assertThat(at(judge, 3, 0).vouchedFor()).isFalse();
    }
}
