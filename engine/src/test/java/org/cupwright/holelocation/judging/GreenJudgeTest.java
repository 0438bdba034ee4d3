package org.cupwright.holelocation.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.Green;
import org.cupwright.green.Ground;
import org.cupwright.green.GroundItem;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.RestsOn;
import org.cupwright.holelocation.Concession;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Difficulty;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.cupwright.testing.ModelGround;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

class GreenJudgeTest {
    private static final Outline ROUND = Shapes.circle(0, 0, 7);

    private static GreenJudge judge(Outline outline, Ground ground, DayConditions day) {
        return new GreenJudge(new Green(Hole.of("1", outline), ground), day, Policy.defaults());
    }

    private static ModelGround plane(double slope) {
        return ModelGround.exact(MadeSurface.plane(slope, 0));
    }

    private static List<Concession> conceded(GreenJudge judge) {
        return judge.judgeGreen().concessions().stream()
                .map(ConcessionStep::concession)
                .toList();
    }

    @Test
    void aGentlePlanePassesAwayFromItsEdge() {
        GreenJudge judge = judge(ROUND, plane(0.015), Days.dry(10));
        Judgement middle = judge.judge(new MapPoint(0, 0));
        assertThat(middle.verdict()).isEqualTo(Verdict.PASS);
        assertThat(middle.restsOn()).isEqualTo(RestsOn.SURVEY);
        assertThat(middle.rules()).extracting(RuleResult::rule).containsExactly(RuleId.values());
        assertThat(judge.judge(new MapPoint(0, 5)).verdict()).isEqualTo(Verdict.FAIL);
        GreenJudgement.Shares shares = judge.judgeGreen().shares();
        assertThat(shares.pass() + shares.caution() + shares.fail() + shares.notSurveyed())
                .isCloseTo(1, offset(1e-12));
        // the ring within 3.656 m of the edge fails: 1 − (3.344/7)² of the green
        assertThat(shares.fail()).isCloseTo(1 - Math.pow(3.344 / 7, 2), offset(0.01));
        assertThat(judge.judgeGreen().concessions()).isEmpty();
    }

    @Test
    void theSlopesOfAPlaneAreAllTheSame() {
        SlopeSpread slopes = judge(ROUND, plane(0.015), Days.dry(10))
                .judgeGreen()
                .slopePercent()
                .orElseThrow();
        assertThat(slopes.p5()).isCloseTo(1.5, offset(1e-6));
        assertThat(slopes.median()).isCloseTo(1.5, offset(1e-6));
        assertThat(slopes.p95()).isCloseTo(1.5, offset(1e-6));
    }

    @Test
    void aGreenTooSteepConcedesWhatItMustAndSaysSo() {
        GreenJudge steep = judge(ROUND, plane(0.045), Days.dry(10));
        assertThat(conceded(steep)).containsExactly(Concession.LEVEL);
        Judgement middle = steep.judge(new MapPoint(0, 0));
        assertThat(middle.setAside()).containsExactly(RuleId.LEVEL);
        assertThat(middle.rule(RuleId.LEVEL).outcome()).isEqualTo(Outcome.FAIL);
        assertThat(middle.verdict()).isEqualTo(Verdict.CAUTION);
        assertThat(steep.judgeGreen().concessions().get(0).cellsGained())
                .isEqualTo(steep.judgeGreen().candidates().size());
        assertThat(conceded(judge(ROUND, plane(0.07), Days.dry(10))))
                .containsExactly(Concession.LEVEL, Concession.HOLDABLE);
    }

