package org.cupwright.green.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.FindingKind;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** A step of 0.3 m over 0.6 m along the middle of an invented green, and the same green without it. */
class StepFindingTest {
    private static final MadeSurface EVEN = MadeSurface.plane(0.01, 0.02);
    private static final MadeSurface STEPPED = EVEN.withTier(new MadeSurface.Tier(0, 0, 1, 0, 0.3, 0.6));

    private static List<GroundFinding> findings(MadeSurface surface) throws SurveyTooThin {
        return SurveyFindings.of(hole(), ground(surface)).stream()
                .filter(found -> found.finding().kind() == FindingKind.STEP)
                .toList();
    }

    private static Hole hole() {
        return Hole.of("7", Shapes.rectangle(-6, -6, 6, 6));
    }

    private static SurveyedGround ground(MadeSurface surface) throws SurveyTooThin {
        MadeSurvey survey = new MadeSurvey(surface, -8, -8, 8, 8, 12, 0.008, 3);
        return SurveyedGround.fit(hole().green(), survey.points(), Policy.defaults());
    }

    @Test
    void aStepIsFoundWhereItLies() throws SurveyTooThin {
        List<GroundFinding> found = findings(STEPPED);
        assertThat(found).hasSize(1);
        MapPoint place = found.get(0).finding().place().orElseThrow();
        assertThat(Math.abs(place.east())).isLessThan(1);
        assertThat(found.get(0).area().orElseThrow().getArea()).isBetween(8.0, 30.0);
        SurveyedGround ground = ground(STEPPED);
        assertThat(ground.isAtStep(new MapPoint(0, 2))).isTrue();
        assertThat(ground.isAtStep(new MapPoint(3, 2))).isFalse();
        assertThat(ground.blunders()).isEmpty();
    }

    /** The fit follows it all the same. */
    @Test
    void aStepThatNobodySeesIsNotTold() throws SurveyTooThin {
        MadeSurface slight = EVEN.withTier(new MadeSurface.Tier(0, 0, 1, 0, 0.02, 0.3));
        MadeSurvey survey = new MadeSurvey(slight, -8, -8, 8, 8, 12, 0.001, 3);
        SurveyedGround ground = SurveyedGround.fit(hole().green(), survey.points(), Policy.defaults());
        assertThat(ground.isAtStep(new MapPoint(0, 2))).isTrue();
        assertThat(SurveyFindings.of(hole(), ground))
                .noneMatch(found -> found.finding().kind() == FindingKind.STEP);
    }

    @Test
    void evenGroundHasNone() throws SurveyTooThin {
        assertThat(findings(EVEN)).isEmpty();
    }
}