    @Test
    void aSmallGreenConcedesTheEdgeButNeverItsLastPaces() {
        GreenJudge small = judge(Shapes.circle(0, 0, 3), plane(0.01), Days.dry(10));
        assertThat(conceded(small)).containsExactly(Concession.EDGE);
        assertThat(small.judge(new MapPoint(0, 0)).setAside()).containsExactly(RuleId.EDGE);
        Judgement atTheEdge = small.judge(new MapPoint(0, 1.5));
        assertThat(atTheEdge.setAside()).isEmpty();
        assertThat(atTheEdge.verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void whereNothingHelpsNothingIsConcededAndTheReasonsAreNamed() {
        GreenJudgement tiny =
                judge(Shapes.circle(0, 0, 1.5), plane(0.01), Days.dry(10)).judgeGreen();
        assertThat(tiny.concessions()).isEmpty();
        assertThat(tiny.candidates()).isEmpty();
        assertThat(tiny.best()).isEmpty();
        assertThat(tiny.failing().get(0)).isEqualTo(RuleId.EDGE);
    }

    @Test
    void oldHolesComeCloserBeforeTheyAreSetAside() {
        GroundItem[] holes = crowd(2.6, 2);
        GreenJudge crowded = judge(ROUND, plane(0.01), Days.dry(10, holes));
        assertThat(conceded(crowded)).containsExactly(Concession.OLD_HOLE_CLOSER);
        for (Judgement candidate : crowded.judgeGreen().candidates()) {
            RuleResult oldHole = candidate.rule(RuleId.OLD_HOLE);
            if (oldHole.outcome() == Outcome.FAIL) {
                assertThat(candidate.setAside()).containsExactly(RuleId.OLD_HOLE);
                assertThat(oldHole.value().orElseThrow()).isGreaterThanOrEqualTo(2.44);
            }
        }
        assertThat(conceded(judge(ROUND, plane(0.01), Days.dry(10, crowd(1, 6)))))
                .containsExactly(Concession.OLD_HOLE);
    }

    /** Resting holes on a square grid about the middle, which stays free. */
    private static GroundItem[] crowd(double apart, int each) {
        List<GroundItem> holes = new ArrayList<>();
        for (int east = -each; east <= each; east++) {
            for (int north = -each; north <= each; north++) {
                if (east != 0 || north != 0) {
                    holes.add(Days.restingHole(apart * east, apart * north, 5));
                }
            }
        }
        return holes.toArray(GroundItem[]::new);
    }

    @Test
    void plugsAndClosedGroundAreNeverConceded() {
        DayConditions closed = Days.dry(10, Days.area(GroundItem.Kind.OUT_OF_USE, -8, -8, 8, 8), Days.plug(0, 0));
        GreenJudgement green = judge(ROUND, plane(0.01), closed).judgeGreen();
        assertThat(green.candidates()).isEmpty();
        assertThat(green.concessions()).isEmpty();
        assertThat(green.failing().get(0)).isEqualTo(RuleId.CLOSED_GROUND);
    }

    @Test
    void withAnOutlineAloneTheOtherRulesDecide() {
        GreenJudge outline = judge(ROUND, plane(0.08).restingOn(RestsOn.OUTLINE), Days.rainy(10));
        Judgement middle = outline.judge(new MapPoint(0, 0));
        assertThat(middle.verdict()).isEqualTo(Verdict.PASS);
        assertThat(middle.restsOn()).isEqualTo(RestsOn.OUTLINE);
        Set<RuleId> ofTheGround = Set.of(RuleId.LEVEL, RuleId.EVEN_GRADE, RuleId.HOLDABLE, RuleId.RIDGE, RuleId.HOLLOW);
        assertThat(middle.rules())
                .filteredOn(result -> result.outcome() == Outcome.NOT_CHECKED)
                .extracting(RuleResult::rule)
                .containsExactlyInAnyOrderElementsOf(ofTheGround);
        assertThat(middle.difficulty()).isEqualTo(Difficulty.unknown());
        assertThat(outline.judgeGreen().slopePercent()).isEmpty();
        assertThat(outline.judgeGreen().shares().notSurveyed()).isZero();
    }

    @Test
    void levelReadingsAreJudgedByTheirPlane() {
        Judgement read = judge(ROUND, plane(0.02).restingOn(RestsOn.LEVELS), Days.dry(10))
                .judge(new MapPoint(0, 0));
        assertThat(read.restsOn()).isEqualTo(RestsOn.LEVELS);
        assertThat(read.rule(RuleId.LEVEL).outcome()).isEqualTo(Outcome.PASS);
        assertThat(read.rule(RuleId.HOLDABLE).outcome()).isEqualTo(Outcome.PASS);
        assertThat(read.rule(RuleId.EVEN_GRADE).outcome()).isEqualTo(Outcome.NOT_CHECKED);
        assertThat(read.verdict()).isEqualTo(Verdict.PASS);
    }

    @Test
    void inAGapOfTheSurveyNothingIsSaidUnlessAnotherRuleFails() {
        ModelGround gap = plane(0.01).withGap(Shapes.rectangle(-0.6, -9, 9, 9));
        GreenJudge judge = judge(ROUND, gap, Days.dry(10));
        assertThat(judge.judge(new MapPoint(0, 0)).verdict()).isEqualTo(Verdict.NOT_SURVEYED);
        assertThat(judge.judge(new MapPoint(6, 0)).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(judge.judge(new MapPoint(-1, 0)).verdict()).isEqualTo(Verdict.CAUTION);
        assertThat(judge.judge(new MapPoint(-1.5, 0)).verdict()).isEqualTo(Verdict.PASS);
        assertThat(judge.judgeGreen().shares().notSurveyed()).isPositive();
    }

    @Test
    void anotherDayIsJudgedAsIfItWereTheFirst() {
        DayConditions other = Days.dry(10, Days.restingHole(1, 1, 3));
        GreenJudge reused = judge(ROUND, plane(0.02), Days.dry(10)).onDay(other);
        GreenJudge fresh = judge(ROUND, plane(0.02), other);
        assertThat(reused.judgeGreen().candidates())
                .isEqualTo(fresh.judgeGreen().candidates());
        DayConditions faster = Days.dry(12);
        assertThat(reused.onDay(faster).judgeGreen().candidates())
                .isEqualTo(judge(ROUND, plane(0.02), faster).judgeGreen().candidates());
    }

    @Test
    void theBestSpotsPassAndLieApart() {
        List<Judgement> best = judge(Shapes.circle(0, 0, 9), plane(0.01), Days.dry(10))
                .judgeGreen()
                .best();
        assertThat(best).hasSize(5).allMatch(spot -> spot.verdict() == Verdict.PASS);
        for (int i = 0; i < best.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(best.get(i).position().distanceMetres(best.get(j).position()))
                        .isGreaterThanOrEqualTo(3);
            }
        }
    }
}
